import type { Plan } from '../plan.ts';
import { float, least, ratioOf } from '../ratio.ts';
import { type Multisets, multisets } from './multisets.ts';
import type { RatioWindow } from './ratioWindow.ts';
import { type Shop, shopOf } from './shop.ts';
import { type BuyingWish, checkWish } from './target.ts';
import { type TargetOffs, targetOffs, type WindowTarget } from './windowTargets.ts';

/** What is shared by all searches of one window. */
export interface WindowSearch {
  readonly shop: Shop;
  readonly window: RatioWindow;
  readonly sets: Multisets;
  readonly offs: TargetOffs;
}

/** @throws RangeError on a strange window or wish */
export function beginWindow(plan: Plan, window: RatioWindow, wish: BuyingWish): WindowSearch {
  checkWindow(window);
  checkWish([{ plan, wantedBPerA: window.low, limits: { low: window.tolerance.neg(), high: window.tolerance } }], wish);
  const shop = shopOf(plan, wish);
  const sets = multisets(shop.parts.count, wish.mostPurchases);
  return { shop, window, sets, offs: targetOffs(shop, sets, sets.most) };
}

/** So many targets, evenly spread by logarithm, before any plan is looked at. */
const SPREAD = 12;

/** Targets before any plan is looked at. */
export function spreadOver({ low, high }: RatioWindow): readonly WindowTarget[] {
  const span = float(high.div(low));
  const fine = 2 ** 20;
  const steps = low.equals(high) ? [0] : Array.from({ length: SPREAD }, (_, i) => i / (SPREAD - 1));
  return steps.map((step) => {
    const wanted = step === 1 ? high : least(high, low.mul(ratioOf(Math.round(fine * span ** step), fine)));
    return { wanted, asked: false };
  });
}

function checkWindow({ low, high, tolerance }: RatioWindow): void {
  if (low.compare(0) <= 0 || high.compare(low) < 0) throw new RangeError(`buying: window ${low.toFraction()} to ${high.toFraction()}`);
  if (tolerance.compare(0) <= 0 || tolerance.compare(1) >= 0) throw new RangeError(`buying: tolerance ${tolerance.toFraction()}`);
}
