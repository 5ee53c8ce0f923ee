import type { Fraction } from '../ratio.ts';

/** Sizes that change how long a search takes and never what it finds. */
export interface Tuning {
  /** cells collected before they are gathered by ratio and the window is narrowed */
  readonly buffer: number;
  /** a ratio of more options than this, or of a sixteenth of the buffer in cells, is heavy: it is found again by number of changed parts */
  readonly heavy: number;
  /** products of two lists are gathered by ratio where there are more than this */
  readonly gathered: number;
  /** |e| of the first window; null: from the density of ratios */
  readonly firstReach: Fraction | null;
}

export const DEFAULT_TUNING: Tuning = { buffer: 2 ** 16, heavy: 2 ** 22, gathered: 2 ** 20, firstReach: null };
