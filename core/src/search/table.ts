import type { Products } from './products.ts';

/** Products under a grid of logarithms, so that those near a given one are found at once. */
export interface Table {
  readonly products: Products;
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

export function tableOf(products: Products): Table {
  const { log } = products;
  const size = log.length;
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < size; i++) {
    const one = log[i] ?? 0;
    if (one < low) low = one;
    if (one > high) high = one;
  }
  const bucketsPerUnit = high > low ? size / (high - low) : 1;
  const bucketOf = (one: number): number => Math.min(Math.trunc((one - low) * bucketsPerUnit), size - 1);
  const start = new Int32Array(size + 1);
  for (let i = 0; i < size; i++) {
    const bucket = bucketOf(log[i] ?? 0) + 1;
    start[bucket] = (start[bucket] ?? 0) + 1;
  }
  for (let b = 1; b <= size; b++) start[b] = (start[b] ?? 0) + (start[b - 1] ?? 0);
  const grid = { start, low, high, bucketsPerUnit };
  if (products.ascending) return { ...grid, products, log, product: null };
  const next = start.slice();
  const placed = new Float64Array(size);
  const product = new Int32Array(size);
  for (let i = 0; i < size; i++) {
    const one = log[i] ?? 0;
    const bucket = bucketOf(one);
    const entry = next[bucket] ?? 0;
    next[bucket] = entry + 1;
    placed[entry] = one;
    product[entry] = i;
  }
  return { ...grid, products, log: placed, product };
}
