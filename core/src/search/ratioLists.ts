import { type Fraction, float } from '../ratio.ts';
import type { OpenStage, Pair, PumpPair } from './problem.ts';
import { distinctAscending, placeIn } from './sorted.ts';

/** The distinct ratios of one factor (a stage, or the pumps), ascending, each with the choices that give it. */
export interface RatioList {
  /** reduced */
  readonly numerator: readonly bigint[];
  readonly denominator: readonly bigint[];
  readonly mostNumerator: number;
  readonly mostDenominator: number;
  readonly log: Float64Array;
  /** numerator and denominator modulo 2^32: enough to tell two near ratios apart, see `makes` */
  readonly top: Int32Array;
  readonly bottom: Int32Array;
  /** ratio g is given by `member[first[g]]` up to, not including, `member[first[g + 1]]`, fewest changed parts first */
  readonly first: Int32Array;
  readonly member: Int32Array;
  /** per ratio: its least number of changed parts, its first place in the order */
  readonly fewest: Uint8Array;
  readonly earliest: Int32Array;
  readonly ranks: Ranks;
}

/** What is known of each choice of a factor, whichever ratio it gives. */
export interface Ranks {
  /** by choice: changed parts, and the place among the choices in the order of the file or of the teeth */
  readonly changed: Uint8Array;
  readonly order: Int32Array;
  /** all choices, fewest changed parts first, then by place */
  readonly sequence: Int32Array;
}

/** Teeth stay below this, so that a pair of them is one safe integer. */
const MOST_TEETH = 2 ** 26;

/** The same place for pairs of equal teeth: such pairs are told apart by the other stages first. */
export const stageRanks = ({ pairs }: OpenStage): Ranks => ranksOf(pairs, ({ driver, driven }) => driver * MOST_TEETH + driven);

export const pumpRanks = (pumps: readonly PumpPair[]): Ranks => ranksOf(pumps, ({ order }) => order);

function ranksOf<T extends { readonly changed: number }>(choices: readonly T[], position: (choice: T) => number): Ranks {
  const size = choices.length;
  const positions = numbersOf(choices, position);
  const places = distinctAscending(positions);
  const changed = new Uint8Array(size);
  const order = new Int32Array(size);
  // changed, order and index as the digits of one whole number, which sorts without a comparison function
  const keys = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    changed[i] = choices[i]?.changed ?? 0;
    order[i] = placeIn(places, positions[i] ?? 0);
    keys[i] = ((changed[i] ?? 0) * size + (order[i] ?? 0)) * size + i;
  }
  const sequence = new Int32Array(size);
  for (const [i, key] of keys.sort().entries()) sequence[i] = key % size;
  return { changed, order, sequence };
}

export function stageList({ pairs, effect }: OpenStage, ranks: Ranks, chosen: (pair: Pair) => boolean): RatioList {
  const over = (pair: Pair): number => (effect === 'none' ? 1 : effect === 'B' ? pair.driver : pair.driven);
  const under = (pair: Pair): number => (effect === 'none' ? 1 : effect === 'B' ? pair.driven : pair.driver);
  const taking = pairs.filter(chosen);
  for (const { driver, driven } of taking)
    if (!(areTeeth(driver) && areTeeth(driven)))
      throw new RangeError(`teeth ${driver}/${driven}: not whole numbers from 1 to ${MOST_TEETH - 1}`);
  // of ratios that differ, products under 2^52 keep the correctly rounded quotients apart: equal quotients are equal ratios
  const values = distinctAscending(numbersOf(taking, (pair) => over(pair) / under(pair)));
  const group = new Int32Array(pairs.length).fill(-1);
  const numerator: bigint[] = [];
  const denominator: bigint[] = [];
  for (const [index, pair] of pairs.entries()) {
    if (!chosen(pair)) continue;
    const [a, b] = [over(pair), under(pair)];
    const g = placeIn(values, a / b);
    group[index] = g;
    if (numerator[g] !== undefined) continue;
    const divisor = gcd(a, b);
    numerator[g] = BigInt(a / divisor);
    denominator[g] = BigInt(b / divisor);
  }
  return listOf({ numerator, denominator, log: values.map(Math.log) }, group, ranks);
}

const areTeeth = (teeth: number): boolean => Number.isInteger(teeth) && teeth > 0 && teeth < MOST_TEETH;

function gcd(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}

