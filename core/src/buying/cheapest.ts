import { type Hooks, partOf } from '../search/index.ts';
import { cheapestNeeds } from './cheapestSearch.ts';
import { holdsAll, inOrder, type Need } from './need.ts';
import type { Parts } from './parts.ts';
import type { PlanTable } from './planTable.ts';
import { KEPT_PLANS, type PurchasePlan, planOf } from './purchasePlan.ts';
import { mostNeeded, requirementsOf } from './requirements.ts';
import { partsOf, type Shop } from './shop.ts';
import type { BuyingTarget, BuyingWish } from './target.ts';

/** The plans that cost least; all of them serve every target. */
export interface CheapestPlans {
  /** Of a whole plan, a whole number of the smallest coin. */
  readonly price: number;
  /** In the order of their number of parts, then of their parts; at most 50, and none with a part it could do without. */
  readonly plans: readonly PurchasePlan[];
  readonly planCount: number;
  /** There may be more than were counted. */
  readonly more: boolean;
  /** Null: no plan at all is cheaper. Else none of up to so many parts. */
  readonly provenUpTo: number | null;
}

/**
 * The cheapest of all plans that serve every target, whatever their number of parts. A part of unknown price is not bought.
 *
 * @param inTable the table of all plans of up to `mostPurchases` parts, swept up to the fewest that serve all
 * @param fewestPurchases how many these are; null where none does
 * @returns null where every plan that serves all holds a part of unknown price, or none was found
 * @throws RangeError on a price that is no whole number from 0; Cancelled when asked to stop
 * @source our choice of method: what the options inside the limits need, and of that the cheapest choice
 */
export function cheapestPlans(
  targets: readonly BuyingTarget[],
  shops: readonly Shop[],
  { inTable, fewestPurchases, ...wish }: BuyingWish & { readonly inTable: PlanTable; readonly fewestPurchases: number | null },
  hooks: Hooks,
): CheapestPlans | null {
  const parts = partsOf(shops);
  const prices = pricesOf(parts, wish);
  const needed = shops.map((shop) => mostNeeded(shop, wish.mostPurchases));
  const most = Math.max(...needed.map((one) => one.most));
  const isOf = (part: number): boolean => (prices[part] ?? Infinity) < Infinity;
  const requirements = requirementsOf(targets, shops, { most, isOf }, partOf(hooks, 0, 0.5));
  if (requirements.some((ways) => ways.length === 0)) return null;
  const known = fewestPurchases === null ? null : cheapestInTable(inTable, prices, fewestPurchases, targets.length);
  const cheapest = cheapestNeeds(requirements, prices, known, partOf(hooks, 0.5, 0.5));
  if (cheapest.plans.length === 0) return null;
  const servedBy = (need: Need): readonly number[] =>
    requirements.flatMap((ways, target) => (ways.some((way) => holdsAll(need, way)) ? [target] : []));
  // an option that needs more parts costs as much as they do at least
  const dearer = (most + 1) * Math.min(...prices) > cheapest.price;
  const all = cheapest.proven && (dearer || needed.every((one) => one.all));
  return {
    price: cheapest.price,
    plans: [...cheapest.plans]
      .sort(inOrder)
      .slice(0, KEPT_PLANS)
      .map((need) => planOf(servedBy, parts, need, wish.pumps === true)),
    planCount: cheapest.plans.length,
    more: cheapest.more,
    provenUpTo: all ? null : inTable.mostPurchases,
  };
}

/** Of all plans in the table that serve all. */
function cheapestInTable(table: PlanTable, prices: readonly number[], fewest: number, targetCount: number): Need | null {
  let least = Infinity;
  let best: Need | null = null;
  for (let purchases = fewest; purchases <= table.mostPurchases; purchases++)
    table.sweep(purchases, (need, count) => {
      const price = need.reduce((sum, part) => sum + (prices[part] ?? 0), 0);
      if (count < targetCount || price >= least) return;
      least = price;
      best = [...need];
    });
  return best;
}

function pricesOf({ wheels, pumps }: Parts, { priceOf, pumpPriceOf }: BuyingWish): readonly number[] {
  const prices = [...wheels.map((wheel) => priceOf?.(wheel) ?? null), ...pumps.map((pump) => pumpPriceOf?.(pump) ?? null)];
  return prices.map((price) => {
    if (price !== null && (!Number.isSafeInteger(price) || price < 0)) throw new RangeError(`buying: price ${price}`);
    return price ?? Infinity;
  });
}
