import { type Fraction, ONE } from '../ratio.ts';
import type { Gap, ReachWindow } from '../search/index.ts';
import type { ReachGap, ReachWish } from './figures.ts';

// The search counts B per A, people A per B: what is low in one is high in the other.

/** A window of A per B as the search counts it. */
export const windowInBPerA = ({ low, high, tolerance }: Pick<ReachWish, 'low' | 'high' | 'tolerance'>): ReachWindow => ({
  low: ONE.div(high),
  high: ONE.div(low),
  tolerance,
});

/** A gap of the search as people count it. */
export const gapInAPerB = ({ below, above, worst, off }: Gap): ReachGap => ({
  low: inverse(above),
  high: inverse(below),
  worstTarget: ONE.div(worst),
  offRatio: off,
});

const inverse = (ratio: Fraction | null): Fraction | null => ratio && ONE.div(ratio);
