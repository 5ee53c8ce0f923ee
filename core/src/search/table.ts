import { areGathered, type MakeUp, type Products, plainProducts, productsOf } from './products.ts';
import type { Space } from './space.ts';

/** Products under a grid of logarithms, so that those near a given one are found at once. */
export interface Table {
  readonly makeUp: MakeUp;
  /** of each entry its logarithm; bucket b holds the entries `start[b]` up to `start[b + 1]` */
  readonly log: Float64Array;
  readonly start: Int32Array;
  /** which product an entry is; null: entry and product are the same, ascending */
  readonly product: Int32Array | null;
  readonly low: number;
  readonly high: number;
  /** about one entry to a bucket */
  readonly bucketsPerUnit: number;
}

/** @param like as `productsOf` */
export function tableOf(space: Space, chosen: readonly number[], like: Products | null): Table {
  const lists = chosen.flatMap((f) => space.factors[f] ?? []);
  return lists.length < 2 || areGathered(space, chosen) ? ascendingTable(productsOf(space, chosen, like)) : scatteredTable(space, chosen);
}

function ascendingTable({ log, makeUp }: Products): Table {
  const size = log.length;
  const [low, high] = [log[0] ?? 0, log[size - 1] ?? 0];
  const bucketsPerUnit = perUnit(size, low, high);
  const start = new Int32Array(size + 1);
  let bucket = 0;
  for (let entry = 0; entry < size; entry++) {
    const own = bucketOf(log[entry] ?? 0, low, bucketsPerUnit, size);
    while (bucket < own) start[++bucket] = entry;
  }
  start.fill(size, bucket + 1);
  return { makeUp, log, start, product: null, low, high, bucketsPerUnit };
}

/** Each product is one of the last factor times one of the others: they are added up twice, rather than written down in between. */
function scatteredTable(space: Space, chosen: readonly number[]): Table {
  const a = plainProducts(space, chosen.slice(0, -1)).log;
  const b = plainProducts(space, chosen.slice(-1)).log;
  const sizes = chosen.map((f) => space.factors[f]?.log.length ?? 0);
  const size = a.length * b.length;
  const [low, high] = [a.reduce(least, Infinity) + (b[0] ?? 0), a.reduce(most, -Infinity) + (b[b.length - 1] ?? 0)];
  const bucketsPerUnit = perUnit(size, low, high);
  // counted two places up, so that start[b + 1] is the beginning of bucket b, and its end once it is filled
  const start = new Int32Array(size + 2);
  for (let i = 0; i < a.length; i++) {
    for (let j = 0; j < b.length; j++) {
      const bucket = bucketOf((a[i] ?? 0) + (b[j] ?? 0), low, bucketsPerUnit, size);
      start[bucket + 2] = (start[bucket + 2] ?? 0) + 1;
    }
  }
  for (let bucket = 2; bucket < start.length; bucket++) start[bucket] = (start[bucket] ?? 0) + (start[bucket - 1] ?? 0);
  const log = new Float64Array(size);
  const product = new Int32Array(size);
  for (let i = 0; i < a.length; i++) {
    for (let j = 0; j < b.length; j++) {
      const sum = (a[i] ?? 0) + (b[j] ?? 0);
      const bucket = bucketOf(sum, low, bucketsPerUnit, size);
      const entry = start[bucket + 1] ?? 0;
      start[bucket + 1] = entry + 1;
      log[entry] = sum;
      product[entry] = i * b.length + j;
    }
  }
  return {
    makeUp: { factors: chosen, sizes, ways: null },
    log,
    start: start.subarray(0, size + 1),
    product,
    low,
    high,
    bucketsPerUnit,
  };
}

const least = (a: number, b: number): number => Math.min(a, b);
const most = (a: number, b: number): number => Math.max(a, b);

const perUnit = (size: number, low: number, high: number): number => (high > low ? size / (high - low) : 1);

const bucketOf = (log: number, low: number, bucketsPerUnit: number, size: number): number =>
  Math.min(((log - low) * bucketsPerUnit) | 0, size - 1);
