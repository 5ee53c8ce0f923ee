import { expect, test } from 'vitest';
import { search } from '../../core/src/answer.ts';
import { checksIn, choicesOf } from '../../core/src/choices.ts';
import { exactText } from '../../core/src/ratio.ts';
import { inLine, planOf, pumpRow, shopOf, stageRow } from './planFixture.ts';
import { changedBy } from './quick/changedPlan.ts';

test('an option wants no fewer pieces than its pairs are known to, or blocks, on 40 random changes of each machine [slow twin: the rack laid out]', () => {
  let known = 0;
  let tooMany = 0;
  for (let seed = 501; seed <= 660; seed++) {
    const { plan, dice } = changedBy(seed);
    const { problem, purchases, failures } = choicesOf(plan);
    expect(problem.mostBought).toBe(plan.choice.purchases);
    for (let i = 0; i < 10; i++) {
      const candidate = { pump: 0, pairs: problem.stages.map(({ pairs }) => dice.below(pairs.length)) };
      const bought = problem.stages.reduce((sum, { pairs }, s) => sum + (pairs[candidate.pairs[s] ?? -1]?.bought ?? 0), 0);
      const lacksPieces = checksIn(failures(candidate)).includes('option.quantity');
      known += Number(bought > 0);
      tooMany += Number(bought > plan.choice.purchases);
      if (!lacksPieces) expect([seed, i, purchases(candidate) >= bought]).toEqual([seed, i, true]);
      if (bought > plan.choice.purchases) expect([seed, i, lacksPieces]).toEqual([seed, i, true]);
    }
  }
  expect(known).toBeGreaterThan(20);
  expect(tooMany).toBeGreaterThan(20);
});

test.each([1, 2, 3, 4])('one bar for all searches of an answer: it never falls, and ends at 1 (change %i of the machines)', (seed) => {
  const seen: number[] = [];
  search(changedBy(seed).plan, { hooks: { progress: (done) => seen.push(done) } });
  expect(seen.length).toBeGreaterThan(3);
  expect(seen).toEqual(seen.toSorted((a, b) => a - b));
  expect(seen.at(-1)).toBe(1);
});

test('pumps are chosen only where that is asked for, each of A with each of B, and counted as a part to change', () => {
  const withSpares = (anyPump: boolean) => {
    const machine = inLine([stageRow(17, 34)]);
    const pumps = (side: string, ...displacements: readonly string[]) => displacements.map((cc) => pumpRow(`pump-${side}${cc}`, cc));
    return choicesOf(
      planOf(
        shopOf({
          ...machine,
          A: { ...machine.A, fitted: 'pump-a10', pumps: pumps('a', '20', '10') },
          B: { ...machine.B, fitted: 'pump-b5', pumps: pumps('b', '5', '4', '3') },
          search: { anyPump },
        }),
      ),
    );
  };
  const sets = ({ problem, pumpsOf }: ReturnType<typeof withSpares>) =>
    problem.pumps.map(({ ratio, changed }, pump) => {
      const { A, B } = pumpsOf({ pump, pairs: [] });
      return [A.id, B.id, exactText(ratio), changed];
    });
  expect(sets(withSpares(false))).toEqual([['pump-a10', 'pump-b5', '1/2', 0]]);
  expect(sets(withSpares(true))).toEqual([
    ['pump-a20', 'pump-b5', '1/4', 1],
    ['pump-a20', 'pump-b4', '1/5', 2],
    ['pump-a20', 'pump-b3', '3/20', 2],
    ['pump-a10', 'pump-b5', '1/2', 0],
    ['pump-a10', 'pump-b4', '2/5', 1],
    ['pump-a10', 'pump-b3', '3/10', 1],
  ]);
});
