import { Cancelled, type Hooks } from '../search/index.ts';
import type { Need } from './needs.ts';
import type { PlanTable } from './planTable.ts';
import { KEPT_PLANS, type PurchasePlan, planOf } from './purchasePlan.ts';
import type { Wheel } from './wheels.ts';

/** The plans that cost least; all of them serve every target. */
export interface CheapestPlans {
  /** Of a whole plan, a whole number of the smallest coin. */
  readonly price: number;
  /** In the order of their number of wheels, then of their wheels; at most 50, and none with a wheel it could do without. */
  readonly plans: readonly PurchasePlan[];
  readonly planCount: number;
}

/**
 * Goes through every plan that serves all targets, from the fewest wheels to the most there is room for. A plan with a wheel of unknown
 * price has none, and is passed over.
 *
 * @returns null where every plan that serves all holds a wheel of unknown price
 * @throws RangeError on a price that is no whole number from 0; Cancelled when asked to stop
 */
export function cheapestPlans(
  table: PlanTable,
  wheels: readonly Wheel[],
  priceOf: (wheel: Wheel) => number | null,
  { from, targetCount, cancelled }: { readonly from: number; readonly targetCount: number; readonly cancelled: Hooks['cancelled'] },
): CheapestPlans | null {
  const prices = wheels.map((wheel) => {
    const price = priceOf(wheel);
    if (price !== null && (!Number.isSafeInteger(price) || price < 0)) throw new RangeError(`buying: price ${price}`);
    return price ?? Infinity;
  });
  let least = Infinity;
  let best: Need[] = [];
  let planCount = 0;
  for (let purchases = from; purchases <= table.mostPurchases; purchases++) {
    if (cancelled?.()) throw new Cancelled();
    table.sweep(purchases, (need, count) => {
      if (count < targetCount) return;
      let price = 0;
      for (const wheel of need) price += prices[wheel] ?? Infinity;
      if (price > least || price === Infinity || hasSpare(table, need, targetCount)) return;
      if (price < least) {
        least = price;
        best = [];
        planCount = 0;
      }
      planCount += 1;
      if (best.length < KEPT_PLANS) best.push([...need]);
    });
  }
  return planCount === 0 ? null : { price: least, plans: best.map((need) => planOf(table, wheels, need)), planCount };
}

/** Whether the plan serves as many without one of its wheels: where wheels are free, it costs no more. */
const hasSpare = (table: PlanTable, need: Need, targetCount: number): boolean =>
  need.some((_, index) => table.served(need.toSpliced(index, 1)).length === targetCount);
