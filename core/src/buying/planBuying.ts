import { Cancelled, type Hooks, partOf } from '../search/index.ts';
import { type CheapestPlans, cheapestPlans } from './cheapest.ts';
import type { Need } from './need.ts';
import { noterOf } from './noter.ts';
import { type PlanTable, planTable } from './planTable.ts';
import { KEPT_PLANS, type PurchasePlan, planOf } from './purchasePlan.ts';
import { partsOf, type Shop, shopOf } from './shop.ts';
import { type BuyingTarget, type BuyingWish, byPlan, checkWish } from './target.ts';

/** The best that just so many parts can do. */
export interface BuyingLevel {
  readonly purchases: number;
  /** Targets within reach, at most. */
  readonly servedCount: number;
  /** Fewer parts serve as many. */
  readonly noGain: boolean;
  /** All plans that serve as many, in the order of their parts, at most 50; none where there is no gain. */
  readonly plans: readonly PurchasePlan[];
  readonly planCount: number;
}

export interface Buying {
  /** From no purchase up, until all targets are served or the most that was looked at is reached. */
  readonly levels: readonly BuyingLevel[];
  /** Fewest parts that serve all targets; null where the most that was looked at does not. */
  readonly fewestPurchases: number | null;
  /** Up to so many parts were looked at: as many as asked, or as there is room for. */
  readonly mostPurchases: number;
  /** Targets that no such plan serves. */
  readonly unserved: readonly number[];
  /** Of all plans that serve all targets the cheapest, however many parts it takes; it may take more than the fewest. Null without prices, or where no plan of parts with a price serves all. */
  readonly cheapest: CheapestPlans | null;
}

/**
 * The fewest parts to buy so that every target has an option inside its limits that can be built, and what fewer can do. A target is
 * served by a plan if the search finds such an option with the parts of the plan at hand.
 *
 * @param targets on one machine and one rack, 1 or more
 * @throws RangeError on targets of several machines or a strange wish; Cancelled when asked to stop
 * @source our choice of method: what each option inside needs, then every choice of wheels by number (the lattice of subsets)
 * @example planBuying([L5 on Bench 1 of the demo], { teeth: { from: 13, to: 40 }, mostPurchases: 3 }).fewestPurchases  // 1
 */
export function planBuying(targets: readonly BuyingTarget[], wish: BuyingWish, hooks: Hooks = {}): Buying {
  checkWish(targets, wish);
  const shops = byPlan(targets, (plan) => shopOf(plan, wish));
  const parts = partsOf(shops);
  const table = planTable(parts.count, targets.length, wish.mostPurchases);
  const { mostPurchases } = table;
  const reachable = noteNeeds(targets, shops, table, partOf(hooks, 0, 0.6));
  const words = (need: Need): PurchasePlan => planOf((one) => table.served(one), parts, need, wish.pumps === true);
  const levels: BuyingLevel[] = [];
  for (let purchases = 0; purchases <= mostPurchases && levels.at(-1)?.servedCount !== targets.length; purchases++) {
    if (hooks.cancelled?.()) throw new Cancelled();
    levels.push(levelOf(table, words, purchases, levels.at(-1)?.servedCount ?? -1));
  }
  const last = levels.at(-1);
  const fewestPurchases = last?.servedCount === targets.length ? last.purchases : null;
  const priced = { ...wish, mostPurchases, inTable: table, fewestPurchases };
  const cheapest = wish.priceOf === undefined ? null : cheapestPlans(targets, shops, priced, partOf(hooks, 0.6, 0.4));
  hooks.progress?.(1);
  return {
    levels,
    fewestPurchases,
    cheapest,
    mostPurchases,
    unserved: [...targets.keys()].filter((target) => !reachable.has(target)),
  };
}

/** Notes for every target what its options inside the limits need. Answers the targets that have any. */
function noteNeeds(targets: readonly BuyingTarget[], shops: readonly Shop[], table: PlanTable, hooks: Hooks): ReadonlySet<number> {
  const noters = new Map(shops.map((shop) => [shop, noterOf(shop, table.mostPurchases)] as const));
  const reachable = new Set<number>();
  for (const [target, { wantedBPerA, limits }] of targets.entries()) {
    const shop = shops[target];
    const part = partOf(hooks, target / targets.length, 1 / targets.length);
    if (shop && noters.get(shop)?.note(table, target, { wantedBPerA, limits }, part) === true) reachable.add(target);
  }
  return reachable;
}

function levelOf(table: PlanTable, words: (need: Need) => PurchasePlan, purchases: number, before: number): BuyingLevel {
  let servedCount = Math.max(before, 0);
  let planCount = 0;
  let best: Need[] = [];
  table.sweep(purchases, (need, count) => {
    if (count <= before || count < servedCount) return;
    if (count > servedCount) {
      servedCount = count;
      planCount = 0;
      best = [];
    }
    planCount += 1;
    if (best.length < KEPT_PLANS) best.push([...need]);
  });
  return { purchases, servedCount, noGain: planCount === 0, plans: best.map(words), planCount };
}
