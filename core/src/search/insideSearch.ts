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
}

/** One class from each stage. */
interface Part {
  readonly space: Space;
  readonly sides: Sides;
  readonly reader: CellReader;
}

/**
 * The problem cut into parts by the weight of the pairs, lightest first; parts heavier than `most` are never looked at.
 *
 * @param problem only choices whose `failed` is 0 take part; its wanted ratio and limits do not matter
 * @param weight  of a pair, 0 to 2
 * @param most    the weights of the pairs of a candidate sum up to no more
 * @throws RangeError as `findOptions`
 * @source our choice of method: the join of the search, over one class of pairs from each stage
 * @example insideSearch(problem, () => 0, 0).each(ratioOf(1, 2), limits, (candidate) => found.push(copyOf(candidate)) === 10)
 */
export function insideSearch(problem: SearchProblem, weight: (pair: Pair) => number, most: number, tuning = DEFAULT_TUNING): InsideSearch {
  const parts = partsOf({ ...problem, limits: null }, weight, most, tuning);
  return {
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

function partsOf(problem: SearchProblem, weight: (pair: Pair) => number, most: number, tuning: Tuning): readonly Part[] {
  const of = new Map<Pair | PumpPair, number>(problem.stages.flatMap(({ pairs }) => pairs.map((pair) => [pair, weight(pair)] as const)));
  const lists = factorsOf(problem).map((list) =>
    [0, 1, 2].map((heavy) => list((choice) => choice.failed === 0 && (of.get(choice) ?? 0) === heavy)),
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
    .flatMap(({ factors }) => {
      const space = layOut(problem, factors, tuning);
      if (space === null) return [];
      const sides = splitSides(space, true);
      return [{ space, sides, reader: cellReader(space, sides) }];
    });
}
