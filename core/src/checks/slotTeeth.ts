import { type Check, notMade, type PairSubject } from '../check.ts';
import type { Judgement } from '../finding.ts';
import { ENDS } from '../plan.ts';

/** The machine's own limits of a slot. Where one of them is given, the other is taken as not wanted. */
export const slotTeeth: Check<PairSubject> = {
  id: 'slot.slotTeeth',
  title: 'Outside the slot’s teeth',
  worst: 'blocks',
  source: 'the machine’s own limits, as given for the slot',
  judge: ({ stage, teeth }) =>
    ENDS.flatMap((end): readonly Judgement[] => {
      const { teethFrom, teethTo, place } = stage[end];
      const name = `${stage.name} ${end}`;
      if (!teethFrom.known && !teethTo.known)
        return [notMade([...place, 'teethFrom'], `${name}: the tooth limits of this slot are not given, so they were not checked.`)];
      const outside = (limit: number, field: 'teethFrom' | 'teethTo', words: string): readonly Judgement[] => [
        {
          severity: 'blocks',
          where: [...place, field],
          what: () => `${name}: ${teeth[end]} teeth; this slot takes ${words} than ${limit}.`,
          figure: { value: teeth[end], unit: 'teeth' },
          limit: { value: limit, unit: 'teeth' },
        },
      ];
      if (teethFrom.known && teeth[end] < teethFrom.value) return outside(teethFrom.value, 'teethFrom', 'no fewer');
      if (teethTo.known && teeth[end] > teethTo.value) return outside(teethTo.value, 'teethTo', 'no more');
      return [];
    }),
};
