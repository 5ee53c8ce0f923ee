import { type Fraction, float } from '../ratio.ts';

/**
 * Counts logarithms into equal parts of a range.
 *
 * @param logs natural, of ratios from `low` to `high`
 * @throws RangeError on `bins`, a whole number of 1 or more
 * @source counting
 * @example binned([Math.log(2), Math.log(3)], 1, 4, 2)  // [0, 2]: 2 is the middle of 1 to 4
 */
export function binned(logs: Float64Array, low: Fraction, high: Fraction, bins: number): number[] {
  if (!Number.isSafeInteger(bins) || bins < 1) throw new RangeError(`reach: ${bins} bins`);
  const counts = Array.from({ length: bins }, () => 0);
  const first = Math.log(float(low));
  const perBin = (Math.log(float(high)) - first) / bins;
  for (const log of logs) {
    // rounding must not carry a ratio at the end of the range out of it
    const bin = Math.min(bins - 1, Math.max(0, Math.trunc((log - first) / perBin)));
    counts[bin] = (counts[bin] ?? 0) + 1;
  }
  return counts;
}
