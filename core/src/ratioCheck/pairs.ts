import { en } from '../en.ts';
import { type Fraction, float, whole } from '../ratio.ts';
import { type Amounts, amountsOf } from './amounts.ts';
import { fiellerInterval, type PairedMeans, type RatioInterval } from './fieller.ts';
import type { BySide, CheckInput, Scale } from './model.ts';
import { columnOf, covarianceOf } from './moments.ts';
import { studentQuantile } from './student.ts';

/** How far single readings spread beside their mean: sample variances and covariance of the catches, without the scale's own part. */
export interface Spread {
  readonly varianceA: number;
  readonly varianceB: number;
  readonly covariance: number;
}

/** What the counted catches say together. */
export interface Pairs extends Amounts {
  readonly mean: BySide<Fraction>;
  readonly count: number;
  /** Null with one catch. */
  readonly spread: Spread | null;
  /** Variance of one net weight by the steps of the scale, and by the scale's own error, which all catches share. */
  readonly step: number;
  readonly shared: number;
  /** Variance below which catches repeat within one step. */
  readonly withinStep: number;
}

/** @throws RangeError  as `amountsOf` */
export function pairsOf(input: CheckInput): Pairs {
  const amounts = amountsOf(input);
  const columns = { A: columnOf(amounts.of.A), B: columnOf(amounts.of.B) };
  const varianceA = covarianceOf(columns.A, columns.A);
  const varianceB = covarianceOf(columns.B, columns.B);
  const covariance = covarianceOf(columns.A, columns.B);
  const isAlone = varianceA === null || varianceB === null || covariance === null;
  return {
    ...amounts,
    mean: { A: columns.A.mean, B: columns.B.mean },
    count: amounts.numbers.length,
    spread: isAlone ? null : { varianceA, varianceB, covariance },
    ...(amounts.weighed ? scaleVariance(input.scale) : { step: 0, shared: 0, withinStep: 0 }),
  };
}

/**
 * Variance of one net weight by the scale.
 *
 * @source gum 4.3.7: a reading that was rounded to a step d is uniform about what it shows, variance d²/12; 4.3.4: a certificate’s ± at
 *   95 % is two standard deviations
 */
export function scaleVariance({ step_kg, readings, uncertainty_kg }: Scale): Pick<Pairs, 'step' | 'shared' | 'withinStep'> {
  const withinStep = float(step_kg) ** 2;
  return { step: (readings * withinStep) / 12, shared: uncertainty_kg.known ? (float(uncertainty_kg.value) / 2) ** 2 : 0, withinStep };
}

/**
 * The means of so many catches that spread like this; the scale counts into each. Catches that repeat within one step are all rounded the
 * same way, so what the steps leave open does not average out.
 *
 * @param count  of catches, from 1
 * @source our choice of one step as the bound; simulated in `npm run bench -- --only ratio-check`
 */
export function meansOf(
  { mean, step, shared, withinStep }: Pairs,
  { varianceA, varianceB, covariance }: Spread,
  count: number,
): PairedMeans {
  const ofMean = (variance: number) => (variance < withinStep ? variance / count + step : (variance + step) / count) + shared;
  return {
    a: float(mean.A),
    b: float(mean.B),
    varianceA: ofMean(varianceA),
    varianceB: ofMean(varianceB),
    covariance: covariance / count,
  };
}

/** Fieller's interval of B per A for so many catches like these; null with fewer than two, or where A is not told from nothing. */
export function ratioInterval(pairs: Pairs, confidence: number, count = pairs.count): RatioInterval | null {
  if (pairs.spread === null || count < 2) return null;
  return fiellerInterval(meansOf(pairs, pairs.spread, count), studentQuantile(confidence, count - 1), MEANS);
}

const MEANS = { a: en`mean caught of A`, b: en`mean caught of B` } as const;

/** The same amounts `times` as large, spreading by the same share of them; the scale stays what it is. */
export function enlarged(pairs: Pairs, times: number): Pairs {
  const { mean, spread } = pairs;
  return {
    ...pairs,
    mean: { A: mean.A.mul(whole(times)), B: mean.B.mul(whole(times)) },
    spread: spread && {
      varianceA: spread.varianceA * times ** 2,
      varianceB: spread.varianceB * times ** 2,
      covariance: spread.covariance * times ** 2,
    },
  };
}
