import type { Hooks } from '../search/index.ts';
import { bestLevel } from './bestLevel.ts';
import { type LaidPlan, layPlan } from './optionsWith.ts';
import type { Buying } from './planBuying.ts';
import type { PurchasePlan } from './purchasePlan.ts';
import type { BuyingTarget } from './target.ts';

/** The first plans of an answer, each with what every target then gets. */
export interface LaidBuying {
  /** Of the fewest purchases that serve most targets. */
  readonly fewest: readonly LaidPlan[];
  /** Of the lowest price; none without prices. */
  readonly cheapest: readonly LaidPlan[];
}

/**
 * Lays the first plans of an answer on the rack, and asks the search what every target then gets.
 *
 * @param keep  so many plans of each sort
 * @source as `layPlan`
 */
export function layBuying(targets: readonly BuyingTarget[], found: Buying, keep: number, { progress }: Hooks = {}): LaidBuying {
  const fewest = bestLevel(found).plans.slice(0, keep);
  const cheapest = found.cheapest?.plans.slice(0, keep) ?? [];
  const total = fewest.length + cheapest.length;
  const lay = (plans: readonly PurchasePlan[], before: number): readonly LaidPlan[] =>
    plans.map((plan, index) => {
      progress?.((before + index) / total);
      return layPlan(targets, plan);
    });
  return { fewest: lay(fewest, 0), cheapest: lay(cheapest, fewest.length) };
}
