import { type Choices, choicesOf } from '../choices.ts';
import { flowOf } from '../flow.ts';
import type { Mounted } from '../layOut.ts';
import type { Plan } from '../plan.ts';
import { type Fraction, ONE } from '../ratio.ts';
import {
  Cancelled,
  extremes,
  type Gap,
  type Hooks,
  listReach,
  type Option,
  placesIn,
  type ReachList,
  type ReachWindow,
  reachWithin,
  sweepReach,
} from '../search/index.ts';
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
  /** Null where the tolerance is so fine that they are too many to look for; `covered` too. */
  readonly moreGaps: number | null;
  /** Share of the window within the tolerance, by logarithm. */
  readonly covered: number | null;
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
  const rules = choices.rules(0);
  const { problem } = choices;
  const toRatio = ratioBy(choices);
  const toEnd = (option: Option | null): ReachEnd | null =>
    option && { ...toRatio(option), flow_m3_per_s: flowOfOption(plan, choices, option) };
  const weight = weightFactor(plan);
  const list = listReach(problem, rules, hooks);
  const swept = list === null ? sweepReach(problem, rules, hooks) : null;
  const ends = list ? endsOf(list) : extremes(problem, rules, hooks);
  const [smallest, largest] = [toEnd(ends.highest), toEnd(ends.lowest)];
  return {
    within: (wish, more = {}) => {
      const window = inBPerA(wish);
      const served = list ? reachWithin(list, window, KEPT_GAPS) : swept?.within(window, KEPT_GAPS, more);
      if (served === undefined) throw new RangeError('reach: too many ratios');
      return {
        wish,
        smallest,
        largest,
        ...(list ? listed(list, wish, toRatio, more) : { distinct: null, ratios: null, perBin: null }),
        worst: served.worst && gapOf(served.worst),
        widest: served.widest && gapOf(served.widest),
        gaps: served.gaps.map(gapOf),
        moreGaps: served.moreGaps,
        covered: served.covered,
        weightFactor: weight,
      };
    },
  };
}

/** What only a list can say. */
function listed(list: ReachList, wish: ReachWish, toRatio: (option: Option) => ReachRatio, { progress, cancelled }: Hooks) {
  const { from, to } = placesIn(list, inBPerA(wish));
  const ratios: ReachRatio[] = [];
  // what is high in B per A is low in A per B
  for (let index = to - 1; index >= from && to - from <= LISTED_RATIOS; index--) {
    if (cancelled?.()) throw new Cancelled();
    const option = list.firstOption(index);
    if (option) ratios.push(toRatio(option));
    progress?.(ratios.length / (to - from));
  }
  return { distinct: to - from, ratios: to - from > LISTED_RATIOS ? null : ratios, perBin: perBin(list, from, to, wish) };
}

/** Of all ratios the lowest and the highest, B per A. */
interface Ends {
  readonly lowest: Option | null;
  readonly highest: Option | null;
}

const endsOf = ({ log, firstOption }: ReachList): Ends =>
  log.length === 0 ? { lowest: null, highest: null } : { lowest: firstOption(0), highest: firstOption(log.length - 1) };

function ratioBy({ pumpsOf, teethOf }: Choices): (option: Option) => ReachRatio {
  return (option) => {
    const { A, B } = pumpsOf(option);
    const first = { pumps: { A: A.id, B: B.id }, teeth: teethOf(option) };
    return { aPerB: ONE.div(option.ratio), first, partsChanged: option.changed, purchases: option.purchases };
  };
}

function flowOfOption(plan: Plan, { pumpsOf, teethOf }: Choices, option: Option): ReachEnd['flow_m3_per_s'] {
  const { ends } = flowOf(plan, { pumps: pumpsOf(option), teeth: teethOf(option) });
  return ends && { from: ends.from.total.value, to: ends.to.total.value };
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
