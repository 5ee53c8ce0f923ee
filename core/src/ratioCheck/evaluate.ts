import { en } from '../en.ts';
import { orNull } from '../given.ts';
import { offRatio, offRatioOf } from '../mixRatio.ts';
import { type Fraction, float, least, most, ONE } from '../ratio.ts';
import { formula, inFloat, input, type Worked, work } from '../working.ts';
import { mostByStep_kg } from './amounts.ts';
import { deliveriesOf, type MeasuredDelivery } from './delivery.ts';
import { type Further, furtherOf } from './further.ts';
import type { BySide, CheckInput } from './model.ts';
import { type Pairs, pairsOf, ratioInterval } from './pairs.ts';
import { studentQuantile } from './student.ts';
import { type CheckVerdict, type Unstable, unstableBy, verdictOf } from './verdict.ts';

/** One catch that counts. */
export interface CatchFigures {
  /** Among all catches, from 1. */
  readonly number: number;
  /** As caught: by weight, or by volume where nothing was weighed. */
  readonly bPerA: Fraction;
  readonly offRatio: Fraction;
  /** Least and greatest off-ratio that the steps of the scale leave open; null where nothing was weighed, or where a catch is no more than steps. */
  readonly byStep: { readonly from: Fraction; readonly to: Fraction } | null;
}

/** What the catches say. */
export interface Evaluation {
  readonly input: CheckInput;
  /** Whether they were weighed; otherwise ratios and means are by volume. */
  readonly weighed: boolean;
  readonly counted: readonly [CatchFigures, ...CatchFigures[]];
  /** kg or m³. */
  readonly mean: BySide<Fraction>;
  /** Ratio of the means, as caught. */
  readonly bPerA: Worked<Fraction>;
  /** B per A by volume as run; null where no densities carry it over. */
  readonly volumeBPerA: Fraction | null;
  readonly offRatio: Worked<Fraction>;
  /** Of the off-ratio; null with one catch, or where A is not told from nothing. */
  readonly interval: { readonly from: Worked<number>; readonly to: Worked<number> } | null;
  /** Largest less smallest off-ratio of the catches, from 0. */
  readonly range: Fraction;
  /** Sample standard deviation of the off-ratios; null with one catch. */
  readonly deviation: number | null;
  readonly degreesOfFreedom: number;
  /** Of Student's distribution; null with one catch. */
  readonly quantile: number | null;
  /** None where the catches agree. */
  readonly unstable: readonly Unstable[];
  readonly verdict: CheckVerdict;
  readonly further: Further | null;
  readonly delivery: BySide<MeasuredDelivery | null>;
}

const ofMeans = formula({
  letter: 'r',
  written: 'b / a',
  dimension: 'number',
  source: en`definition: ratio of the means, not mean of the ratios, so that each catch counts by what it weighs`,
  of: ({ a, b }: Record<'a' | 'b', Fraction>) => b.div(a),
});

const offRatioOfEnd = formula({
  letter: 'e',
  written: 'r / w - 1',
  dimension: 'share',
  source: en`definition of off-ratio`,
  of: ({ r, w }: Record<'r' | 'w', number>) => r / w - 1,
});

/**
 * Turns catches into a verdict.
 *
 * @returns ratios exact; the interval, which rests on a distribution, in floats
 * @throws RangeError  as `amountsOf`
 * @source ratio of paired means with Fieller's interval; decision rule as in `verdictOf`
 * @example evaluate(three catches of U40 of the demo, 15 September).verdict  // 'pass', −0.50 %, −0.66 to −0.34 %
 */
export function evaluate(check: CheckInput): Evaluation {
  const pairs = pairsOf(check);
  const { terms, confidence } = check;
  const { weighed, wanted } = pairs;
  const dimension = weighed ? 'mass' : 'volume';
  const { mean } = pairs;
  const bPerA = work(ofMeans, weighed ? en`B per A by weight, caught` : en`B per A by volume, caught`, {
    a: input(en`mean caught of A`, mean.A, dimension),
    b: input(en`mean caught of B`, mean.B, dimension),
  });
  const w = input(weighed ? en`B per A wanted by weight` : en`B per A wanted by volume`, wanted, 'number');
  const ends = ratioInterval(pairs, confidence);
  const interval = ends && {
    from: work(offRatioOfEnd, en`least off-ratio`, { r: ends.from, w: inFloat(w) }),
    to: work(offRatioOfEnd, en`greatest off-ratio`, { r: ends.to, w: inFloat(w) }),
  };
  const counted = catchFigures(check, pairs);
  const offs = counted.map((one) => one.offRatio);
  const range = offs.reduce(most).sub(offs.reduce(least));
  const within = interval && { from: interval.from.value, to: interval.to.value };
  const verdict = verdictOf(within, terms.limits);
  const unstable = unstableBy(float(range), within, terms.limits);
  return {
    input: check,
    weighed,
    counted,
    mean,
    bPerA,
    volumeBPerA: byVolume(check, weighed, bPerA.value),
    offRatio: work(offRatioOf, en`off-ratio`, { m: bPerA, w }),
    interval,
    range,
    deviation: deviationOf(offs.map(float)),
    degreesOfFreedom: pairs.count - 1,
    quantile: pairs.count < 2 ? null : studentQuantile(confidence, pairs.count - 1),
    unstable,
    verdict,
    further: furtherOf(pairs, { wanted: float(wanted), limits: terms.limits, confidence }, { verdict, unstable }),
    delivery: deliveriesOf(check, pairs),
  };
}

function byVolume({ terms }: CheckInput, weighed: boolean, bPerA: Fraction): Fraction | null {
  if (!weighed) return bPerA;
  const densities = orNull(terms.densityBOverA);
  return densities && bPerA.div(densities);
}

function catchFigures({ scale }: CheckInput, { of, numbers, wanted, weighed }: Pairs): readonly [CatchFigures, ...CatchFigures[]] {
  const half = mostByStep_kg(scale);
  const figures = numbers.map((number, index): CatchFigures => {
    const [a, b] = [of.A[index] ?? ONE, of.B[index] ?? ONE];
    const bPerA = b.div(a);
    const open = weighed && half.compare(a) < 0 && half.compare(b) < 0;
    return {
      number,
      bPerA,
      offRatio: offRatio(bPerA, wanted),
      byStep: open
        ? {
            from: offRatio(b.sub(half).div(a.add(half)), wanted),
            to: offRatio(b.add(half).div(a.sub(half)), wanted),
          }
        : null,
    };
  });
  const [first, ...rest] = figures;
  if (first === undefined) throw new RangeError('evaluate: no catch counts');
  return [first, ...rest];
}

function deviationOf(values: readonly number[]): number | null {
  if (values.length < 2) return null;
  const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
  return Math.sqrt(values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (values.length - 1));
}
