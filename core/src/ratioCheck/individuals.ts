/** A chart of single values: each is held against what the values before and after it leave open. */
export interface IndividualsChart {
  readonly mean: number;
  /** Mean of the differences from each value to the next, without sign. */
  readonly movingRange: number;
  readonly low: number;
  readonly high: number;
  /** Indexes of values beyond the limits. */
  readonly beyond: readonly number[];
  /** Indexes of values that end a run of at least eight on one side of the mean. */
  readonly runs: readonly number[];
}

/** d₂ for ranges of two [published tables of control chart constants]. */
export const D2_OF_TWO = 1.128;
const SIGMAS = 3;
const RUN = 8;

/**
 * Control chart of individuals with moving ranges.
 *
 * @param values  in the order in which they were measured
 * @returns null with fewer than two values, of which there is no moving range
 * @source NIST/SEMATECH e-Handbook 6.3.2.2, limits 3 MR / 1.128; runs of eight by the Western Electric rules, 6.3.2 (from memory)
 * @example individualsChart([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1])  // 50.81, 45.8159 to 55.8041
 */
export function individualsChart(values: readonly number[]): IndividualsChart | null {
  if (values.length < 2) return null;
  const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
  const ranges = values.slice(1).map((one, index) => Math.abs(one - (values[index] ?? one)));
  const movingRange = ranges.reduce((sum, one) => sum + one, 0) / ranges.length;
  const reach = (SIGMAS * movingRange) / D2_OF_TWO;
  const [low, high] = [mean - reach, mean + reach];
  let run = 0;
  const runs: number[] = [];
  for (const [index, value] of values.entries()) {
    const side = Math.sign(value - mean);
    const before = Math.sign((values[index - 1] ?? mean) - mean);
    run = side === 0 ? 0 : side === before ? run + 1 : 1;
    if (run >= RUN) runs.push(index);
  }
  return { mean, movingRange, low, high, beyond: [...values.keys()].filter((index) => isBeyond(values[index] ?? mean, low, high)), runs };
}

const isBeyond = (value: number, low: number, high: number): boolean => value < low || value > high;
