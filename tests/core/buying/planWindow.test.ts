import { describe, expect, it } from 'vitest';
import { planWindow, type RatioWindow } from '../../../core/src/buying/index.ts';
import type { Plan } from '../../../core/src/plan.ts';
import { type Fraction, ratioOf } from '../../../core/src/ratio.ts';
import { demoPlan } from '../../file/demoPlan.ts';
import { diceOf } from '../search/randomProblem.ts';
import { type Kind, nameOf, randomShop } from './randomShop.ts';
import { choices, madeWith } from './slowPurchases.ts';

/** The off-ratio is worst at an end of the window or half way between two ratios, so these few decide. */
function isServed(plan: Plan, wheels: readonly Kind[], { low, high, tolerance }: RatioWindow): boolean {
  const ratios = madeWith(plan, wheels)
    .filter(({ isBuildable }) => isBuildable())
    .map(({ ratio }) => ratio)
    .sort((a, b) => a.compare(b));
  const middles = ratios.slice(1).map((ratio, index) => ratio.add(ratios[index] ?? ratio).div(2));
  const wanted = [low, ...middles.filter((one) => one.compare(low) > 0 && one.compare(high) < 0), high];
  return wanted.every((one) => ratios.some((ratio) => ratio.div(one).sub(1).abs().compare(tolerance) <= 0));
}

const offRatio = (ratio: Fraction, wanted: Fraction): Fraction => ratio.div(wanted).sub(1).abs();

describe('planWindow against trying every choice of purchases [slow twin]', () => {
  it('agrees on 90 random shops', () => {
    const told = { none: 0, bought: 0, nothing: 0 };
    for (let seed = 1000; seed < 1090; seed++) {
      const dice = diceOf(seed);
      const { targets, wish, kinds } = randomShop(dice);
      const [plan] = targets.map((target) => target.plan);
      if (plan === undefined) throw new Error('no target');
      // near what is fitted, and so narrow or so rough that a few wheels can do
      const near = targets[0]?.wantedBPerA.mul(ratioOf(dice.between(85, 105), 100)) ?? ratioOf(1, 2);
      const window = { low: near, high: near.mul(ratioOf(dice.between(100, 130), 100)), tolerance: ratioOf(dice.between(1, 12), 100) };
      const found = planWindow(plan, window, wish);
      const sizes = Array.from({ length: wish.mostPurchases + 1 }, (_, size) => size);
      const every = sizes.map((size) => choices(kinds, size).filter((wheels) => isServed(plan, wheels, window)));
      const fewest = every.findIndex((plans) => plans.length > 0);
      expect(found.fewestPurchases, `seed ${seed}`).toBe(fewest < 0 ? null : fewest);
      const names = found.plans.map((wheels) =>
        wheels
          .map(({ size, teeth, bore_m }) => nameOf({ size, teeth, bore: bore_m.known ? bore_m.value.mul(1000).toString() : null }))
          .sort()
          .join('; '),
      );
      expect(names.sort(), `seed ${seed}`).toEqual((every[fewest] ?? []).map((wheels) => wheels.map(nameOf).sort().join('; ')).sort());
      for (const wheels of choices(kinds, Math.max(0, (found.fewestPurchases ?? wish.mostPurchases + 1) - 1))) {
        const made = madeWith(plan, wheels).filter(({ isBuildable }) => isBuildable());
        const open = found.proofRatios.filter((one) => made.every(({ ratio }) => offRatio(ratio, one).compare(window.tolerance) > 0));
        if (found.fewestPurchases !== 0) expect(open.length, `seed ${seed}`).toBeGreaterThan(0);
      }
      if (found.fewestPurchases === null) told.none += 1;
      else if (found.fewestPurchases === 0) told.nothing += 1;
      else told.bought += 1;
    }
    for (const count of Object.values(told)) expect(count).toBeGreaterThan(5);
  });
  it('Bench 1 (invented example), 1:1 to 9:2 within 1.5 %: one wheel does, and only that of 36 teeth', () => {
    const plan = demoPlan({ machine: 'bench-1', material: 'e12' });
    const window = { low: ratioOf(2, 9), high: ratioOf(1, 1), tolerance: ratioOf(15, 1000) };
    const { fewestPurchases, plans, more } = planWindow(plan, window, { teeth: { from: 13, to: 40 }, mostPurchases: 3 });
    expect([fewestPurchases, plans.map((wheels) => wheels.map(({ teeth }) => teeth)), more]).toEqual([1, [[36]], false]);
    const kinds = Array.from({ length: 28 }, (_, i): Kind => ({ size: '08B', teeth: 13 + i, bore: '25' }));
    expect(isServed(plan, [], window)).toBe(false);
    expect(kinds.filter((kind) => isServed(plan, [kind], window)).map(({ teeth }) => teeth)).toEqual([36]);
  });
  it('refuses a window that is none', () => {
    const { targets, wish } = randomShop(diceOf(1));
    const [plan] = targets.map((target) => target.plan);
    if (plan === undefined) throw new Error('no target');
    const window = { low: ratioOf(1, 2), high: ratioOf(2, 1), tolerance: ratioOf(1, 10) };
    for (const change of [{ low: ratioOf(0, 1) }, { high: ratioOf(1, 3) }, { tolerance: ratioOf(0, 1) }, { tolerance: ratioOf(1, 1) }])
      expect(() => planWindow(plan, { ...window, ...change }, wish)).toThrow(RangeError);
  });
});
