// The invented demo shop; its answers were worked out apart from this program.
import { expect, test } from 'vitest';
import { boughtText } from '../../../core/src/buyWords.ts';
import { exactText, ONE, ratioOf, whole } from '../../../core/src/ratio.ts';
import { reachOf } from '../../../core/src/reach/reach.ts';
import { type WindowPlans, windowPlans } from '../../../core/src/windowPlans.ts';
import { leftText, windowGainText, windowSentence } from '../../../core/src/windowWords.ts';
import { demoPlan } from '../../file/demoPlan.ts';
import { say } from '../../file/shop.ts';

const plain = (text: string) => text.replaceAll('\u00A0', ' ');
const plan = demoPlan({ machine: 'bench-1', material: 'e12' });
const buying = { teeth: { from: 13, to: 40 }, mostPurchases: 2 };
const plans = (high: [number, number], percent: [number, number], most = 2): WindowPlans =>
  windowPlans(
    plan,
    { low: ONE, high: ratioOf(...high), tolerance: ratioOf(percent[0], 100 * percent[1]) },
    { ...buying, mostPurchases: most },
    3,
  );

test('Bench 1 from 1 to 9:2 within 1.5 %: the one wheel that does, and what each number of wheels leaves', () => {
  const found = plans([9, 2], [3, 2]);
  const window = { low: ONE, high: ratioOf(9, 2), tolerance: ratioOf(3, 200) };
  expect([found.fewestPurchases, found.planCount, found.more]).toEqual([1, 1, false]);
  expect(found.plans.map(({ purchases }) => purchases.map(({ wheel }) => wheel.teeth))).toEqual([[36]]);
  const [only] = found.plans;
  expect(only?.offRatio?.compare(window.tolerance)).toBeLessThanOrEqual(0);
  const [purchase] = only?.purchases ?? [];
  if (purchase === undefined) throw new Error('no purchase');
  // one wheel is the whole plan: alone it leaves what the plan leaves, without it what the rack leaves
  expect([purchase.alone, purchase.without]).toEqual([{ worstTarget: only?.worstTarget, offRatio: only?.offRatio }, leftOf(found, 0)]);
  expect(found.steps.map(({ purchases }) => purchases)).toEqual([0, 1, 2]);
  expect(
    found.steps
      .map(({ first }) => first && boughtText(first))
      .slice(0, 2)
      .map((words) => words && plain(words)),
  ).toEqual(['', '08B 36 T']);
  expect(found.steps[1]?.offRatio?.compare(found.steps[0]?.offRatio ?? 0)).toBe(-1);
  expect(plain(windowSentence(found, window, say))).toBe(
    '1 wheel, the fewest, brings every ratio from 1 to 4.5 : 1 within ± 1.50 %; one plan.',
  );
  expect(plain(windowGainText(purchase, say))).toBe(
    'alone it leaves 1.45 % at 280 : 69 (4.0580 : 1); without it 2.86 % at 9 : 2 (4.5000 : 1) would be left',
  );
});

const leftOf = (found: WindowPlans, step: number) => {
  const { worstTarget = null, offRatio = null } = found.steps[step] ?? {};
  return { worstTarget, offRatio };
};

test('from 1 to 5 the rack leaves 7.143 % at 5:1, as the scenario states it', () => {
  const found = plans([5, 1], [8, 1]);
  expect([found.fewestPurchases, found.planCount]).toEqual([0, 1]);
  expect(found.steps[0] && [exactText(found.steps[0].worstTarget ?? ONE), exactText(found.steps[0].offRatio ?? ONE)]).toEqual([
    '5/1',
    '1/14',
  ]);
  expect(plain(windowSentence(found, { low: ONE, high: whole(5), tolerance: ratioOf(2, 25) }, say))).toBe(
    'Nothing to buy: the rack as it is brings every ratio from 1 to 5 : 1 within ± 8 %.',
  );
});

test('where as many as may be bought do not do, that is said with the ratios that show it', () => {
  const found = plans([5, 1], [1, 1], 1);
  expect([found.fewestPurchases, found.proofRatios.length > 0]).toEqual([null, true]);
  // the plans told are those that leave least: the last number of wheels that gained anything
  const last = found.steps.findLast(({ noGain }) => !noGain);
  const [first] = found.plans;
  if (last === undefined || first === undefined) throw new Error('a step and a plan');
  expect([last.purchases, found.plans.length, found.planCount > 0]).toEqual([1, Math.min(3, found.planCount), true]);
  for (const one of found.plans) {
    expect([one.worstTarget, one.offRatio]).toEqual([last.worstTarget, last.offRatio]);
    expect([one.purchases.length, one.pumps]).toEqual([1, null]);
  }
  expect(last.first && boughtText(last.first)).toBe(boughtText(first));
  expect(found.steps.map((step) => step.first?.pumps)).toEqual(found.steps.map(({ first }) => first && null));
  expect(plain(windowSentence(found, { low: ONE, high: whole(5), tolerance: ratioOf(1, 100) }, say))).toBe(
    'No plan of up to 1 wheel brings every ratio from 1 to 5 : 1 within ± 1 %.',
  );
  expect(leftText({ worstTarget: null, offRatio: null }, say)).toBe('nothing can be built');
});

test('where pumps are bought too, they are told with what each is good for, as the search with them says', () => {
  const row = { id: 'pb9', name: 'PB9', displacement: { value: '9.0', unit: 'cc/rev' } };
  const bench = demoPlan({ machine: 'bench-1', material: 'e12' }, [['machines', 0, 'B', 'pumps', 1], row]);
  const window = { low: ratioOf(6, 10), high: ratioOf(7, 10), tolerance: ratioOf(2, 100) };
  const found = windowPlans(bench, window, { teeth: { from: 13, to: 40 }, mostPurchases: 1, pumps: true }, 3);
  expect([found.fewestPurchases, found.buysPumps]).toEqual([1, true]);
  expect(found.plans.map(boughtText)).toEqual(['pump B PB9']);
  expect(found.steps.map(({ first }) => first && boughtText(first))).toEqual(['', 'pump B PB9']);
  const [pump] = found.plans[0]?.pumps ?? [];
  if (pump === undefined) throw new Error('no pump');
  const withIt = reachOf({ ...bench, choice: { ...bench.choice, anyPump: true } }, { ...window, bins: 1 }).worst?.offRatio;
  const without = reachOf(bench, { ...window, bins: 1 }).worst?.offRatio;
  expect([pump.alone.offRatio, pump.without.offRatio].map((off) => off && exactText(off))).toEqual(
    [withIt, without].map((off) => off && exactText(off)),
  );
  expect(plain(windowSentence(found, window, say))).toMatch(
    /^1 part, the fewest, brings every ratio from 0\.6 to 0\.7 : 1 within ± 2 %; one plan\.$/,
  );
});
