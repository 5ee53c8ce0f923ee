import { en } from '../en.ts';
import { formula, input, type Worked, work } from '../working.ts';

/** Two means that were measured together; variances and covariance are those of the means. */
export interface PairedMeans {
  readonly a: number;
  readonly b: number;
  readonly varianceA: number;
  readonly varianceB: number;
  readonly covariance: number;
}

/** Both ends of the interval of a ratio, with how they came about. */
export interface RatioInterval {
  readonly from: Worked<number>;
  readonly to: Worked<number>;
}

type Letters = 'a' | 'b' | 'u' | 'v' | 'c' | 't';
type Put = Readonly<Record<Letters, number>>;

const SOURCE = en`Fieller, Journal of the Royal Statistical Society B 16 (1954), paired form`;
const ROOT = 'sqrt((a · b - t^2 · c)^2 - (a^2 - t^2 · u) · (b^2 - t^2 · v))';
const root = ({ a, b, u, v, c, t }: Put): number =>
  Math.sqrt(Math.max(0, (a * b - t * t * c) ** 2 - (a * a - t * t * u) * (b * b - t * t * v)));

const end = (letter: string, sign: 1 | -1) =>
  formula({
    letter,
    written: `(a · b - t^2 · c ${sign < 0 ? '-' : '+'} ${ROOT}) / (a^2 - t^2 · u)`,
    dimension: 'number',
    source: SOURCE,
    of: (put: Put) => (put.a * put.b - put.t ** 2 * put.c + sign * root(put)) / (put.a ** 2 - put.t ** 2 * put.u),
  });
const LEAST = end('r₁', -1);
const MOST = end('r₂', 1);

/**
 * Interval of the ratio b over a of two paired means: all ratios r for which b − r a is not told from nothing.
 *
 * @param quantile  of Student's distribution, above 0
 * @param names     of the two means, as `mean of B`
 * @returns null where a is not told from nothing: then no ratio is ruled out far enough to give two ends
 * @source Fieller, Journal of the Royal Statistical Society B 16 (1954): the roots of (b − r a)² = t² (v − 2 r c + r² u)
 * @example fiellerInterval({ a: 17.575, b: 20.1917, … }, 2.1448, names)  // 1.0002 to 1.3122, Darwin's maize
 */
export function fiellerInterval(
  { a, b, varianceA, varianceB, covariance }: PairedMeans,
  quantile: number,
  names: Readonly<Record<'a' | 'b', string>>,
): RatioInterval | null {
  if (!(a * a > quantile * quantile * varianceA)) return null;
  const put = {
    a: input(names.a, a, 'number'),
    b: input(names.b, b, 'number'),
    u: input(en`variance of ${names.a}`, varianceA, 'number'),
    v: input(en`variance of ${names.b}`, varianceB, 'number'),
    c: input(en`covariance of both`, covariance, 'number'),
    t: input(en`quantile of Student’s distribution`, quantile, 'number'),
  } as const;
  return { from: work(LEAST, en`least ratio`, put), to: work(MOST, en`greatest ratio`, put) };
}
