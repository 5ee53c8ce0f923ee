import type { RatioList } from './ratioLists.ts';
import type { Space } from './space.ts';

/**
 * The factors of a space split for the join: every product of the table side is stored under a grid of logarithms,
 * the products of the stream side are only run through, as `outer` products times the `inner` list.
 * A cell, one ratio from each factor, is two whole numbers: its entry in the table, and its place in the stream.
 */
export interface Sides {
  readonly table: Table;
  readonly outer: Products;
  readonly inner: Products;
  readonly tableFactors: readonly number[];
  readonly streamFactors: readonly number[];
}

/** Products of one ratio from each of some factors, the last factor running fastest. */
export interface Products {
  readonly log: Float64Array;
  /** numerator and denominator, not reduced, modulo 2^32 */
  readonly top: Int32Array;
  readonly bottom: Int32Array;
}

export interface Table extends Products {
  /** bucket b holds the entries `start[b]` up to `start[b + 1]`, in no order */
  readonly start: Int32Array;
  /** which product an entry is */
  readonly code: Int32Array;
  readonly low: number;
  readonly high: number;
  readonly bucketsPerUnit: number;
}

export interface Split {
  readonly table: readonly number[];
  /** the inner factor last; never empty */
  readonly stream: readonly number[];
  /** in stream products looked up */
  readonly cost: number;
}

/** Above this the table no longer pays for its memory. */
const MOST_TABLE_ENTRIES = 2 ** 23;

/** What a table entry costs to store against a stream product to look up, by measurement about four to one. */
const ENTRY_COST = 4;

export function bestSplit({ factors }: Space): Split {
  const all = factors.map((_, f) => f);
  const size = (f: number): number => factors[f]?.log.length ?? 0;
  const product = (chosen: readonly number[]): number => chosen.reduce((n, f) => n * size(f), 1);
  let best: Split = { table: [], stream: all, cost: Infinity };
  for (let subset = 0; subset < 2 ** factors.length - 1; subset++) {
    const table = all.filter((f) => (subset >> f) & 1);
    const stream = all.filter((f) => !((subset >> f) & 1)).sort((a, b) => size(a) - size(b));
    const cost = product(table) * ENTRY_COST + product(stream);
    if (cost < best.cost && product(table) <= MOST_TABLE_ENTRIES) best = { table, stream, cost };
  }
  return best;
}

export function splitSides(space: Space): Sides {
  const { table, stream } = bestSplit(space);
  const products = (chosen: readonly number[]): Products => productsOf(chosen.flatMap((f) => space.factors[f] ?? []));
  return {
    table: tableOf(products(table)),
    outer: products(stream.slice(0, -1)),
    inner: products(stream.slice(-1)),
    tableFactors: table,
    streamFactors: stream,
  };
}

function productsOf(lists: readonly RatioList[]): Products {
  let products: Products = { log: new Float64Array(1), top: Int32Array.of(1), bottom: Int32Array.of(1) };
  for (const list of lists) products = times(products, list);
  return products;
}

function times(a: Products, b: Products): Products {
  const size = a.log.length * b.log.length;
  const log = new Float64Array(size);
  const top = new Int32Array(size);
  const bottom = new Int32Array(size);
  for (let i = 0, k = 0; i < a.log.length; i++) {
    for (let j = 0; j < b.log.length; j++, k++) {
      log[k] = (a.log[i] ?? 0) + (b.log[j] ?? 0);
      top[k] = Math.imul(a.top[i] ?? 0, b.top[j] ?? 0);
      bottom[k] = Math.imul(a.bottom[i] ?? 0, b.bottom[j] ?? 0);
    }
  }
  return { log, top, bottom };
}

function tableOf({ log, top, bottom }: Products): Table {
  const size = log.length;
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < size; i++) {
    low = Math.min(low, log[i] ?? 0);
    high = Math.max(high, log[i] ?? 0);
  }
  const bucketsPerUnit = high > low ? size / (high - low) : 1;
  const bucket = new Int32Array(size);
  const start = new Int32Array(size + 1);
  for (let i = 0; i < size; i++) {
    const b = Math.min(Math.trunc(((log[i] ?? 0) - low) * bucketsPerUnit), size - 1);
    bucket[i] = b;
    start[b] = (start[b] ?? 0) + 1;
  }
  for (let b = 1; b <= size; b++) start[b] = (start[b] ?? 0) + (start[b - 1] ?? 0);
  const table = { log: new Float64Array(size), top: new Int32Array(size), bottom: new Int32Array(size), code: new Int32Array(size) };
  // start[b] is now the end of bucket b; filling from there downwards leaves it at the beginning
  for (let i = 0; i < size; i++) {
    const b = bucket[i] ?? 0;
    const entry = (start[b] ?? 0) - 1;
    start[b] = entry;
    table.log[entry] = log[i] ?? 0;
    table.top[entry] = top[i] ?? 0;
    table.bottom[entry] = bottom[i] ?? 0;
    table.code[entry] = i;
  }
  return { ...table, start, low, high, bucketsPerUnit };
}
