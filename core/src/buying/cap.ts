import type { Fraction } from '../ratio.ts';

/** How far off a target may be served to be of interest. */
export interface Cap {
  /** Null: however far. */
  readonly off: Fraction | null;
  /** Whether it must be beaten, not only met. */
  readonly strict: boolean;
}

/** @param off null: not served at all */
export function within({ off: most, strict }: Cap, off: Fraction | null): boolean {
  if (off === null) return false;
  const order = most === null ? -1 : off.compare(most);
  return strict ? order < 0 : order <= 0;
}

/** Floats of off-ratios are nearer than this to the true ones. */
export const FLOAT_SLACK = 1e-11;
