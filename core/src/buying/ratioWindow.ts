import type { Fraction } from '../ratio.ts';

/** Every wanted ratio from `low` to `high`, both in it, is to be within the tolerance. */
export interface RatioWindow {
  /** B per A by volume, as run, > 0. */
  readonly low: Fraction;
  readonly high: Fraction;
  /** Share of B per A, above 0 and below 1. */
  readonly tolerance: Fraction;
}
