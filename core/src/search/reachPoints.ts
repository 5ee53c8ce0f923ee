import type { Fraction } from '../ratio.ts';
import { type Pace, pacedAdmit } from './pace.ts';
import type { Rules } from './problem.ts';
import { cellFinder, counterOf, type PointCell } from './reachCells.ts';
import { buildableOf, logSpan } from './reachList.ts';
import { allRatios, type Take } from './reachProducts.ts';
import { quickBuild } from './reachQuick.ts';
import { MOST_LONG, partOf, splitOf } from './reachSides.ts';
import { exactY, type Space } from './space.ts';

/** A ratio that can be built. */
export interface Point {
  /** ln y as computed of one of its cells */
  readonly log: number;
  readonly y: Fraction;
}

/** Ratios that are too many to list, asked for one by one: each is a product of a short list and a long one. */
export interface Points {
  readonly short: Float64Array;
  readonly long: Float64Array;
  readonly slack: number;
  /** how many entries of the long list are at most `value` */
  readonly upTo: (value: number) => number;
  /** true: can be built; false says only that one option of it cannot */
  readonly surelyBuilt: (short: number, long: number) => boolean;
  /** the first buildable ratio beyond a logarithm, upwards (+1) or downwards (-1), of those that `accept` takes; null where there is none */
  readonly nearest: (from: number, way: 1 | -1, accept?: (y: Fraction) => boolean) => Point | null;
}

/** Cells looked at in one go where the rules across stages refuse many. */
const MANY_CELLS = 2 ** 12;

/**
 * @param check called now and then while a ratio is looked for
 * @returns null where no side could be listed
 */
export function pointsOf(space: Space, rules: Rules, pace: Pace, check: () => void): Points | null {
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
  const { low, high } = logSpan(rules, space.slack);
  const buildable = buildableOf(space, pacedAdmit(rules, check));
  const shifted = short.log.map((log) => log + space.logConstant);
  const upTo = counterOf(long.log);
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
    const [near, far] = way > 0 ? [low, high] : [high, low];
    let bound = way * (near - from) > 0 ? near : from;
    let reach = slack;
    for (;;) {
      check();
      const first = cells.nearest(bound, way);
      if (!Number.isFinite(first) || way * (first - far) > 0) return null;
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
    surelyBuilt: quickBuild(space, rules.admit, { factors: shortFactors, all: short }, { factors: longFactors, all: long }),
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
