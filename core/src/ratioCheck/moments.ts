import { type Fraction, float, whole, ZERO } from '../ratio.ts';

/** What a column of readings says. */
export interface Column {
  readonly mean: Fraction;
  /** Each less the mean, in floats of exact differences. */
  readonly deviations: readonly number[];
}

/**
 * @param readings  at least one
 * @throws RangeError  where there is none
 * @source definition
 * @example columnOf([1, 2, 6]).deviations  // -2, -1, 3
 */
export function columnOf(readings: readonly Fraction[]): Column {
  if (readings.length === 0) throw new RangeError('columnOf: there are no readings');
  const mean = readings.reduce((sum, one) => sum.add(one), ZERO).div(whole(readings.length));
  return { mean, deviations: readings.map((one) => float(one.sub(mean))) };
}

/**
 * Sample covariance of two columns that were read together; of a column with itself its variance.
 *
 * @returns null with fewer than two readings, where nothing tells how they spread
 * @source definition: sum of products of deviations over n − 1
 * @example covarianceOf(columnOf([1, 2, 6]), columnOf([1, 2, 6]))  // 7
 */
export function covarianceOf(one: Column, other: Column): number | null {
  const count = one.deviations.length;
  if (count < 2) return null;
  return one.deviations.reduce((sum, deviation, index) => sum + deviation * (other.deviations[index] ?? 0), 0) / (count - 1);
}
