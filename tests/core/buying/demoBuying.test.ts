// The invented demo shop; its answers were worked out apart from this program.
import { expect, test } from 'vitest';
import { type BuyingTarget, optionsWith, type PurchasePlan, planBuying, targetOf } from '../../../core/src/buying/index.ts';
import { exactText, ONE } from '../../../core/src/ratio.ts';
import { demoPlan } from '../../file/demoPlan.ts';

const wish = { teeth: { from: 13, to: 40 }, mostPurchases: 3 };

function target(material: string, machine = 'bench-1'): BuyingTarget {
  const found = targetOf(demoPlan({ machine, material }));
  if (found === null) throw new Error(`${material} has no limits`);
  return found;
}
const words = ({ purchases }: PurchasePlan): string => purchases.map(({ quantity, wheel }) => `${quantity} of ${wheel.teeth}`).join(', ');
const rows = (targets: readonly BuyingTarget[], plan: PurchasePlan | undefined) =>
  optionsWith(targets, plan?.purchases.map(({ wheel }) => wheel) ?? []).map((option) => [
    option?.mounted.teeth.map(({ driver, driven }) => `${driver} to ${driven}`).join(', '),
    option && exactText(ONE.div(option.bPerA)),
    option?.inside,
  ]);

test('L5 on Bench 1: one wheel is enough, 14 or 37 teeth (invented example)', () => {
  const targets = [target('l5')];
  const { levels, fewestPurchases, unserved } = planBuying(targets, wish);
  expect([fewestPurchases, unserved]).toEqual([1, []]);
  expect(levels.map(({ purchases, servedCount, planCount, noGain }) => [purchases, servedCount, planCount, noGain])).toEqual([
    [0, 0, 1, false],
    [1, 1, 2, false],
  ]);
  expect(levels[1]?.plans.map(words)).toEqual(['1 of 14', '1 of 37']);
  expect(levels[1]?.plans.map((plan) => rows(targets, plan))).toEqual([[['14 to 35', '5/1', true]], [['15 to 37', '74/15', true]]]);
});
test('all three materials on Bench 1: the same two plans, and what the wheel gains is L5', () => {
  const targets = [target('e12'), target('u40'), target('l5')];
  const { levels, fewestPurchases } = planBuying(targets, wish);
  expect(fewestPurchases).toBe(1);
  expect(levels.map(({ servedCount }) => servedCount)).toEqual([2, 3]);
  expect(levels[1]?.plans.map(words)).toEqual(['1 of 14', '1 of 37']);
  for (const plan of levels[1]?.plans ?? []) {
    expect(plan.served).toEqual([0, 1, 2]);
    expect(plan.purchases.map(({ alone, lost }) => [alone, lost])).toEqual([[[2], [2]]]);
    expect(rows(targets, plan).map(([, , inside]) => inside)).toEqual([true, true, true]);
  }
  expect(rows(targets, levels[1]?.plans[0])[0]).toEqual(['23 to 25', '50/23', true]);
});
test('L5 on Bench 2 needs nothing', () => {
  const { levels, fewestPurchases } = planBuying([target('l5', 'bench-2')], wish);
  expect(fewestPurchases).toBe(0);
  expect(levels[0]?.plans).toEqual([{ purchases: [], pumps: null, served: [0] }]);
});
test('what is no list of targets on one machine is refused', () => {
  expect(() => planBuying([], wish)).toThrow(RangeError);
  expect(() => planBuying([target('l5'), target('l5', 'bench-2')], wish)).toThrow(RangeError);
  expect(() => planBuying([target('l5')], { ...wish, mostPurchases: 9 })).toThrow(RangeError);
});
