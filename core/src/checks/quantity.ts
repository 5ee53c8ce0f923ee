import type { Check, OptionSubject } from '../check.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
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
          en`${place.stage.name} ${place.end}: ${wanted} ${wanted === 1 ? 'piece' : 'pieces'} of ${place.teeth} teeth wanted, ${found} to be had.`,
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
