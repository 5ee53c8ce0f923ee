import { choicesOf } from '../choices.ts';
import { flowOf } from '../flow.ts';
import type { Mounted } from '../layOut.ts';
import type { Plan } from '../plan.ts';
import { type Fraction, ONE } from '../ratio.ts';
import { type Gap, type Hooks, listReach, type Option, type ReachList, type ReachWindow, reachWithin } from '../search/index.ts';
import { binned } from './bins.ts';

/** What is asked of a machine's reach. Ratios are A per B by volume, as run. */
export interface ReachWish {
  /** Above 0 and below `high`. */
  readonly low: Fraction;
  readonly high: Fraction;
  /** How far off a target may be served, as a share from 0 to less than 1. */
  readonly tolerance: Fraction;
  /** Into how many equal parts, by logarithm, the window is cut for counting. */
  readonly bins: number;
}

/** A ratio that can be built. */
export interface ReachRatio {
  readonly aPerB: Fraction;
  /** Of all options that make it the first, in the order of the search. */
  readonly first: Mounted;
  readonly partsChanged: number;
  readonly purchases: number;
}

/** The lowest or the highest ratio of all, with what flows of both sides together over the usable range of the dial; null where nothing is left of it. */
export interface ReachEnd extends ReachRatio {
  readonly flow_m3_per_s: { readonly from: Fraction; readonly to: Fraction } | null;
}

/** Targets that lie between two neighbouring ratios, as far as they lie in the window. */
export interface ReachGap {
  /** Null: nothing lower can be built. */
  readonly low: Fraction | null;
  /** Null: nothing higher can be built. */
  readonly high: Fraction | null;
  /** The target that is served worst. */
  readonly worstTarget: Fraction;
  /** How far off the nearest ratio is there, without its sign: from `low` it is B-rich, from `high` B-lean. */
  readonly offRatio: Fraction;
}

export interface Reach {
  readonly wish: ReachWish;
  /** Different ratios in the window that can be built; null where there are too many to list. */
  readonly distinct: number | null;
  /** Of all that can be built, in the window or not; null where nothing can. */
  readonly smallest: ReachEnd | null;
  readonly largest: ReachEnd | null;
  /** Those in the window, ascending; null where there are more than `LISTED_RATIOS`. */
  readonly ratios: readonly ReachRatio[] | null;
  /** How many of them in each of the bins, the lowest first; null where they are too many to list. */
  readonly perBin: readonly number[] | null;
  /** Worst of all targets in the window; null where nothing can be built. */
  readonly worst: ReachGap | null;
  /** The same between two ratios, so not beyond the last; null where the window meets no such gap. */
  readonly widest: ReachGap | null;
  /** Wider than the tolerance, widest first, at most `KEPT_GAPS`. */
  readonly gaps: readonly ReachGap[];
  readonly moreGaps: number;
  /** Share of the window within the tolerance, by logarithm. */
  readonly covered: number;
  /** A per B by weight = A per B by volume × this; null where a density is not given. */
  readonly weightFactor: Fraction | null;
}

export const LISTED_RATIOS = 5000;
export const KEPT_GAPS = 50;

/** A machine with its rack, ready for one window after another. */
export interface Reachable {
  /** @throws RangeError on a window that holds nothing, or a tolerance or number of bins that is none; Cancelled when asked to stop */
  readonly within: (wish: ReachWish, hooks?: Hooks) => Reach;
}

/** Above so many products of ratios they are not listed. */
const MOST_PRODUCTS = 2 ** 27;

/**
 * Every ratio that a machine can make with what the plan's search may use; worked out once, for any window.
 *
 * @param plan its wanted ratio and limits play no part
 * @throws Cancelled when asked to stop
 * @source the search's own ratios and rules; gaps by the definition beside `gapBetween`
 * @example reachable(Bench 1 of the demo).within({ low: 1, high: 5, tolerance: 2 %, bins: 40 }).distinct  // 191
 */
export function reachable(plan: Plan, hooks: Hooks = {}): Reachable {
  const choices = choicesOf(plan);
  const list = listReach(choices.problem, choices.rules(0), MOST_PRODUCTS, hooks);
  if (list === null) throw new RangeError('reach: too many ratios');
  const ratioOf = (option: Option): ReachRatio => {
    const { A, B } = choices.pumpsOf(option);
    const first = { pumps: { A: A.id, B: B.id }, teeth: choices.teethOf(option) };
    return { aPerB: ONE.div(option.ratio), first, partsChanged: option.changed, purchases: option.purchases };
  };
  const endAt = (index: number): ReachEnd | null => {
    const [option] = list.firstOptions(index, index + 1);
    if (option === undefined) return null;
    const { ends } = flowOf(plan, { pumps: choices.pumpsOf(option), teeth: choices.teethOf(option) });
    return { ...ratioOf(option), flow_m3_per_s: ends && { from: ends.from.total.value, to: ends.to.total.value } };
  };
  const size = list.log.length;
  const smallest = size === 0 ? null : endAt(size - 1);
  const largest = size === 0 ? null : endAt(0);
  return {
    within: (wish, more = {}) => {
      const { from, to, worst, widest, gaps, moreGaps, covered } = reachWithin(list, inBPerA(wish), KEPT_GAPS);
      return {
        wish,
        distinct: to - from,
        smallest,
        largest,
        ratios: to - from > LISTED_RATIOS ? null : list.firstOptions(from, to, more).map(ratioOf).reverse(),
        perBin: perBin(list, from, to, wish),
        worst: worst && gapOf(worst),
        widest: widest && gapOf(widest),
        gaps: gaps.map(gapOf),
        moreGaps,
        covered,
        weightFactor: weightFactor(plan),
      };
    },
  };
}

/** The reach of one window, see `reachable`. */
export const reachOf = (plan: Plan, wish: ReachWish, hooks: Hooks = {}): Reach => reachable(plan, hooks).within(wish, hooks);

/** A per B by weight is A per B by volume over the density of B over that of A, both as run. */
function weightFactor({ mix: { densityBOverA } }: Plan): Fraction | null {
  return densityBOverA.known ? ONE.div(densityBOverA.value) : null;
}

/** The search counts B per A, so what is low here is high there. */
const inBPerA = ({ low, high, tolerance }: ReachWish): ReachWindow => ({ low: ONE.div(high), high: ONE.div(low), tolerance });

const gapOf = ({ below, above, worst, off }: Gap): ReachGap => ({
  low: above && ONE.div(above),
  high: below && ONE.div(below),
  worstTarget: ONE.div(worst),
  offRatio: off,
});

const perBin = ({ log }: ReachList, from: number, to: number, { low, high, bins }: ReachWish): readonly number[] =>
  binned(log.subarray(from, to), ONE.div(high), ONE.div(low), bins).reverse();
