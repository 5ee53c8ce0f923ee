import type { Mounted } from '../layOut.ts';
import type { Fraction } from '../ratio.ts';

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
