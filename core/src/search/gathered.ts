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

/** So many products on average are put in order at a time: they stay in the processor's cache. */
const PORTION = 2 ** 13;

/**
 * All products of two lists in ascending order, equal ones as one: of 5.7 million of two stages of 60 sizes about 580,000 are left.
 *
 * N/D is rounded correctly, so it never falls as the ratio rises; and while N * D' stays under 2^52, two different ratios are more than
 * 2^-52 of themselves apart, so that equal floats are equal ratios. The order within a portion is
 * found by counting, for nearly all of it.
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

/**
 * Row by row the products ascend, so a portion of the scale, a little further each time, takes a few more from the front of every row;
 * what a portion holds is then put in order by itself.
 */
function sortedWays(a: RatioList, b: RatioList, mirrored: boolean): Sorted {
  const rows = a.log.length;
  const width = b.log.length;
  const size = mirrored ? (width * (width + 1)) / 2 : rows * width;
  const next = new Int32Array(rows);
  if (mirrored) for (let i = 0; i < rows; i++) next[i] = i;
  const sorted: Sorted = { value: new Float64Array(size), way: new Int32Array(size) };
  const inOrder = portionSorter(sorted);
  const low = (a.log[0] ?? 0) + (b.log[0] ?? 0);
  const high = (a.log[rows - 1] ?? 0) + (b.log[width - 1] ?? 0);
  const portions = Math.ceil(size / PORTION);
  let end = 0;
  for (let portion = 1; portion <= portions; portion++) {
    const limit = portion === portions ? Infinity : Math.exp(low + ((high - low) * portion) / portions);
    const start = end;
    for (let i = 0; i < rows; i++) {
      const numerator = a.numerator[i] ?? 0;
      const denominator = a.denominator[i] ?? 1;
      let j = next[i] ?? 0;
      for (; j < width; j++) {
        const value = (numerator * (b.numerator[j] ?? 0)) / (denominator * (b.denominator[j] ?? 1));
        if (value >= limit) break;
        sorted.value[end] = value;
        sorted.way[end] = i * width + j;
        end += 1;
      }
      next[i] = j;
    }
    inOrder(start, end);
  }
  return sorted;
}

/** Puts the values `start` up to `end` in order, with their ways: a counting sort into about two places for each, then what is left. */
function portionSorter({ value, way }: Sorted): (start: number, end: number) => void {
  let values = new Float64Array(0);
  let ways = new Int32Array(0);
  let places = new Int32Array(0);
  return (start, end) => {
    const count = end - start;
    if (values.length < count) {
      values = new Float64Array(2 * count);
      ways = new Int32Array(2 * count);
      places = new Int32Array(4 * count + 2);
    }
    let low = Infinity;
    let high = 0;
    for (let k = start; k < end; k++) {
      const one = value[k] ?? 0;
      if (one < low) low = one;
      if (one > high) high = one;
    }
    const buckets = 2 * count;
    const bucketsPerUnit = high > low ? (buckets - 1) / (high - low) : 0;
    places.fill(0, 0, buckets + 1);
    for (let k = start; k < end; k++) {
      const bucket = (((value[k] ?? 0) - low) * bucketsPerUnit) | 0;
      places[bucket + 1] = (places[bucket + 1] ?? 0) + 1;
    }
    for (let bucket = 1; bucket <= buckets; bucket++) places[bucket] = (places[bucket] ?? 0) + (places[bucket - 1] ?? 0);
    for (let k = start; k < end; k++) {
      const one = value[k] ?? 0;
      const bucket = ((one - low) * bucketsPerUnit) | 0;
      const place = places[bucket] ?? 0;
      places[bucket] = place + 1;
      values[place] = one;
      ways[place] = way[k] ?? 0;
    }
    insertionSort(values, ways, count);
    value.set(values.subarray(0, count), start);
    way.set(ways.subarray(0, count), start);
  };
}

/** Fast where hardly anything is out of place. */
function insertionSort(values: Float64Array, ways: Int32Array, count: number): void {
  for (let k = 1; k < count; k++) {
    const moved = values[k] ?? 0;
    if ((values[k - 1] ?? 0) <= moved) continue;
    const movedWay = ways[k] ?? 0;
    let to = k;
    for (; to > 0 && (values[to - 1] ?? 0) > moved; to--) {
      values[to] = values[to - 1] ?? 0;
      ways[to] = ways[to - 1] ?? 0;
    }
    values[to] = moved;
    ways[to] = movedWay;
  }
}
