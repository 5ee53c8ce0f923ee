import { type Check, centreNotGiven, type PairSubject } from '../check.ts';
import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';

/** A plain chain has an even number of pitches; an odd one needs an offset link, which weakens it. */
export const pitchCount: Check<PairSubject> = {
  id: 'stage.pitchCount',
  title: en`Odd pitch count`,
  worst: 'blocks',
  source: en`handbook practice, from memory: even counts; an offset link carries 0.65 to 0.8 of the chain, so 0.65 is taken`,
  judge: ({ stage, fit }) => {
    const { loop } = fit;
    const word = driveKind(stage.kind).words.loop;
    const unknown = centreNotGiven(stage, en`it is not known which pitch count of ${word} fits`);
    if (loop === null) return [unknown];
    const where = [...stage.place, loop.count === null ? 'pitches' : 'centre'];
    const figure = { value: loop.pitches, unit: 'pitches' as const };
    if (loop.count?.kind === 'oddOnly') {
      return [
        {
          severity: 'blocks' as const,
          where,
          what: () =>
            en`${stage.name}: only an odd count, ${loop.pitches} pitches of ${word}, would fit, and offset links are not accepted here.`,
          figure,
          limit: null,
        },
      ];
    }
    if (loop.pitches % 2 === 0) return loop.count === null ? [unknown] : [];
    return [
      {
        severity: 'warns' as const,
        where,
        what: () => en`${stage.name}: ${loop.pitches} pitches need an offset link; the ${word} then carries 0.65 of its load.`,
        figure,
        limit: null,
      },
    ];
  },
};
