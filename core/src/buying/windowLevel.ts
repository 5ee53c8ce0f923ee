import { type Fraction, float, least } from '../ratio.ts';
import { Cancelled, type Hooks } from '../search/index.ts';
import { type Cap, FLOAT_SLACK, within } from './cap.ts';
import { inOrder, type Need } from './needs.ts';
import { plansLeft } from './plansLeft.ts';
import { KEPT_PLANS } from './purchasePlan.ts';
import type { WindowSearch } from './windowSearch.ts';
import type { WindowTarget } from './windowTargets.ts';
import { windowWorst } from './windowWorst.ts';

export interface LevelWish {
  /** Parts of a plan, just so many. */
  readonly size: number;
  readonly cap: Cap;
  /** Whether a plan that leaves less becomes the measure of all others; else every plan within the cap will do. */
  readonly lowest: boolean;
  /** Targets that rule out many plans. */
  readonly targets: readonly WindowTarget[];
  /** Plans that may leave little, looked at first. */
  readonly likely: readonly Need[];
}

export interface LevelFound {
  /** What is left at worst by the plans: by each of them, where the lowest was asked for. Null where there is no plan. */
  readonly off: Fraction | null;
  /** In their order, at most 50. */
  readonly plans: readonly Need[];
  readonly planCount: number;
  /** There may be more than these. */
  readonly more: boolean;
  /** With these it can be seen that no other plan is within the cap, and none of these plans leaves less. */
  readonly targets: readonly WindowTarget[];
}

/** How a plan fares: at its worst target, and whether that is beyond the cap. */
interface Followed {
  readonly off: Fraction | null;
  readonly worst: WindowTarget;
  readonly isOpen: boolean;
}

const PLANS_A_ROUND = 4;
/** So few plans are sooner followed through the window than held against more targets. */
const FEW_PLANS = 48;
/** A target costs about as much as following so many plans through the window; where it rules out fewer, plans are followed for a while. */
const WORTH = 24;
const ROUNDS_WITHOUT = 8;
/** More equal plans are not counted. */
const MOST_EQUAL = 500;

/**
 * The plans of just so many parts that leave least of the window, or no more than is allowed.
 *
 * @throws Cancelled when asked to stop
 * @source our choice of method: what a few targets leave at worst is a lower bound of what the window does; the plan of the lowest is
 *         followed through the whole window, and where it fails is one more target
 */
export function windowLevel({ shop, window, sets, offs }: WindowSearch, wish: LevelWish, hooks: Hooks): LevelFound {
  const left = plansLeft(sets, shop.parts.count, wish.size);
  const all = left.count();
  const ofSize = offs.upTo(wish.size);
  const used: WindowTarget[] = [];
  const found: Need[] = [];
  let { cap } = wish;
  let isFull = false;
  const check = (): void => {
    if (hooks.cancelled?.()) throw new Cancelled();
    hooks.progress?.(1 - Math.log1p(left.count()) / Math.log1p(all + 1));
  };
  const hold = (targets: readonly WindowTarget[], isWorth: boolean): void => {
    for (const target of targets) {
      check();
      used.push(target);
      if (isWorth && left.count() > FEW_PLANS) left.hold(ofSize.of(target, cap, left.held, hooks));
    }
  };
  const follow = (need: Need): Followed => {
    const quick = windowWorst(shop, need, window, { tolerance: cap.off, asked: false, hooks });
    if (!within(cap, quick.off)) return { off: quick.off, worst: { wanted: quick.worst, asked: false }, isOpen: true };
    const { off, worst } = windowWorst(shop, need, window, { tolerance: cap.off, asked: true, hooks });
    return { off, worst: { wanted: worst, asked: true }, isOpen: !within(cap, off) };
  };
  const lower = (off: Fraction | null): void => {
    if (!wish.lowest || off === null) return;
    if (cap.off !== null && off.compare(cap.off) < 0) found.length = 0;
    cap = { off: cap.off === null ? off : least(cap.off, off), strict: false };
    left.dropAbove(float(off) + FLOAT_SLACK);
  };

  if (all > FEW_PLANS) {
    for (const need of wish.likely) {
      check();
      const { off, isOpen } = follow(need);
      if (!isOpen) lower(off);
    }
  }
  hold(wish.targets, true);
  for (let round = 0, next = 0; left.count() > 0 && !isFull; round++) {
    const open: WindowTarget[] = [];
    for (const { need, atLeast } of left.takeLeast(PLANS_A_ROUND)) {
      check();
      if (cap.off !== null && atLeast > float(cap.off) + FLOAT_SLACK) continue;
      const plan = follow(need);
      if (plan.isOpen) {
        open.push(plan.worst);
        continue;
      }
      lower(plan.off);
      found.push(need);
      used.push(plan.worst);
      isFull = isEnough(found.length, atLeast, cap, wish);
    }
    const before = left.count();
    hold(open, round >= next);
    if (round >= next && before - left.count() < WORTH * open.length) next = round + ROUNDS_WITHOUT;
  }
  found.sort(inOrder);
  return {
    off: found.length > 0 ? cap.off : null,
    plans: found.slice(0, KEPT_PLANS),
    planCount: found.length,
    more: isFull && (left.count() > 0 || (!wish.lowest && found.length > KEPT_PLANS)),
    targets: used,
  };
}

/** Whether no more plans need be found: where the lowest is asked for, none that is left may leave less. */
function isEnough(found: number, atLeast: number, { off }: Cap, { lowest }: LevelWish): boolean {
  return lowest ? found >= MOST_EQUAL && off !== null && atLeast >= float(off) - FLOAT_SLACK : found >= KEPT_PLANS;
}