/** The pump ratios over `unit`, one of them: what they have in common would only make the integers long. */
export function pumpList(pumps: readonly PumpPair[], unit: Fraction, ranks: Ranks, chosen: (pump: PumpPair) => boolean): RatioList {
  const groups = new Map<string, { readonly ratio: Fraction; readonly log: number; readonly members: number[] }>();
  for (const [index, pump] of pumps.entries()) {
    if (!chosen(pump)) continue;
    const ratio = pump.ratio.div(unit);
    if (ratio.s <= 0n || ratio.n === 0n) throw new RangeError(`pump ratio ${pump.ratio.toFraction()}: not above 0`);
    const key = ratio.toFraction();
    const known = groups.get(key);
    if (known) known.members.push(index);
    else groups.set(key, { ratio, log: Math.log(Number(ratio.n) / Number(ratio.d)), members: [index] });
  }
  const ratios = [...groups.values()].sort((a, b) => a.log - b.log);
  const group = new Int32Array(pumps.length).fill(-1);
  for (const [g, { members }] of ratios.entries()) for (const index of members) group[index] = g;
  return listOf(
    {
      numerator: ratios.map(({ ratio }) => ratio.n),
      denominator: ratios.map(({ ratio }) => ratio.d),
      log: numbersOf(ratios, ({ log }) => log),
    },
    group,
    ranks,
  );
}

/** Only the choices that are `chosen`, by their index. */
export function restrictedTo(list: RatioList, chosen: (index: number) => boolean): RatioList {
  const group = new Int32Array(list.ranks.changed.length).fill(-1);
  const kept: number[] = [];
  for (let g = 0; g < list.log.length; g++) {
    const before = kept.length;
    for (let m = list.first[g] ?? 0; m < (list.first[g + 1] ?? 0); m++) {
      const index = list.member[m] ?? 0;
      if (!chosen(index)) continue;
      group[index] = before;
      kept[before] = g;
    }
  }
  return listOf(
    {
      numerator: kept.map((g) => list.numerator[g] ?? 1n),
      denominator: kept.map((g) => list.denominator[g] ?? 1n),
      log: numbersOf(kept, (g) => list.log[g] ?? 0),
    },
    group,
    list.ranks,
  );
}

/** @param group of each choice its ratio, -1 where it takes no part */
function listOf(ratios: Pick<RatioList, 'numerator' | 'denominator' | 'log'>, group: Int32Array, ranks: Ranks): RatioList {
  const size = ratios.log.length;
  const first = new Int32Array(size + 1);
  for (const g of group) if (g >= 0) first[g + 1] = (first[g + 1] ?? 0) + 1;
  for (let g = 0; g < size; g++) first[g + 1] = (first[g + 1] ?? 0) + (first[g] ?? 0);
  const member = new Int32Array(first[size] ?? 0);
  const next = first.slice();
  const fewest = new Uint8Array(size).fill(255);
  const earliest = new Int32Array(size).fill(2 ** 31 - 1);
  for (const index of ranks.sequence) {
    const g = group[index] ?? -1;
    if (g < 0) continue;
    const place = next[g] ?? 0;
    member[place] = index;
    next[g] = place + 1;
    fewest[g] = Math.min(fewest[g] ?? 0, ranks.changed[index] ?? 0);
    earliest[g] = Math.min(earliest[g] ?? 0, ranks.order[index] ?? 0);
  }
  return {
    ...ratios,
    mostNumerator: largestOf(ratios.numerator),
    mostDenominator: largestOf(ratios.denominator),
    top: residuesOf(ratios.numerator),
    bottom: residuesOf(ratios.denominator),
    first,
    member,
    fewest,
    earliest,
    ranks,
  };
}

/** Whether two lists hold the same ratios, whatever choices give them: then their products come in pairs. */
export function sameRatios(a: RatioList, b: RatioList): boolean {
  return (
    a.log.length === b.log.length &&
    a.numerator.every((numerator, g) => numerator === b.numerator[g] && a.denominator[g] === b.denominator[g])
  );
}

/** `Float64Array.from` with a mapping goes through an iterator, which takes ten times as long. */
function numbersOf<T>(items: readonly T[], value: (item: T) => number): Float64Array {
  const numbers = new Float64Array(items.length);
  for (let i = 0; i < items.length; i++) {
    const item = items[i];
    if (item !== undefined) numbers[i] = value(item);
  }
  return numbers;
}

/** Modulo 2^32, as `Math.imul` gives it. */
export const residue = (value: bigint): number => Number(BigInt.asIntN(32, value));

function residuesOf(values: readonly bigint[]): Int32Array {
  const residues = new Int32Array(values.length);
  for (let i = 0; i < values.length; i++) residues[i] = residue(values[i] ?? 0n);
  return residues;
}

/** Natural logarithm of an exact ratio; -Infinity at 0 and below, which no ratio reaches. */
export function logarithm(value: Fraction): number {
  return value.s <= 0n ? -Infinity : Math.log(float(value));
}

function largestOf(values: readonly bigint[]): number {
  let largest = 1;
  for (const value of values) largest = Math.max(largest, Number(value));
  return largest;
}
