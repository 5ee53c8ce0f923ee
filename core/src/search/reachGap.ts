import { type Fraction, least, most, ONE } from '../ratio.ts';

/** Targets that are looked at, and how far off they may be; ratios are B per A. */
export interface ReachWindow {
  /** above 0 and below `high` */
  readonly low: Fraction;
  readonly high: Fraction;
  /** share, from 0 to less than 1 */
  readonly tolerance: Fraction;
}

/** Targets between two neighbouring ratios that can be built, as far as they lie in the window. */
export interface Gap {
  /** null: nothing lower can be built */
  readonly below: Fraction | null;
  /** null: nothing higher can be built */
  readonly above: Fraction | null;
  /** the target that is served worst */
  readonly worst: Fraction;
  /** how far off the nearest ratio is there, without its sign */
  readonly off: Fraction;
}

/** @throws RangeError on a window that holds nothing, or a tolerance that is none */
export function checkWindow({ low, high, tolerance }: ReachWindow): void {
  if (low.compare(0) <= 0 || low.compare(high) >= 0) throw new RangeError(`reach: window ${low.toFraction()} to ${high.toFraction()}`);
  if (tolerance.compare(0) < 0 || tolerance.compare(1) >= 0) throw new RangeError(`reach: tolerance ${tolerance.toFraction()}`);
}

/**
 * The worst target between two neighbours a < b: equally far from both at (a + b) / 2, where the off-ratio is (b - a) / (b + a);
 * at the nearer end of the window where that lies outside, and at the window's end where there is no neighbour.
 *
 * @returns null where both neighbours are null: nothing can be built
 * @source |a / t - 1| = |b / t - 1| solved for t
 * @example gapBetween(1 / 2, 1, from 1 / 4 to 4)  // worst target 3/4, off by 1/3
 */
export function gapBetween(below: Fraction | null, above: Fraction | null, { low, high }: ReachWindow): Gap | null {
  if (below && above) {
    const worst = most(low, least(high, below.add(above).div(2)));
    return { below, above, worst, off: least(worst.sub(below), above.sub(worst)).div(worst) };
  }
  if (above) return { below, above, worst: low, off: above.div(low).sub(ONE) };
  if (below) return { below, above, worst: high, off: ONE.sub(below.div(high)) };
  return null;
}

/** Widest first, then the higher target. */
export const compareGaps = (a: Gap, b: Gap): number => b.off.compare(a.off) || b.worst.compare(a.worst);
