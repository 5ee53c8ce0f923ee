import { describe, expect, it } from 'vitest';
import { ratioOf } from '../../../core/src/ratio.ts';
import { bestPerChange, type Candidate, findOptions, type Rules, type SearchProblem, tradeOff } from '../../../core/src/search/index.ts';
import { row, stageOf, teethFrom, trainProblem, wheelsOf } from './racks.ts';
import { type Dice, diceOf, randomProblem } from './randomProblem.ts';

/** What has to be bought for every pair is known, and nothing that wants more than so many pieces in all is admitted. */
function withPurchases(problem: SearchProblem, { admit }: Rules, dice: Dice): { readonly problem: SearchProblem; readonly rules: Rules } {
  const stages = problem.stages.map((stage) => ({
    ...stage,
    pairs: stage.pairs.map((pair) => (dice.chance(10) ? pair : { ...pair, bought: dice.pick([0, 1, 1, 2] as const) })),
  }));
  const bought = { ...problem, stages, mostBought: dice.below(2 * stages.length + 1) };
  const wanted = (candidate: Candidate): number => wheelsOf(bought, candidate).reduce((sum, pair) => sum + (pair.bought ?? 0), 0);
  return { problem: bought, rules: { admit: (candidate) => (wanted(candidate) > bought.mostBought ? null : admit(candidate)) } };
}

describe('a search that knows what has to be bought', () => {
  it('finds what the rules alone leave, on 300 random problems [slow twin: the same search without that knowledge]', () => {
    let listed = 0;
    for (let seed = 40_000; seed < 40_300; seed++) {
      const dice = diceOf(seed);
      const random = randomProblem(dice);
      const { problem, rules } = withPurchases(random.problem, random.rules, dice);
      const { mostBought: _most, ...unknowing } = problem;
      const keep = dice.between(1, 40);
      for (const scope of ['all', 'inside'] as const) {
        const found = findOptions(problem, rules, keep, {}, scope);
        const expected = findOptions(unknowing, rules, keep, {}, scope);
        listed += found.options.length;
        expect([seed, found.options.map(row), found.more]).toEqual([seed, expected.options.map(row), expected.more]);
      }
      expect([seed, bestPerChange(problem, rules).map(row)]).toEqual([seed, bestPerChange(unknowing, rules).map(row)]);
      expect([seed, tradeOff(problem, rules).map(row)]).toEqual([seed, tradeOff(unknowing, rules).map(row)]);
    }
    expect(listed).toBeGreaterThan(1000);
  });

  it('asks about thousands of options where one piece may be bought, not about 10^9', () => {
    const stages = (['B', 'A', 'B'] as const).map((effect) => stageOf(effect, teethFrom(12, 42), undefined, [20, 25]));
    const problem: SearchProblem = {
      ...trainProblem(ratioOf(1000, 2163), stages),
      stages: stages.map((stage) => ({ ...stage, pairs: stage.pairs.map((pair) => ({ ...pair, bought: pair.changed })) })),
      mostBought: 1,
    };
    let asked = 0;
    const admit = (candidate: Candidate): number | null => {
      asked += 1;
      const pieces = wheelsOf(problem, candidate).reduce((sum, { changed }) => sum + changed, 0);
      return pieces > 1 ? null : pieces;
    };
    // as it is, or one of six wheels in 30 other sizes
    expect(findOptions(problem, { admit }, 200).options.length).toBe(1 + 6 * 30);
    expect(bestPerChange(problem, { admit }).filter((best) => best !== null).length).toBe(2);
    expect(asked).toBeLessThan(1000);
  });
});
