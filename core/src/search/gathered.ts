import type { RatioList } from './ratioLists.ts';

/** A way is one ratio from each factor, by index, as one number of which the last factor is the lowest digit. */
export interface Ways {
  readonly first: Int32Array;
  readonly way: Int32Array;
  /** of two factors with the same ratios: each way stands for the other way round too */
  readonly mirrored: boolean;
}

export interface Gathered {
  readonly log: Float64Array;
  readonly ways: Ways;
}

/** More buckets than this no longer stay in the processor's cache. */
const MOST_BUCKETS = 2 ** 20;

/**
 * All products of two lists in ascending order, equal ones as one: of 5.7 million of two stages of 60 sizes about 580,000 are left.
 *
 * N/D is rounded correctly, so it never falls as the ratio rises; and while N * D' stays under 2^52, two different ratios are more than
 * 2^-52 of themselves apart, so that equal floats are equal ratios. Nothing is compared twice: a counting sort by the upper half
 * of the float leaves a few products to a bucket.
 *
 * @param mirrored the lists hold the same ratios, so that half of the products is enough
 */
export function gathered(a: RatioList, b: RatioList, mirrored: boolean): Gathered {
  const sorted = sortedWays(a, b, mirrored);
  const first = firstOfEach(sorted.value);
  const size = first.length - 1;
  const log = new Float64Array(size);
  for (let p = 0; p < size; p++) log[p] = Math.log(sorted.value[first[p] ?? 0] ?? 1);
  return { log, ways: { first, way: sorted.way, mirrored } };
}

/** Where each run of equal values begins, and behind the last of them the end. */
function firstOfEach(value: Float64Array): Int32Array {
  const first = new Int32Array(value.length + 1);
  let size = 0;
  for (let k = 0; k < value.length; k++) if (k === 0 || value[k] !== value[k - 1]) first[size++] = k;
  first[size] = value.length;
  return first.slice(0, size + 1);
}

interface Sorted {
  readonly value: Float64Array;
  readonly way: Int32Array;
}

function sortedWays(a: RatioList, b: RatioList, mirrored: boolean): Sorted {
  const width = b.log.length;
  const size = mirrored ? (width * (width + 1)) / 2 : a.log.length * width;
  const { bucketOf, buckets } = bucketsBetween(productOf(0, 0), productOf(a.log.length - 1, width - 1), size);
  function productOf(i: number, j: number): number {
    return ((a.numerator[i] ?? 0) * (b.numerator[j] ?? 0)) / ((a.denominator[i] ?? 0) * (b.denominator[j] ?? 0));
  }
  const next = new Int32Array(buckets + 1);
  for (let i = 0; i < a.log.length; i++) {
    for (let j = mirrored ? i : 0; j < width; j++) {
      const bucket = bucketOf(productOf(i, j)) + 1;
      next[bucket] = (next[bucket] ?? 0) + 1;
    }
  }
  for (let bucket = 1; bucket <= buckets; bucket++) next[bucket] = (next[bucket] ?? 0) + (next[bucket - 1] ?? 0);
  const sorted: Sorted = { value: new Float64Array(size), way: new Int32Array(size) };
  for (let i = 0; i < a.log.length; i++) {
    for (let j = mirrored ? i : 0; j < width; j++) {
      const value = productOf(i, j);
      const bucket = bucketOf(value);
      const place = next[bucket] ?? 0;
      next[bucket] = place + 1;
      sorted.value[place] = value;
      sorted.way[place] = i * width + j;
    }
  }
  insertionSort(sorted);
  return sorted;
}

/** Buckets of floats by their upper 32 bits, which rise with the float while it is positive. */
function bucketsBetween(
  low: number,
  high: number,
  size: number,
): { readonly bucketOf: (value: number) => number; readonly buckets: number } {
  const float = new Float64Array(1);
  const halves = new Int32Array(float.buffer);
  // a machine keeps either half first
  float[0] = 1;
  const upper = halves[1] === 0 ? 0 : 1;
  const upperHalf = (value: number): number => {
    float[0] = value;
    return halves[upper] ?? 0;
  };
  const lowest = upperHalf(low);
  const span = upperHalf(high) - lowest + 1;
  const shift = Math.max(0, Math.ceil(Math.log2(span / Math.min(MOST_BUCKETS, 2 * size))));
  return { bucketOf: (value) => (upperHalf(value) - lowest) >> shift, buckets: (span >> shift) + 1 };
}

/** Fast where hardly anything is out of place. */
function insertionSort({ value, way }: Sorted): void {
  for (let k = 1; k < value.length; k++) {
    const moved = value[k] ?? 0;
    if ((value[k - 1] ?? 0) <= moved) continue;
    const movedWay = way[k] ?? 0;
    let to = k;
    for (; to > 0 && (value[to - 1] ?? 0) > moved; to--) {
      value[to] = value[to - 1] ?? 0;
      way[to] = way[to - 1] ?? 0;
    }
    value[to] = moved;
    way[to] = movedWay;
  }
}
