import type { Check, PairSubject } from '../check.ts';
import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import { END_WORDS, ENDS } from '../plan.ts';
import { amountText } from '../shown.ts';

export const fewTeeth: Check<PairSubject> = {
  id: 'slot.fewTeeth',
  title: en`Few teeth`,
  worst: 'warns',
  source: en`handbook practice, from memory: 17 teeth or more on a roller-chain sprocket; speed ripple 1 - cos(π/N), plane geometry`,
  judge: ({ stage, teeth }) => {
    const { smooth, ripple } = driveKind(stage.kind);
    const least = smooth.teeth;
    return ENDS.filter((end) => teeth[end] < least).map((end) => ({
      severity: 'warns' as const,
      where: [...stage[end].place, 'teeth'],
      what: (say) =>
        en`${stage.name} ${END_WORDS[end]}, ${teeth[end]} teeth: speed ripple ${amountText(ripple(teeth[end]).value, 'share', say)}; under ${least} teeth it will not run smoothly. Prefer a pair with more teeth.`,
      figure: { value: teeth[end], unit: 'teeth' as const },
      limit: { value: least, unit: 'teeth' as const },
    }));
  },
};
