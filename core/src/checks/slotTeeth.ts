import { type Check, notMade, type PairSubject } from '../check.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { END_WORDS, ENDS } from '../plan.ts';

/** The machine's own limits of a slot. Where one of them is given, the other is taken as not wanted. */
export const slotTeeth: Check<PairSubject> = {
  id: 'slot.slotTeeth',
  title: en`Outside the slot’s teeth`,
  worst: 'blocks',
  source: en`the machine’s own limits, as given for the slot`,
  judge: ({ stage, teeth }) =>
    ENDS.flatMap((end): readonly Judgement[] => {
      const { teethFrom, teethTo, place } = stage[end];
      const name = `${stage.name} ${END_WORDS[end]}`;
      if (!teethFrom.known && !teethTo.known)
        return [notMade([...place, 'teethFrom'], en`${name}: the tooth limits of this slot are not given, so they were not checked.`)];
      const outside = (limit: number, field: 'teethFrom' | 'teethTo', what: string): readonly Judgement[] => [
        {
          severity: 'blocks',
          where: [...place, field],
          what: () => what,
          figure: { value: teeth[end], unit: 'teeth' },
          limit: { value: limit, unit: 'teeth' },
        },
      ];
      if (teethFrom.known && teeth[end] < teethFrom.value)
        return outside(teethFrom.value, 'teethFrom', en`${name}: ${teeth[end]} teeth; this slot takes no fewer than ${teethFrom.value}.`);
      if (teethTo.known && teeth[end] > teethTo.value)
        return outside(teethTo.value, 'teethTo', en`${name}: ${teeth[end]} teeth; this slot takes no more than ${teethTo.value}.`);
      return [];
    }),
};
