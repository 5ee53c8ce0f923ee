import { type Fraction, ONE } from '../ratio.ts';
import { type CellReader, cellReader } from './cell.ts';
import { expander, type Taker } from './expand.ts';
import { join } from './join.ts';
import { paceOf, partOf } from './pace.ts';
import type { Candidate, Hooks, Pair, PumpPair, SearchProblem } from './problem.ts';
import { type Sides, splitSides } from './sides.ts';
import { aimedAt, exactY, factorsOf, layOut, type Space } from './space.ts';
import { DEFAULT_TUNING, type Tuning } from './tuning.ts';
import { holds, openWindow } from './window.ts';

/** Both ends of the off-ratio, inclusive. */
export interface OffLimits {
  readonly low: Fraction;
  readonly high: Fraction;
}

/** Every candidate inside the limits of one wanted ratio after another. */
export interface InsideSearch {
  /**
   * @param wanted B per A, > 0
   * @param limits of the off-ratio, low > -1
   * @param take   sees each candidate once, whatever the rules across stages say; it is good until the next call. Once it answers true
   *               no more are wanted, though a few may still come
   * @throws Cancelled when asked to stop
   */
  readonly each: (wanted: Fraction, limits: OffLimits, take: (candidate: Candidate) => boolean, hooks?: Hooks) => void;
  /** The same search of the candidates that weigh no more than `most`. */
  readonly upTo: (most: number) => InsideSearch;
}

/** About so many ratios are wanted of one search. */
const JOINS = 64;

type Weight = (choice: Pair | PumpPair) => number;

/** One class from each stage, and one of the pumps. */
interface Part {
  readonly sum: number;
  readonly space: Space;
  readonly sides: Sides;
  readonly reader: CellReader;
}

/**
 * The problem cut into parts by the weight of pairs and pumps, lightest first; parts heavier than `most` are never looked at.
 *
 * @param problem only choices whose `failed` is 0 take part; its wanted ratio and limits do not matter
 * @param weight  of a pair or of a set of pumps, 0 to 2
 * @param most    the weights of a candidate sum up to no more
 * @throws RangeError as `findOptions`
 * @source our choice of method: the join of the search, over one class of pairs from each stage
 * @example insideSearch(problem, () => 0, 0).each(ratioOf(1, 2), limits, (candidate) => found.push(copyOf(candidate)) === 10)
 */
export function insideSearch(problem: SearchProblem, weight: Weight, most: number, tuning = DEFAULT_TUNING): InsideSearch {
  return among(partsOf({ ...problem, limits: null }, weight, most, tuning));
}

function among(parts: readonly Part[]): InsideSearch {
  return {
    upTo: (most) => among(parts.filter(({ sum }) => sum <= most)),
    each: (wanted, limits, take, hooks = {}) => {
      const window = openWindow(ONE.add(limits.low), ONE.add(limits.high));
      let enough = false;
      const taker: Taker = {
        mostChanged: () => Infinity,
        take: (candidate) => {
          enough ||= take(candidate);
        },
      };
      for (const [index, { space, sides, reader }] of parts.entries()) {
        if (enough) break;
        const aimed = aimedAt(space, wanted);
        const expand = expander(aimed, taker);
        const visit = (table: number, stream: number, log: number): boolean => {
          if (holds(window, log, aimed.slack, () => exactY(aimed, reader.groups(table, stream)))) reader.every(table, stream, expand);
          return enough;
        };
        const pace = paceOf(partOf(hooks, index / parts.length, 1 / parts.length));
        join(aimed, sides, { low: window.logLow, high: window.logHigh }, visit, pace.pass());
      }
      hooks.progress?.(1);
    },
  };
}

function partsOf(problem: SearchProblem, weight: Weight, most: number, tuning: Tuning): readonly Part[] {
  const lists = factorsOf(problem).map((list) =>
    [0, 1, 2].map((heavy) => list((choice) => choice.failed === 0 && weight(choice) === heavy)),
  );
  const parts: { readonly factors: Space['factors']; readonly sum: number }[] = [];
  const extend = (factors: Space['factors'], sum: number): void => {
    const next = lists[factors.length];
    if (next === undefined) parts.push({ factors, sum });
    else
      for (const [heavy, list] of next.entries()) if (list.log.length > 0 && sum + heavy <= most) extend([...factors, list], sum + heavy);
  };
  extend([], 0);
  return parts
    .sort((a, b) => a.sum - b.sum)
    .flatMap(({ factors, sum }) => {
      const space = layOut(problem, factors, tuning);
      if (space === null) return [];
      const sides = splitSides(space, JOINS);
      return [{ sum, space, sides, reader: cellReader(space, sides) }];
    });
}
