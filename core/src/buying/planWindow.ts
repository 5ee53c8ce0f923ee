import type { Plan } from '../plan.ts';
import { exactText, type Fraction } from '../ratio.ts';
import { type Hooks, partOf } from '../search/index.ts';
import { bought, type SidePump } from './parts.ts';
import type { RatioWindow } from './ratioWindow.ts';
import type { BuyingWish } from './target.ts';
import type { Wheel } from './wheels.ts';
import { type LevelFound, windowLevel } from './windowLevel.ts';
import { beginWindow, spreadOver, type WindowSearch } from './windowSearch.ts';
import type { WindowTarget } from './windowTargets.ts';

export interface WindowBuying {
  /** Fewest parts with which the whole window is within the tolerance; null where as many as were looked at do not do. */
  readonly fewestPurchases: number | null;
  /** All plans of so many parts, in their order, at most 50: their wheels; one of which two are bought stands there twice. */
  readonly plans: readonly (readonly Wheel[])[];
  /** The pumps of each plan. */
  readonly planPumps: readonly (readonly SidePump[])[];
  /** There may be more than these. */
  readonly more: boolean;
  /** Up to so many parts were looked at. */
  readonly mostPurchases: number;
  /** Wanted ratios, B per A, that no plan of fewer parts serves together: with them anybody can check that fewer do not do. */
  readonly proofRatios: readonly Fraction[];
}

/**
 * The fewest parts to buy so that every ratio of a window can be built within a tolerance.
 *
 * @throws RangeError on a strange window or wish; Cancelled when asked to stop
 * @source as `windowLevel`
 * @example planWindow(Bench 1 of the demo, window, { teeth: null, mostPurchases: 2 }).fewestPurchases
 */
export function planWindow(plan: Plan, window: RatioWindow, wish: Omit<BuyingWish, 'priceOf'>, hooks: Hooks = {}): WindowBuying {
  const search = beginWindow(plan, window, wish);
  const mostPurchases = search.sets.most;
  let proof: readonly WindowTarget[] = [];
  for (let size = 0; size <= mostPurchases; size++) {
    const level = allowed(
      search,
      size,
      size === 0 ? spreadOver(window) : proof,
      partOf(hooks, size / (mostPurchases + 1), 1 / (mostPurchases + 1)),
    );
    if (level.planCount > 0) return { fewestPurchases: size, ...inWords(search, level), mostPurchases, proofRatios: wantedRatios(proof) };
    proof = proofOf(level, proof);
  }
  return { fewestPurchases: null, plans: [], planPumps: [], more: false, mostPurchases, proofRatios: wantedRatios(proof) };
}

/** Targets that no plan of so many parts serves; where nothing more can be bought they are those of fewer. */
export const proofOf = ({ targets }: LevelFound, ofFewer: readonly WindowTarget[]): readonly WindowTarget[] =>
  targets.length === 0 ? ofFewer : targets;

/** The plans of so many parts with which the window is within the tolerance. */
export const allowed = (search: WindowSearch, purchases: number, targets: readonly WindowTarget[], hooks: Hooks): LevelFound =>
  windowLevel(search, { purchases, cap: { offRatio: search.window.tolerance, strict: false }, lowest: false, targets, likely: [] }, hooks);

/** Plans as they are ordered. */
export const inWords = ({ shop }: WindowSearch, { plans, more }: LevelFound) => ({
  plans: plans.map((need) => bought(shop.parts, need).wheels),
  planPumps: plans.map((need) => bought(shop.parts, need).pumps),
  more,
});

/** Each once. */
export function wantedRatios(targets: readonly WindowTarget[]): readonly Fraction[] {
  return [...new Map(targets.map(({ wanted }) => [exactText(wanted), wanted])).values()];
}
