import { cellReader } from './cell.ts';
import { distinctRatios } from './distinct.ts';
import { type Gathered, gathered, type Quotients } from './gathered.ts';
import { join } from './join.ts';
import { cellsIn } from './levels.ts';
import type { Pace } from './pace.ts';
import { sameRatios } from './ratioLists.ts';
import { splitSides } from './sides.ts';
import type { Space } from './space.ts';

/** Every y of a space once, ascending, whatever the rules across stages say. */
export interface AllRatios {
  /** ln y as computed */
  readonly log: Float64Array;
  /** hands every way to make it to `take`, one after another, until that has enough; answers whether it had */
  readonly every: (index: number, take: Take) => boolean;
}

/** Receives the ratio of each factor, by index, good until the next call; answers true once it wants no more. */
export type Take = (groups: Int32Array) => boolean;

/** Above so many products they are not gathered: memory, not time, is what they would take. */
export interface MostProducts {
  readonly byFloat: number;
  readonly byFraction: number;
}
export const MOST_PRODUCTS: MostProducts = { byFloat: 2 ** 25, byFraction: 2 ** 18 };

/** @returns null where they are too many */
export function allRatios(space: Space, most: MostProducts, pace: Pace): AllRatios | null {
  return space.mostNumerator * space.mostDenominator < 2 ** 52
    ? gatheredRatios(space, most.byFloat, pace)
    : comparedRatios(space, most.byFraction, pace);
}

/** Products of the lists before and one more. */
interface Level extends Gathered {
  readonly factor: number;
  /** how many there were before */
  readonly before: number;
}

/** One list after another, equal products always gathered into one, which floats prove to be equal (see `gathered`). */
function gatheredRatios({ factors, logConstant }: Space, most: number, pace: Pace): AllRatios | null {
  const order = [...factors.keys()].sort((a, b) => sizeOf(factors[a]) - sizeOf(factors[b]));
  const base = order.pop() ?? 0;
  // what has one ratio leaves all others as they are, so that the two longest lists meet as they stand, and half of their products is enough
  const rest = order.reverse().sort((a, b) => Number(sizeOf(factors[a]) === 1) - Number(sizeOf(factors[b]) === 1));
  let all: Quotients | undefined = factors[base];
  const levels: Level[] = [];
  const pass = pace.pass();
  for (const factor of rest) {
    const list = factors[factor];
    if (!list || !all || sizeOf(list) * sizeOf(all) > most) return null;
    const mirrored = levels.length === 0 && sameRatios(list, factors[base] ?? list);
    const level = { ...gathered(list, all, mirrored), factor, before: sizeOf(all) };
    all = productsOf(list, all, level);
    levels.push(level);
    pass(levels.length / rest.length);
  }
  const groups = new Int32Array(factors.length);
  const step = (depth: number, index: number, take: Take): boolean => {
    const level = levels[depth];
    if (!level) {
      groups[base] = index;
      return take(groups);
    }
    for (let k = level.first[index] ?? 0; k < (level.first[index + 1] ?? 0); k++) {
      const way = level.way[k] ?? 0;
      const i = Math.trunc(way / level.before);
      const j = way - i * level.before;
      groups[level.factor] = i;
      if (step(depth - 1, j, take)) return true;
      if (!level.mirrored || i === j) continue;
      groups[level.factor] = j;
      if (step(depth - 1, i, take)) return true;
    }
    return false;
  };
  return {
    // of no factors there is one product, 1
    log: (all?.log ?? new Float64Array(1)).map((log) => log + logConstant),
    every: (index, take) => step(levels.length - 1, index, take),
  };
}

const sizeOf = (list: Quotients | undefined): number => list?.log.length ?? 0;

/** Not reduced: what bounds the products of numerators bounds these too. */
function productsOf(list: Quotients, before: Quotients, { log, first, way, before: count }: Level): Quotients {
  const numerator = new Float64Array(log.length);
  const denominator = new Float64Array(log.length);
  for (let p = 0; p < log.length; p++) {
    const one = way[first[p] ?? 0] ?? 0;
    const i = Math.trunc(one / count);
    const j = one - i * count;
    numerator[p] = (list.numerator[i] ?? 1) * (before.numerator[j] ?? 1);
    denominator[p] = (list.denominator[i] ?? 1) * (before.denominator[j] ?? 1);
  }
  return { log, numerator, denominator };
}

/** Where floats prove nothing: every cell, gathered as the search gathers what it finds. */
function comparedRatios(space: Space, most: number, pace: Pace): AllRatios | null {
  if (cellsIn(space) > most) return null;
  const sides = splitSides(space);
  const reader = cellReader(space, sides);
  const cells: { table: number; stream: number; log: number }[] = [];
  const visit = (table: number, stream: number, log: number): boolean => {
    cells.push({ table, stream, log });
    return false;
  };
  join(space, sides, { low: -Infinity, high: Infinity }, visit, pace.pass());
  const near = 4 * space.slack;
  const ratios = distinctRatios(space, reader, cells).sort((a, b) =>
    Math.abs(a.log - b.log) > near ? a.log - b.log : a.y().compare(b.y()),
  );
  return {
    log: Float64Array.from(ratios, ({ log }) => log),
    every: (index, take) => {
      let enough = false;
      for (const { table, stream } of ratios[index]?.cells ?? []) {
        reader.every(table, stream, (groups) => {
          enough ||= take(groups);
        });
      }
      return enough;
    },
  };
}
