import { describe, expect, it } from 'vitest';
import { exactText, Fraction, ratioOf } from '../../../core/src/ratio.ts';
import { findOptions, type SearchProblem, slideOf } from '../../../core/src/search/index.ts';
import { anything, row, stageOf, teethFrom, trainProblem } from './racks.ts';
import { type Dice, diceOf, randomProblem } from './randomProblem.ts';
import { everyOption } from './slowTwin.ts';
import { TUNINGS } from './tunings.ts';

/** Targets as a hand would drag them: small steps, so that the band is met, with a jump now and then. */
function dragged(dice: Dice, { wanted }: SearchProblem): readonly Fraction[] {
  let at = wanted;
  return Array.from({ length: 6 }, () => {
    at = at.mul(dice.pick([ratioOf(1000001, 1000000), ratioOf(999, 1000), ratioOf(11, 10), ratioOf(1, 2), ratioOf(2, 1)]));
    return at;
  });
}

/** The ratios of the slow twin in its order, each once, with its options. */
function everyRatio(problem: SearchProblem) {
  const ratios = new Map<string, { readonly inside: boolean | null; readonly offRatio: string }>();
  for (const { ratio, offRatio, inside } of everyOption(problem, anything))
    ratios.set(exactText(ratio), { inside, offRatio: exactText(offRatio) });
  return [...ratios].map(([ratio, rest]) => ({ ratio, ...rest }));
}

describe('a sliding target, against plain enumeration', () => {
  it.each([0, 100, 200])('finds the same ratios in the same order on 40 random problems from seed %i', (from) => {
    for (let seed = from; seed < from + 40; seed++) {
      const dice = diceOf(seed);
      const { problem } = randomProblem(dice);
      const keep = dice.pick([1, 3, 10]);
      const tuning = dice.pick([TUNINGS[0]?.[1], TUNINGS[1]?.[1], TUNINGS[3]?.[1]]);
      const slide = slideOf(problem, tuning);
      for (const wanted of dragged(dice, problem)) {
        const expected = everyRatio({ ...problem, wanted });
        const found = slide?.at(wanted, keep) ?? [];
        const shown = found.map((one) => ({ ratio: exactText(one.ratio), inside: one.inside, offRatio: exactText(one.offRatio) }));
        // above and below at the same distance: either may come first
        const order = (list: typeof shown) =>
          list.map(({ inside, offRatio }) => ({ inside, off: new Fraction(offRatio).abs().toFraction() }));
        expect(order(shown), `seed ${seed}`).toEqual(order(expected.slice(0, keep)));
        for (const one of shown) expect(expected, `seed ${seed}`).toContainEqual(one);
        expect(new Set(shown.map(({ ratio }) => ratio)).size, `seed ${seed}`).toBe(shown.length);
      }
    }
  });

  it('lists the options of each ratio as the search does, under the same rules', () => {
    for (let seed = 0; seed < 40; seed++) {
      const dice = diceOf(seed);
      const { problem, rules } = randomProblem(dice);
      const slide = slideOf(problem);
      for (const wanted of dragged(dice, problem)) {
        const every = everyOption({ ...problem, wanted }, rules);
        for (const { ratio, options } of slide?.at(wanted, 4) ?? []) {
          const expected = every.filter((option) => option.ratio.equals(ratio)).slice(0, 3);
          expect(options(rules, 3).map(row), `seed ${seed}`).toEqual(expected.map(row));
        }
      }
    }
  });
});

describe('a sliding target on a large rack', () => {
  const sizes = teethFrom(12, 40);
  const problem = trainProblem('1.37', [stageOf('B', sizes), stageOf('A', sizes), stageOf('B', sizes)]);

  it('finds after many steps what a search of its own finds', () => {
    const slide = slideOf(problem);
    for (let step = 0; step < 30; step++) {
      const wanted = new Fraction(1370000 + step * (step < 15 ? 1 : 977), 1000000);
      const found = slide?.at(wanted, 5) ?? [];
      const [first] = findOptions({ ...problem, wanted }, anything, 1).options;
      const nearest = found.filter(({ offRatio }) => offRatio.abs().equals(found[0]?.offRatio.abs() ?? 0));
      const options = nearest.flatMap(({ options }) => options(anything, 1).map(row));
      expect(options, `step ${step}`).toContainEqual(row(first ?? null));
    }
  });

  it.each([0, -1, 1.5, Number.NaN])('refuses to keep %d ratios', (keep) => {
    expect(() => slideOf(problem)?.at(ratioOf(1, 2), keep)).toThrow(RangeError);
  });

  it('refuses a target that is not above 0', () => {
    expect(() => slideOf(problem)?.at(new Fraction(0), 1)).toThrow(RangeError);
  });

  it('has nothing to slide where a stage has no buildable pair', () => {
    const [stage] = problem.stages;
    const none = { effect: stage?.effect ?? 'B', pairs: (stage?.pairs ?? []).map((pair) => ({ ...pair, failed: 1 })) };
    expect(slideOf({ ...problem, stages: [none] })).toBeNull();
  });
});
