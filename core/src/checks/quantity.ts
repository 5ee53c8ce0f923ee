import type { Check, OptionSubject } from '../check.ts';
import { en, plural } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { END_WORDS } from '../plan.ts';
import { changedPlaces, sameWheelWanted } from '../rack.ts';

/** Stock does not include what is fitted; a wheel that comes off may go on elsewhere in the same change. */
export const quantity: Check<OptionSubject> = {
  id: 'option.quantity',
  title: en`Too few pieces`,
  worst: 'blocks',
  source: en`quantities of the rack and the purchases allowed, as given`,
  judge: ({ plan, teeth, assignment }) => {
    const places = changedPlaces(plan, teeth);
    const without = places.filter(({ index, end }) => assignment.origins[index]?.[end].from === 'nowhere');
    const short = without.map((place): Judgement => {
      const wanted = places.filter((other) => sameWheelWanted(place, other)).length;
      const found = wanted - without.filter((other) => sameWheelWanted(place, other)).length;
      return {
        severity: 'blocks',
        where: place.slot.place,
        what: () =>
          `${place.stage.name} ${END_WORDS[place.end]}: ${plural(wanted)`${wanted} piece of ${place.teeth} teeth wanted, ${found} to be had.|${wanted} pieces of ${place.teeth} teeth wanted, ${found} to be had.`}`,
        figure: { value: found, unit: 'pieces' },
        limit: { value: wanted, unit: 'pieces' },
      };
    });
    const { purchases } = plan.choice;
    if (assignment.purchases <= purchases) return short;
    return [
      ...short,
      {
        severity: 'blocks',
        where: [],
        what: () => en`${assignment.purchases} pieces would have to be bought; ${purchases} may be.`,
        figure: { value: assignment.purchases, unit: 'pieces' },
        limit: { value: purchases, unit: 'pieces' },
      },
    ];
  },
};
