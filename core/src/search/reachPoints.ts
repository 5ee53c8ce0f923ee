import type { Fraction } from '../ratio.ts';
import type { Pace } from './pace.ts';
import { buildableOf } from './reachList.ts';
import { type AllRatios, allRatios, type Take } from './reachProducts.ts';
import { exactY, type Space } from './space.ts';
import type { Admit } from './tiedOptions.ts';

/** A ratio that can be built. */
export interface Point {
  /** ln y as computed of one of its cells */
  readonly log: number;
  readonly y: Fraction;
}

/** One product of the short side times one of the long side, by index. */
export interface PointCell {
  readonly short: number;
  readonly long: number;
  readonly log: number;
}

/** Ratios that are too many to list, asked for one by one: each is a product of a short list and a long one. */
export interface Points {
  readonly short: Float64Array;
  readonly long: Float64Array;
  readonly slack: number;
  /** how many entries of the long list are at most `value` */
  readonly upTo: (value: number) => number;
  /** true: can be built; false says only that none of a few options can */
  readonly surelyBuilt: (short: number, long: number) => boolean;
  /** the first buildable ratio beyond a logarithm, upwards (+1) or downwards (-1), of those that `accept` takes; null where there is none */
  readonly nearest: (from: number, way: 1 | -1, accept?: (y: Fraction) => boolean) => Point | null;
}

/** Raw products of the long list: its memory. */
const MOST_LONG = 2 ** 23;
/** Options asked for where another ratio would do as well. */
const QUICK_OPTIONS = 2;
/** Cells looked at in one go where the rules across stages refuse many. */
const MANY_CELLS = 2 ** 12;

/**
 * @param check called now and then while a ratio is looked for
 * @returns null where no side could be listed
 */
export function pointsOf(space: Space, admit: Admit, pace: Pace, check: () => void): Points | null {
  const [shortFactors, longFactors] = splitOf(space);
  const most = { byFloat: MOST_LONG, byFraction: 2 ** 18 };
  const short = allRatios(partOf(space, shortFactors), most, pace);
  const long = allRatios(partOf(space, longFactors), most, pace);
  if (short === null || long === null) return null;
  const groups = new Int32Array(space.factors.length);
  const every = (i: number, j: number, take: Take): boolean =>
    short.every(i, (ofShort) => {
      for (let k = 0; k < shortFactors.length; k++) groups[shortFactors[k] ?? 0] = ofShort[k] ?? 0;
      return long.every(j, (ofLong) => {
        for (let k = 0; k < longFactors.length; k++) groups[longFactors[k] ?? 0] = ofLong[k] ?? 0;
        return take(groups);
      });
    });
  const buildable = buildableOf(space, admit);
  const quick = buildableOf(space, admit, QUICK_OPTIONS);
  const shifted = short.log.map((log) => log + space.logConstant);
  const upTo = counterOf(long);
  const cells = cellFinder(shifted, long.log, upTo);
  const exact = ({ short: i, long: j }: PointCell): Fraction => {
    let first: Int32Array | null = null;
    every(i, j, (one) => {
      first = one.slice();
      return true;
    });
    return exactY(space, first ?? groups);
  };
  const nearest: Points['nearest'] = (from, way, accept = () => true) => {
    const { slack } = space;
    let bound = from;
    let reach = slack;
    for (;;) {
      check();
      const first = cells.nearest(bound, way);
      if (!Number.isFinite(first)) return null;
      // whatever lies before one of these in truth lies within two slacks of it as computed
      const edge = first + way * reach;
      const found = cells.between(first - way * 4 * slack, edge + way * 4 * slack);
      for (const { y, log, made } of byRatio(found, exact, way)) {
        if (way * (log - edge) > 0 || !accept(y)) continue;
        const everyCell = (take: Take): boolean => made.some(({ short: i, long: j }) => every(i, j, take));
        if (buildable(everyCell)) return { log, y };
      }
      bound = edge;
      if (found.length < MANY_CELLS) reach *= 2;
    }
  };
  return {
    short: shifted,
    long: long.log,
    slack: space.slack,
    upTo,
    surelyBuilt: (i, j) => quick((take) => every(i, j, take)),
    nearest,
  };
}

