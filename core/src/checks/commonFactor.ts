import { type Check, notMade, type PairSubject } from '../check.ts';
import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import { END_WORDS, ENDS } from '../plan.ts';

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** With a common factor the same teeth meet the same links again and again, and wear does not spread. */
export const commonFactor: Check<PairSubject> = {
  id: 'stage.commonFactor',
  title: en`Common factor`,
  worst: 'notes',
  source: en`Encyclopaedia Britannica, 11th ed., Mechanics: wheels prime to each other; a tooth meets a link again after lcm(teeth, pitches)`,
  judge: ({ stage, teeth, fit }) => {
    const { loop } = fit;
    if (loop === null)
      return [
        notMade(
          [...stage.place, 'pitches'],
          en`${stage.name}: neither pitches nor centre distance are given, so common factors were not checked.`,
        ),
      ];
    return ENDS.flatMap((end) => {
      const factor = gcd(teeth[end], loop.pitches);
      if (factor === 1) return [];
      const turns = loop.pitches / factor;
      return [
        {
          severity: 'notes' as const,
          where: [...stage[end].place, 'teeth'],
          what: () =>
            en`${stage.name} ${END_WORDS[end]}: ${teeth[end]} teeth and ${loop.pitches} pitches share the factor ${factor}; a tooth meets the same ${driveKind(stage.kind).words.loop} link every ${turns} turns.`,
          figure: { value: factor, unit: 'common factor' as const },
          limit: { value: 1, unit: 'common factor' as const },
        },
      ];
    });
  },
};
