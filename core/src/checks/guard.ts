import { apart, type Check, notMade, type PairSubject } from '../check.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { lengthText } from '../format.ts';
import { END_WORDS, ENDS } from '../plan.ts';

/** The chain's plates stand above the teeth, so what must clear the guard is the sprocket with its chain on. */
export const guard: Check<PairSubject> = {
  id: 'slot.guard',
  title: en`Guard too close`,
  worst: 'blocks',
  source: en`chain-on diameter PD + 0.95 p: largest plate height of ASME B29.1; the clearance is the machine’s own`,
  judge: ({ stage, teeth, fit }) =>
    ENDS.flatMap((end): readonly Judgement[] => {
      const { guard_m, place } = stage[end];
      const where = [...place, 'guard'];
      const name = `${stage.name} ${END_WORDS[end]}`;
      if (!guard_m.known) return [notMade(where, en`${name}: what the guard clears is not given, so the guard was not checked.`)];
      const running_m = fit[end].runningDiameter_m;
      if (running_m <= guard_m.value) return [];
      return [
        {
          severity: 'blocks',
          where,
          what: (say) => {
            const [found, clear] = apart(running_m, guard_m.value, 1, (length_m, places) => lengthText(length_m, say, places));
            return en`${name}: ${teeth[end]} teeth with the chain on turn in ${found}; the guard clears ${clear}.`;
          },
          figure: { value: running_m * 1000, unit: 'mm' },
          limit: { value: guard_m.value * 1000, unit: 'mm' },
        },
      ];
    }),
};
