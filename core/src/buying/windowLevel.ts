import { type Fraction, float, least } from '../ratio.ts';
import { Cancelled, type Hooks } from '../search/index.ts';
import { type Cap, FLOAT_SLACK, within } from './cap.ts';
import { inOrder, type Need } from './need.ts';
import { plansLeft } from './plansLeft.ts';
import { KEPT_PLANS } from './purchasePlan.ts';
import type { WindowSearch } from './windowSearch.ts';
import type { WindowTarget } from './windowTargets.ts';
import { windowWorst } from './windowWorst.ts';

export interface LevelWish {
  /** Parts of a plan, just so many. */
  readonly purchases: number;
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
  readonly offRatio: Fraction | null;
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
  readonly offRatio: Fraction | null;
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
  const left = plansLeft(sets, shop.parts.count, wish.purchases, mostTogether(shop));
  const all = left.count();
  const ofSize = offs.upTo(wish.purchases);
  const used: WindowTarget[] = [];
  const found: Need[] = [];
  let { cap } = wish;
  let isFull = false;
  const check = (): void => {
    if (hooks.cancelled?.()) throw new Cancelled();
    hooks.progress?.(1 - Math.log1p(left.count()) / Math.log1p(all + 1));
  };
  /** Whether the answer may rest on it. */
  const hold = (target: WindowTarget): boolean => {
    check();
    if (left.count() <= FEW_PLANS) return false;
    const before = left.count();
    left.hold(ofSize.of(target, cap, left.held, hooks));
    // where the lowest is asked for, it counts too what a target leaves of a plan
    return wish.lowest || left.count() < before;
  };
  const follow = (need: Need): Followed => followed({ shop, window }, need, cap, hooks);
  const lower = (offRatio: Fraction | null): void => {
    if (!wish.lowest || offRatio === null) return;
    if (cap.offRatio !== null && offRatio.compare(cap.offRatio) < 0) found.length = 0;
    cap = { offRatio: cap.offRatio === null ? offRatio : least(cap.offRatio, offRatio), strict: false };
    left.dropAbove(float(offRatio) + FLOAT_SLACK);
  };

  if (all > FEW_PLANS) {
    for (const need of wish.likely) {
      check();
      const { offRatio, isOpen } = follow(need);
      if (!isOpen) lower(offRatio);
    }
  }
  used.push(...wish.targets.filter(hold));
  for (let round = 0, next = 0; left.count() > 0 && !isFull; round++) {
    const open: WindowTarget[] = [];
    for (const { need, leastOffRatio } of left.takeLeast(PLANS_A_ROUND)) {
      check();
      if (cap.offRatio !== null && leastOffRatio > float(cap.offRatio) + FLOAT_SLACK) continue;
      const plan = follow(need);
      if (plan.isOpen) {
        open.push(plan.worst);
        continue;
      }
      lower(plan.offRatio);
      found.push(need);
      used.push(plan.worst);
      isFull = isEnough(found.length, leastOffRatio, cap, wish);
    }
    const before = left.count();
    used.push(...open);
    if (round < next) continue;
    open.forEach(hold);
    if (before - left.count() < WORTH * open.length) next = round + ROUNDS_WITHOUT;
  }
  found.sort(inOrder);
  return {
    offRatio: found.length > 0 ? cap.offRatio : null,
    plans: found.slice(0, KEPT_PLANS),
    planCount: found.length,
    more: isFull && (left.count() > 0 || (!wish.lowest && found.length > KEPT_PLANS)),
    targets: used,
  };
}

/** Both wheels of every open stage, and both pumps: no option needs more. */
const mostTogether = ({ choices, parts }: WindowSearch['shop']): number =>
  2 * choices.problem.stages.length + (parts.pumps.length > 0 ? 2 : 0);

/** First without the rules, which is sooner done and rules out most. */
function followed({ shop, window }: Pick<WindowSearch, 'shop' | 'window'>, need: Need, cap: Cap, hooks: Hooks): Followed {
  const quick = windowWorst(shop, need, window, { tolerance: cap.offRatio, asked: false, hooks });
  if (!within(cap, quick.offRatio)) return { offRatio: quick.offRatio, worst: { wanted: quick.worstTarget, asked: false }, isOpen: true };
  const { offRatio, worstTarget } = windowWorst(shop, need, window, { tolerance: cap.offRatio, asked: true, hooks });
  return { offRatio, worst: { wanted: worstTarget, asked: true }, isOpen: !within(cap, offRatio) };
}

/** Whether no more plans need be found: where the lowest is asked for, none that is left may leave less. */
function isEnough(found: number, leastOffRatio: number, { offRatio }: Cap, { lowest }: LevelWish): boolean {
  return lowest ? found >= MOST_EQUAL && offRatio !== null && leastOffRatio >= float(offRatio) - FLOAT_SLACK : found >= KEPT_PLANS;
}
