import type { Grid } from './grid.ts';
import { areGathered, type Products, plainProducts, productsOf } from './products.ts';
import { sameRatios } from './ratioLists.ts';
import type { Space } from './space.ts';
import { type Table, tableOf } from './table.ts';

/**
 * The factors of a space split for the join: every product of the table side is stored under a grid of logarithms,
 * the products of the stream side are only run through, each `outer` product times each `inner` one.
 * A cell, one product from each, is two whole numbers: its entry in the table, and its place in the stream.
 */
export interface Sides {
  readonly table: Table;
  readonly outer: Products;
  /** ascending */
  readonly inner: Products;
  /** what two of the three may exchange: the same ratios stand on both, so that cells come in pairs */
  readonly alike: Alike;
  /** kept from one join to the next */
  grid: Grid | null;
}

export interface Alike {
  readonly outerInner: boolean;
  readonly tableInner: boolean;
}

/** How many orders the products of most cells may stand in. */
export const ordersOf = ({ outerInner, tableInner }: Alike): number => (outerInner && tableInner ? 6 : outerInner || tableInner ? 2 : 1);

export interface Split {
  readonly table: readonly number[];
  readonly outer: readonly number[];
  readonly inner: readonly number[];
  /** in stream products looked up */
  readonly cost: number;
}

/** Above this the table no longer pays for its memory. */
const MOST_TABLE_ENTRIES = 2 ** 23;

/** What it costs to store a table entry, and to gather a product, against a stream product to look up; by measurement. */
const STORE_COST = 4;
const GATHER_COST = 8;

/** Of the products of two lists about so many differ. */
const DIFFERENT = 1 / 4;

/** @param joins how many the table is made for, Infinity where only the stream counts */
export function bestSplit(space: Space, joins = 1): Split {
  const size = (f: number): number => space.factors[f]?.log.length ?? 0;
  const all = space.factors.map((_, f) => f).sort((a, b) => size(a) - size(b));
  // a factor of one ratio multiplies nothing, so it goes where it leaves the lists of the other sides as they are
  const single = all.filter((f) => size(f) === 1);
  const many = all.filter((f) => size(f) > 1);
  let best: Split = { table: [], outer: [], inner: [], cost: Infinity };
  for (let subset = 0; subset < 2 ** many.length; subset++) {
    const table = many.filter((_, bit) => (subset >> bit) & 1);
    const stream = many.filter((_, bit) => !((subset >> bit) & 1));
    const stored = sideOf(space, table);
    if (stored.size > MOST_TABLE_ENTRIES) continue;
    for (const inner of [stream.slice(-1), ...pairsOf(stream).filter((pair) => areGathered(space, pair))]) {
      const outer = stream.filter((f) => !inner.includes(f));
      const innerSide = sideOf(space, inner);
      const run = innerSide.size * sideOf(space, outer).raw;
      const cost = run + (stored.size * STORE_COST + stored.effort + innerSide.effort) / joins;
      if (cost < best.cost) best = { table, outer: [...single, ...outer], inner, cost };
    }
  }
  return best;
}

function sideOf(space: Space, chosen: readonly number[]): { readonly raw: number; readonly size: number; readonly effort: number } {
  const raw = chosen.reduce((n, f) => n * (space.factors[f]?.log.length ?? 0), 1);
  return areGathered(space, chosen) ? { raw, size: raw * DIFFERENT, effort: raw * GATHER_COST } : { raw, size: raw, effort: 0 };
}

const pairsOf = (list: readonly number[]): number[][] => list.flatMap((a, i) => list.slice(i + 1).map((b) => [a, b]));

export function splitSides(space: Space, joins = 1): Sides {
  const split = bestSplit(space, joins);
  const tableInner = areAlike(space, split.table, split.inner);
  const inner = productsOf(space, split.inner);
  const table = tableOf(space, split.table, tableInner ? inner : null);
  const outer = plainProducts(space, split.outer);
  const varying = split.outer.filter((f) => (space.factors[f]?.log.length ?? 0) > 1);
  // one list against one list: of two the inner ones may be gathered, and the outer ones never are
  const outerInner = varying.length === 1 && areAlike(space, varying, split.inner);
  return { table, outer, inner, alike: { outerInner, tableInner }, grid: null };
}

/** Whether two sides hold the same products in the same places, so that a cell may exchange them. */
function areAlike({ factors }: Space, a: readonly number[], b: readonly number[]): boolean {
  if (a.length !== b.length) return false;
  return a.every((f, i) => {
    const [one, other] = [factors[f], factors[b[i] ?? -1]];
    return one !== undefined && other !== undefined && sameRatios(one, other);
  });
}