/** Cells gathered by exact ratio, in order; `log` is that of the cell that comes first. */
function byRatio(cells: readonly PointCell[], exact: (cell: PointCell) => Fraction, way: 1 | -1) {
  const ratios = new Map<string, { readonly y: Fraction; readonly log: number; readonly made: PointCell[] }>();
  for (const cell of [...cells].sort((a, b) => way * (a.log - b.log))) {
    const y = exact(cell);
    const key = y.toFraction();
    const known = ratios.get(key);
    if (known) known.made.push(cell);
    else ratios.set(key, { y, log: cell.log, made: [cell] });
  }
  return [...ratios.values()].sort((a, b) => way * a.y.compare(b.y));
}

/** Cells by the logarithm of their product. */
function cellFinder(short: Float64Array, long: Float64Array, upTo: (value: number) => number) {
  return {
    /** of those strictly beyond `from` the logarithm that comes first; infinite where there is none */
    nearest: (from: number, way: 1 | -1): number => {
      let best = way * Infinity;
      for (let i = 0; i < short.length; i++) {
        const own = short[i] ?? 0;
        // the sum is rounded: one place back, then on to the first that lies beyond
        let j = Math.max(0, Math.min(long.length - 1, upTo(from - own) - way));
        while (j >= 0 && j < long.length && way * (own + (long[j] ?? 0) - from) <= 0) j += way;
        if (j < 0 || j >= long.length) continue;
        const log = own + (long[j] ?? 0);
        if (way * (log - best) < 0) best = log;
      }
      return best;
    },
    between: (a: number, b: number): readonly PointCell[] => {
      const [low, high] = a < b ? [a, b] : [b, a];
      const found: PointCell[] = [];
      for (let i = 0; i < short.length; i++) {
        const own = short[i] ?? 0;
        for (let j = Math.max(0, upTo(low - own) - 1); j < long.length; j++) {
          const log = own + (long[j] ?? 0);
          if (log > high) break;
          if (log >= low) found.push({ short: i, long: j, log });
        }
      }
      return found;
    },
  };
}

/** Counts by a map of equal steps over the ascending list, about one entry to a step. */
function counterOf({ log }: AllRatios): (value: number) => number {
  const size = log.length;
  const [low, high] = [log[0] ?? 0, log[size - 1] ?? 0];
  const perUnit = high > low ? size / (high - low) : 0;
  const start = new Int32Array(size + 2);
  let step = 0;
  for (let j = 0; j < size; j++) {
    const own = Math.trunc(((log[j] ?? 0) - low) * perUnit);
    while (step < own) start[++step] = j;
  }
  return (value) => {
    if (value < low) return 0;
    if (value >= high) return size;
    let j = start[Math.trunc((value - low) * perUnit)] ?? 0;
    while ((log[j] ?? Infinity) <= value) j += 1;
    return j;
  };
}

/** Only some factors, without the constant; what was proved of all holds for some. */
function partOf(space: Space, chosen: readonly number[]): Space {
  const factors = chosen.flatMap((f) => space.factors[f] ?? []);
  const product = (of: (list: Space['factors'][number]) => number): number => factors.reduce((n, list) => n * of(list), 1);
  return {
    ...space,
    factors,
    constant: space.constant.div(space.constant),
    logConstant: 0,
    mostNumerator: product(({ mostNumerator }) => mostNumerator),
    mostDenominator: product(({ mostDenominator }) => mostDenominator),
  };
}

/** The long side holds as many products as may be listed. */
function splitOf({ factors }: Space): readonly [short: readonly number[], long: readonly number[]] {
  let best: readonly [readonly number[], readonly number[]] = [[], []];
  let most = 0;
  for (let subset = 1; subset < 2 ** factors.length; subset++) {
    const all = [...factors.keys()];
    const long = all.filter((f) => (subset >> f) & 1);
    const size = long.reduce((n, f) => n * (factors[f]?.log.length ?? 0), 1);
    if (size > MOST_LONG || size < most) continue;
    most = size;
    best = [all.filter((f) => !long.includes(f)), long];
  }
  return best;
}
