import { gathered, type Ways } from './gathered.ts';
import { type RatioList, sameRatios } from './ratioLists.ts';
import type { Space } from './space.ts';

/** Products of one ratio from each of some factors; where they are gathered, equal products are one. */
export interface Products {
  readonly log: Float64Array;
  readonly makeUp: MakeUp;
}

/** What a product is made of. */
export interface MakeUp {
  readonly factors: readonly number[];
  readonly sizes: readonly number[];
  /** null: product p is way p; else it is each of the ways from `first[p]` up to `first[p + 1]` */
  readonly ways: Ways | null;
}

/**
 * Whether the products of these factors are gathered: only two lists, only where there are so many that it pays,
 * and only where a float tells any two products apart (see `gathered`).
 */
export function areGathered({ factors, tuning }: Space, chosen: readonly number[]): boolean {
  const lists = chosen.flatMap((f) => factors[f] ?? []);
  const size = lists.reduce((n, { log }) => n * log.length, 1);
  const most = lists.reduce((n, { mostNumerator, mostDenominator }) => n * mostNumerator * mostDenominator, 1);
  return lists.length === 2 && size > tuning.gathered && most < 2 ** 52;
}

/**
 * The products of these factors, gathered where that pays.
 *
 * @param like products of factors with the same ratios, gathered already; null where there are none
 */
export function productsOf(space: Space, chosen: readonly number[], like: Products | null = null): Products {
  const [a, b] = chosen.flatMap((f) => space.factors[f] ?? []);
  if (!a || !b || !areGathered(space, chosen)) return plainProducts(space, chosen);
  const makeUp = { factors: chosen, sizes: [a.log.length, b.log.length] };
  if (like?.makeUp.ways) return { ...like, makeUp: { ...makeUp, ways: like.makeUp.ways } };
  const { log, ...ways } = gathered(a, b, sameRatios(a, b));
  return { log, makeUp: { ...makeUp, ways } };
}

/** The products of these factors one by one. */
export function plainProducts({ factors }: Space, chosen: readonly number[]): Products {
  const lists = chosen.flatMap((f) => factors[f] ?? []);
  const sizes = lists.map(({ log }) => log.length);
  const log = lists.reduce<Float64Array>((logs, list) => sums(logs, list.log), new Float64Array(1));
  return { log, makeUp: { factors: chosen, sizes, ways: null } };
}

function sums(a: Float64Array, b: Float64Array): Float64Array {
  const all = new Float64Array(a.length * b.length);
  for (let i = 0, k = 0; i < a.length; i++) {
    const one = a[i] ?? 0;
    for (let j = 0; j < b.length; j++, k++) all[k] = one + (b[j] ?? 0);
  }
  return all;
}

/**
 * How many options a product stands for, before any rule across stages.
 *
 * @param groups room to write its ways into
 */
export function optionsIn({ factors }: Space, makeUp: MakeUp, product: number, groups: Int32Array): number {
  let options = 0;
  everyWay(makeUp, product, groups, () => {
    let ofWay = 1;
    for (let k = 0; k < makeUp.factors.length; k++) {
      const f = makeUp.factors[k] ?? 0;
      ofWay *= choicesOf(factors[f], groups[f] ?? 0);
    }
    options += ofWay;
  });
  return options;
}

const choicesOf = (list: RatioList | undefined, g: number): number => (list?.first[g + 1] ?? 0) - (list?.first[g] ?? 0);

/** How many ways a product is made in. */
export const waysOf = ({ ways }: MakeUp, product: number): number =>
  ways === null ? 1 : ((ways.first[product + 1] ?? 0) - (ways.first[product] ?? 0)) * (ways.mirrored ? 2 : 1);

/** Writes every way to make a product into `groups`, one after another, and calls `then` for each. */
export function everyWay({ factors, sizes, ways }: MakeUp, product: number, groups: Int32Array, then: () => void): void {
  if (ways === null) {
    unpack(factors, sizes, product, groups);
    then();
    return;
  }
  const [a = 0, b = 0] = factors;
  const width = sizes[1] ?? 1;
  for (let k = ways.first[product] ?? 0; k < (ways.first[product + 1] ?? 0); k++) {
    const way = ways.way[k] ?? 0;
    const i = Math.trunc(way / width);
    const j = way % width;
    groups[a] = i;
    groups[b] = j;
    then();
    if (!ways.mirrored || i === j) continue;
    groups[a] = j;
    groups[b] = i;
    then();
  }
}

/** Writes one way to make a product. */
export function firstWay({ factors, sizes, ways }: MakeUp, product: number, groups: Int32Array): void {
  unpack(factors, sizes, ways ? (ways.way[ways.first[product] ?? 0] ?? 0) : product, groups);
}

function unpack(factors: readonly number[], sizes: readonly number[], way: number, groups: Int32Array): void {
  let rest = way;
  for (let f = factors.length - 1; f >= 0; f--) {
    const size = sizes[f] ?? 1;
    const whole = Math.trunc(rest / size);
    groups[factors[f] ?? 0] = rest - whole * size;
    rest = whole;
  }
}
