import { describe, expect, it } from 'vitest';
import { exactText } from '../../../core/src/ratio.ts';
import { type Effect, findOptions, type Option, type SearchProblem } from '../../../core/src/search/index.ts';
import { anything, wheelsOf } from './racks.ts';
import { diceOf, randomProblem } from './randomProblem.ts';

const SEEDS = Array.from({ length: 300 }, (_, i) => 40_000 + i);
const problems = SEEDS.map((seed) => ({ seed, dice: diceOf(seed), problem: randomProblem(diceOf(seed)).problem }));
const all = (problem: SearchProblem): readonly Option[] => findOptions(problem, anything, 10 ** 6).options;

/** Rows in words that do not depend on where a pair stands in its list. */
const inWheels = (problem: SearchProblem): readonly unknown[] =>
  all(problem).map((option) => [
    exactText(option.ratio),
    option.changed,
    option.pump,
    wheelsOf(problem, option).map(({ driver, driven }) => [driver, driven]),
  ]);

describe('laws of the search', () => {
  it('a wheel more never worsens the best', () => {
    for (const { seed, dice, problem } of problems) {
      const fewer = { ...problem, stages: problem.stages.map((stage) => ({ ...stage, pairs: stage.pairs.filter(() => dice.chance(70)) })) };
      const [before] = all({ ...fewer, limits: null });
      const [after] = all({ ...problem, limits: null });
      if (before) expect(after?.offRatio.abs().compare(before.offRatio.abs()), `seed ${seed}`).toBeLessThanOrEqual(0);
    }
  });

  it('the order of the pairs in a list does not matter', () => {
    for (const { seed, problem } of problems) {
      const turned = { ...problem, stages: problem.stages.map((stage) => ({ ...stage, pairs: [...stage.pairs].reverse() })) };
      expect(inWheels(turned), `seed ${seed}`).toEqual(inWheels(problem));
    }
  });

  it('exchanging A and B inverts every ratio', () => {
    const exchanged: Record<Effect, Effect> = { A: 'B', B: 'A', none: 'none' };
    for (const { seed, problem } of problems) {
      const other: SearchProblem = {
        stages: problem.stages.map(({ effect, pairs }) => ({ effect: exchanged[effect], pairs })),
        pumps: problem.pumps.map((pump) => ({ ...pump, ratio: pump.ratio.inverse() })),
        fixed: problem.fixed.inverse(),
        wanted: problem.wanted.inverse(),
        limits: null,
      };
      const inverted = all(other).map(({ ratio }) => exactText(ratio.inverse()));
      expect(inverted.sort(), `seed ${seed}`).toEqual(
        all(problem)
          .map(({ ratio }) => exactText(ratio))
          .sort(),
      );
    }
  });

  it('every ratio listed is the product of its own wheels', () => {
    for (const { seed, problem } of problems) {
      for (const option of all(problem).slice(0, 20)) {
        const made = wheelsOf(problem, option).reduce(
          (ratio, { driver, driven }, s) => {
            const effect = problem.stages[s]?.effect;
            return effect === 'B' ? ratio.mul(driver).div(driven) : effect === 'A' ? ratio.mul(driven).div(driver) : ratio;
          },
          problem.fixed.mul(problem.pumps[option.pump]?.ratio ?? 0),
        );
        expect(exactText(made), `seed ${seed}`).toBe(exactText(option.ratio));
        expect(exactText(made.div(problem.wanted).sub(1)), `seed ${seed}`).toBe(exactText(option.offRatio));
      }
    }
  });
});
