import quantile from '@stdlib/stats-base-dists-t-quantile';

/**
 * Quantile of Student's distribution for an interval about a mean: a share of all such intervals, half of the rest lying beyond each end,
 * holds what was measured.
 *
 * @param confidence        above 0.5, below 1
 * @param degreesOfFreedom  whole number from 1
 * @throws RangeError  outside those limits
 * @source Student, Biometrika 6 (1908); the library @stdlib/stats-base-dists-t-quantile
 * @example studentQuantile(0.95, 2)  // 4.3027
 */
export function studentQuantile(confidence: number, degreesOfFreedom: number): number {
  if (!(confidence > 0.5 && confidence < 1)) throw new RangeError(`studentQuantile: confidence ${confidence}`);
  if (!Number.isSafeInteger(degreesOfFreedom) || degreesOfFreedom < 1)
    throw new RangeError(`studentQuantile: ${degreesOfFreedom} degrees of freedom`);
  return quantile((1 + confidence) / 2, degreesOfFreedom);
}
