import type { Fraction } from '../ratio.ts';

/** How far off a target may be served to be of interest. */
export interface Cap {
  /** Null: however far. */
  readonly offRatio: Fraction | null;
  /** Whether it must be beaten, not only met. */
  readonly strict: boolean;
}

/** @param offRatio null: not served at all */
export function within({ offRatio: most, strict }: Cap, offRatio: Fraction | null): boolean {
  if (offRatio === null) return false;
  const order = most === null ? -1 : offRatio.compare(most);
  return strict ? order < 0 : order <= 0;
}

/** Floats of off-ratios are nearer than this to the true ones. */
export const FLOAT_SLACK = 1e-11;
