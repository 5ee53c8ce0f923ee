import type { RatioList } from './ratioLists.ts';

/** What of a list its products are made of. */
export type Quotients = Pick<RatioList, 'log' | 'numerator' | 'denominator'>;

/** A way is one ratio from each factor, by index, as one number of which the last factor is the lowest digit. */
export interface Ways {
  readonly first: Int32Array;
  readonly way: Int32Array;
  /** of two factors with the same ratios: each way stands for the other way round too */
  readonly mirrored: boolean;
}

export interface Gathered extends Ways {
  readonly log: Float64Array;
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
export function gathered(a: Quotients, b: Quotients, mirrored: boolean): Gathered {
  const width = b.log.length;
  const size = mirrored ? (width * (width + 1)) / 2 : a.log.length * width;
  const way = new Int32Array(size);
  const products = distinctProducts();
  let done = 0;
  for (const { values, ways, count } of portionsOf(a, b, mirrored, Math.ceil(size / PORTION))) {
    for (let k = 0; k < count; k++) if (k === 0 || values[k] !== values[k - 1]) products.add(values[k] ?? 1, done + k);
    way.set(ways.subarray(0, count), done);
    done += count;
  }
  return { ...products.all(size), way, mirrored };
}

/** Grows as it fills: nobody knows beforehand how many products differ, and room that is never used still costs the system time. */
function distinctProducts() {
  let log = new Float64Array(2 ** 12);
  let first = new Int32Array(2 ** 12);
  let size = 0;
  return {
    add: (value: number, place: number): void => {
      if (size + 1 === log.length) {
        log = grown(log, new Float64Array(2 * log.length));
        first = grown(first, new Int32Array(2 * first.length));
      }
      log[size] = Math.log(value);
      first[size] = place;
      size += 1;
    },
    all: (end: number): Pick<Gathered, 'log' | 'first'> => {
      first[size] = end;
      return { log: log.slice(0, size), first: first.slice(0, size + 1) };
    },
  };
}

/** Values with their ways, of which the first `count` count; good until the next. */
interface Portion {
  values: Float64Array;
  ways: Int32Array;
  count: number;
}

/**
 * All products in ascending order, portion by portion. Row by row they ascend anyway, so that a portion of the scale, a little
 * further each time, takes a few more from the front of every row; what it holds is then put in order by itself.
 */
function* portionsOf(a: Quotients, b: Quotients, mirrored: boolean, portions: number): Generator<Portion> {
  const rows = a.log.length;
  const width = b.log.length;
  const next = new Int32Array(rows);
  if (mirrored) for (let i = 0; i < rows; i++) next[i] = i;
  const low = (a.log[0] ?? 0) + (b.log[0] ?? 0);
  const high = (a.log[rows - 1] ?? 0) + (b.log[width - 1] ?? 0);
  const inOrder = portionSorter();
  const portion: Portion = { values: new Float64Array(PORTION), ways: new Int32Array(PORTION), count: 0 };
  for (let p = 1; p <= portions; p++) {
    const limit = p === portions ? Infinity : Math.exp(low + ((high - low) * p) / portions);
    portion.count = 0;
    for (let i = 0; i < rows; i++) next[i] = takeFromRow(portion, a, b, i, next[i] ?? 0, limit);
    yield inOrder(portion);
  }
}

/** Adds the products of row i from column j on that are below the limit, and answers the column it got to. */
function takeFromRow(portion: Portion, a: Quotients, b: Quotients, i: number, from: number, limit: number): number {
  const width = b.log.length;
  const numerator = a.numerator[i] ?? 0;
  const denominator = a.denominator[i] ?? 1;
  let { values, ways, count } = portion;
  let j = from;
  for (; j < width; j++) {
    const value = (numerator * (b.numerator[j] ?? 0)) / (denominator * (b.denominator[j] ?? 1));
    if (value >= limit) break;
    if (count === values.length) {
      portion.values = grown(values, new Float64Array(2 * count));
      portion.ways = grown(ways, new Int32Array(2 * count));
      ({ values, ways } = portion);
    }
    values[count] = value;
    ways[count] = i * width + j;
    count += 1;
  }
  portion.count = count;
  return j;
}

function grown<T extends Float64Array | Int32Array>(short: T, long: T): T {
  long.set(short);
  return long;
}

/** Puts a portion in order: a counting sort into about two places for each value, then what is left. */
function portionSorter(): (portion: Portion) => Portion {
  const sorted: Portion = { values: new Float64Array(0), ways: new Int32Array(0), count: 0 };
  let places = new Int32Array(0);
  return ({ values, ways, count }) => {
    if (sorted.values.length < values.length) {
      sorted.values = new Float64Array(values.length);
      sorted.ways = new Int32Array(values.length);
      places = new Int32Array(2 * values.length + 1);
    }
    let low = Infinity;
    let high = 0;
    for (let k = 0; k < count; k++) {
      const value = values[k] ?? 0;
      if (value < low) low = value;
      if (value > high) high = value;
    }
    const bucketsPerUnit = high > low ? (2 * count - 1) / (high - low) : 0;
    places.fill(0, 0, 2 * count + 1);
    for (let k = 0; k < count; k++) {
      const bucket = (((values[k] ?? 0) - low) * bucketsPerUnit) | 0;
      places[bucket + 1] = (places[bucket + 1] ?? 0) + 1;
    }
    for (let bucket = 1; bucket <= 2 * count; bucket++) places[bucket] = (places[bucket] ?? 0) + (places[bucket - 1] ?? 0);
    for (let k = 0; k < count; k++) {
      const value = values[k] ?? 0;
      const bucket = ((value - low) * bucketsPerUnit) | 0;
      const place = places[bucket] ?? 0;
      places[bucket] = place + 1;
      sorted.values[place] = value;
      sorted.ways[place] = ways[k] ?? 0;
    }
    sorted.count = count;
    insertionSort(sorted);
    return sorted;
  };
}

/** Fast where hardly anything is out of place. */
function insertionSort({ values, ways, count }: Portion): void {
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
