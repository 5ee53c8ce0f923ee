import { choicesOf } from '../choices.ts';
import type { Plan } from '../plan.ts';
import { type Fraction, ratioOf } from '../ratio.ts';
import { Cancelled, type Hooks } from '../search/index.ts';
import type { Need } from './needs.ts';
import { type Noter, noterOf } from './noter.ts';
import { openRatios, type RatioWindow } from './openRatios.ts';
import { planTable } from './planTable.ts';
import { KEPT_PLANS } from './purchasePlan.ts';
import { type BuyingWish, buyingPlan, checkWish } from './target.ts';
import { type Wheel, wheelsToBuy, withBought } from './wheels.ts';

export interface WindowBuying {
  /** Fewest wheels with which the whole window is within the tolerance; null where as many as were looked at do not do. */
  readonly fewestPurchases: number | null;
  /** All plans of so many wheels, in their order, at most 50; a wheel of which two are bought stands there twice. */
  readonly plans: readonly (readonly Wheel[])[];
  /** There may be more than these. */
  readonly more: boolean;
  /** Up to so many wheels were looked at. */
  readonly mostPurchases: number;
  /** Wanted ratios, B per A, that no plan of fewer wheels serves together: with them anybody can check that fewer do not do. */
  readonly proofRatios: readonly Fraction[];
}

/** So many wanted ratios of one plan, and so many plans, before all plans are held against what was found. */
const PER_PLAN = 3;
const PLANS_A_ROUND = 4;

/**
 * The fewest wheels to buy so that every ratio of a window can be built within a tolerance.
 *
 * @throws RangeError on a strange window or wish; Cancelled when asked to stop
 * @source our choice of method: a few wanted ratios rule out most plans; what is left is followed through the whole window, and where it
 *         fails, that place is one more wanted ratio
 * @example planWindow(Bench 1 of the demo, window, { teeth: null, mostPurchases: 2 }).fewestPurchases
 */
export function planWindow(plan: Plan, window: RatioWindow, wish: Omit<BuyingWish, 'priceOf'>, hooks: Hooks = {}): WindowBuying {
  checkWindow(window);
  checkWish([{ plan, wantedBPerA: window.low, limits: { low: window.tolerance.neg(), high: window.tolerance } }], wish);
  const buying = buyingPlan(plan, wish);
  const wheels = wheelsToBuy(buying);
  const { mostPurchases } = planTable(wheels.length, 1, wish.mostPurchases);
  const left = remaining(noterOf(buying, choicesOf(buying), wheels, mostPurchases), wheels.length, mostPurchases, window);
  const laid = (need: Need) => need.flatMap((index) => wheels[index] ?? []);
  const sound = new Set<string>();
  const proofRatios: Fraction[] = [];
  let targets: readonly Fraction[] = [window.low, ratioOf(1, 2).mul(window.low.add(window.high)), window.high];
  for (;;) {
    if (hooks.cancelled?.()) throw new Cancelled();
    proofRatios.push(...targets);
    const { plans, more } = left.without(targets, hooks);
    const [first] = plans;
    if (first === undefined) return { fewestPurchases: null, plans: [], more: false, mostPurchases, proofRatios };
    const found: Fraction[] = [];
    let failed = 0;
    for (const need of plans) {
      if (sound.has(need.join())) continue;
      if (hooks.cancelled?.()) throw new Cancelled();
      const open = openRatios(withBought(plan, laid(need)), window, PER_PLAN);
      if (open.length === 0) sound.add(need.join());
      else {
        found.push(...open.filter((target) => found.every((other) => !other.equals(target))));
        failed += 1;
      }
      if (failed === PLANS_A_ROUND) break;
    }
    if (found.length === 0) return { fewestPurchases: first.length, plans: plans.map(laid), more, mostPurchases, proofRatios };
    targets = found;
  }
}

/** The plans that serve every wanted ratio so far. */
function remaining(noter: Noter, wheelCount: number, mostPurchases: number, { tolerance }: RatioWindow) {
  const limits = { low: tolerance.neg(), high: tolerance };
  const ruledOut: Uint8Array[] = [];
  return {
    /** Holds these wanted ratios against all plans, and answers the plans of fewest wheels that are left. */
    without: (targets: readonly Fraction[], hooks: Hooks): { readonly plans: readonly Need[]; readonly more: boolean } => {
      const table = planTable(wheelCount, targets.length, mostPurchases);
      const { cancelled } = hooks;
      for (const [index, wantedBPerA] of targets.entries())
        noter.note(table, index, { wantedBPerA, limits }, cancelled === undefined ? {} : { cancelled });
      const fewest: Need[] = [];
      let count = 0;
      for (let purchases = 0; purchases <= mostPurchases; purchases++) {
        const isFirst = count === 0;
        const out = ruledOut[purchases] ?? new Uint8Array(table.planCount(purchases));
        ruledOut[purchases] = out;
        let place = 0;
        table.sweep(purchases, (need, served) => {
          if (served < targets.length) out[place] = 1;
          if (out[place++] === 1 || !isFirst) return;
          count += 1;
          if (fewest.length < KEPT_PLANS) fewest.push([...need]);
        });
      }
      return { plans: fewest, more: count > fewest.length };
    },
  };
}

function checkWindow({ low, high, tolerance }: RatioWindow): void {
  if (low.compare(0) <= 0 || high.compare(low) < 0) throw new RangeError(`buying: window ${low.toFraction()} to ${high.toFraction()}`);
  if (tolerance.compare(0) <= 0 || tolerance.compare(1) >= 0) throw new RangeError(`buying: tolerance ${tolerance.toFraction()}`);
}
