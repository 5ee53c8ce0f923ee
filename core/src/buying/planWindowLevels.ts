import type { Plan } from '../plan.ts';
import type { Fraction } from '../ratio.ts';
import { type Hooks, partOf } from '../search/index.ts';
import type { Cap } from './cap.ts';
import type { Need } from './need.ts';
import type { SidePump } from './parts.ts';
import { allowed, inWords, proofOf, type WindowBuying, wantedRatios } from './planWindow.ts';
import type { RatioWindow } from './ratioWindow.ts';
import type { BuyingWish } from './target.ts';
import type { Wheel } from './wheels.ts';
import { windowLevel } from './windowLevel.ts';
import { beginWindow, spreadOver } from './windowSearch.ts';
import type { WindowTarget } from './windowTargets.ts';
import { windowWorst } from './windowWorst.ts';

/** The least that plans of just so many parts leave of a window. */
export interface WindowLevel {
  readonly purchases: number;
  /** How far off the worst target is served then; null where nothing can be built. */
  readonly offRatio: Fraction | null;
  /** The target that the first such plan serves worst, B per A. */
  readonly worstTarget: Fraction;
  /** Fewer parts leave no more. */
  readonly noGain: boolean;
  /** All plans that leave as little, in their order, at most 50; none where there is no gain. */
  readonly plans: readonly (readonly Wheel[])[];
  readonly planPumps: readonly (readonly SidePump[])[];
  readonly planCount: number;
  /** There may be more than were counted. */
  readonly more: boolean;
}

export interface WindowLevels {
  /** From no purchase up to the most that was looked at. */
  readonly levels: readonly WindowLevel[];
  /** The fewest for the tolerance of the window; their plans may leave more than the least. */
  readonly within: WindowBuying;
}

/** The share of the work that goes into the levels. */
const LEVELS_SHARE = 0.9;

/**
 * For each number of parts the least worst off-ratio that any plan leaves in a window, and the fewest for the tolerance.
 *
 * @throws RangeError on a strange window or wish; Cancelled when asked to stop
 * @source as `windowLevel`
 * @example planWindowLevels(Bench 1 of the demo, window, { teeth: { from: 13, to: 40 }, mostPurchases: 3 }).levels.length  // 4
 */
export function planWindowLevels(plan: Plan, window: RatioWindow, wish: Omit<BuyingWish, 'priceOf'>, hooks: Hooks = {}): WindowLevels {
  const search = beginWindow(plan, window, wish);
  const mostPurchases = search.sets.most;
  const follow = (need: Need) => windowWorst(search.shop, need, window, { tolerance: null, asked: true, hooks });
  let best: Need = [];
  let { offRatio, worstTarget } = follow(best);
  const levels: WindowLevel[] = [
    { purchases: 0, offRatio, worstTarget, noGain: false, plans: [[]], planPumps: [[]], planCount: 1, more: false },
  ];
  const proofs: (readonly WindowTarget[])[] = [[{ wanted: worstTarget, asked: true }]];
  for (let size = 1; size <= mostPurchases; size++) {
    const cap: Cap = { offRatio, strict: true };
    const targets = [{ wanted: worstTarget, asked: true }, ...spreadOver(window)];
    const part = partOf(hooks, (LEVELS_SHARE * (size - 1)) / mostPurchases, LEVELS_SHARE / mostPurchases);
    const level = windowLevel(
      search,
      { purchases: size, cap, lowest: true, targets, likely: withOneMore(best, size, search.shop.parts.count) },
      part,
    );
    const [first] = level.plans;
    if (first !== undefined) {
      best = first;
      ({ offRatio, worstTarget } = follow(best));
    }
    proofs.push(proofOf(level, proofs.at(-1) ?? []));
    levels.push({
      purchases: size,
      offRatio,
      worstTarget,
      noGain: first === undefined,
      ...inWords(search, level),
      planCount: level.planCount,
    });
  }
  const fewest = levels.findIndex(({ offRatio }) => offRatio !== null && offRatio.compare(window.tolerance) <= 0);
  // what no plan of so many parts leaves less than is more than the tolerance, and its targets show it
  const proof = proofs.at(fewest < 0 ? mostPurchases : fewest - 1) ?? [];
  const proofRatios = fewest === 0 ? [] : wantedRatios(proof);
  const part = partOf(hooks, LEVELS_SHARE, 1 - LEVELS_SHARE);
  const plans = fewest < 0 ? { plans: [], planPumps: [], more: false } : inWords(search, allowed(search, fewest, proof, part));
  hooks.progress?.(1);
  return { levels, within: { fewestPurchases: fewest < 0 ? null : fewest, ...plans, mostPurchases, proofRatios } };
}

/** Plans that add one part to what did best with fewer. */
function withOneMore(best: Need, size: number, parts: number): readonly Need[] {
  const padded = [...best, ...Array<number>(size - 1 - best.length).fill(0)];
  return Array.from({ length: parts }, (_, one) => [...padded, one].sort((a, b) => a - b));
}
