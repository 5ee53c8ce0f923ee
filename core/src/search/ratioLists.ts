import { type Fraction, float } from '../ratio.ts';
import type { OpenStage, Pair, PumpPair } from './problem.ts';
import { MOST_TEETH, numbersOf, type Ranks } from './ranks.ts';
import { distinctAscending, placeIn } from './sorted.ts';

/** The distinct ratios of one factor (a stage, or the pumps), ascending, each with the choices that give it. */
export interface RatioList extends Ratios {
  readonly mostNumerator: number;
  readonly mostDenominator: number;
  /** ratio g is given by `member[first[g]]` up to, not including, `member[first[g + 1]]`, fewest changed parts first */
  readonly first: Int32Array;
  readonly member: Int32Array;
  /** per ratio: its least number of changed parts, its first place in the order */
  readonly fewest: Uint8Array;
  readonly earliest: Float64Array;
  readonly ranks: Ranks;
}

interface Ratios {
  readonly log: Float64Array;
  /** reduced; rounded from 2^53 on */
  readonly numerator: Float64Array;
  readonly denominator: Float64Array;
  /** the same modulo 2^32: enough to tell two near ratios apart, see `makes` */
  readonly top: Int32Array;
  readonly bottom: Int32Array;
  /** numerator and denominator of ratio g, exact */
  readonly exact: (g: number) => readonly [bigint, bigint];
}

/** The ratios of a stage before anything is said of its choices; a machine's stages mostly have the same, so they are kept. */
export interface StageRatios {
  /** of each pair driver/driven as it enters the ratio, rounded; 0 where it takes no part */
  readonly quotients: Float64Array;
  readonly ratios: Ratios;
  readonly group: Int32Array;
}

export function stageList({ pairs, effect }: OpenStage, ranks: Ranks, chosen: (pair: Pair) => boolean, known: StageRatios[]): RatioList {
  const over = (pair: Pair): number => (effect === 'none' ? 1 : effect === 'B' ? pair.driver : pair.driven);
  const under = (pair: Pair): number => (effect === 'none' ? 1 : effect === 'B' ? pair.driven : pair.driver);
  const quotients = numbersOf(pairs, (pair) => {
    if (!chosen(pair)) return 0;
    if (areTeeth(pair.driver) && areTeeth(pair.driven)) return over(pair) / under(pair);
    throw new RangeError(`teeth ${pair.driver}/${pair.driven}: not whole numbers from 1 to ${MOST_TEETH - 1}`);
  });
  const same = known.find((other) => sameNumbers(other.quotients, quotients));
  if (same) return listOf(same.ratios, same.group, ranks);
  // of ratios that differ, products under 2^52 keep the correctly rounded quotients apart: equal quotients are equal ratios
  const values = distinctAscending(quotients.filter((quotient) => quotient > 0));
  const group = new Int32Array(pairs.length).fill(-1);
  const numerator = new Float64Array(values.length);
  const denominator = new Float64Array(values.length);
  for (let index = 0; index < pairs.length; index++) {
    const pair = pairs[index];
    const quotient = quotients[index] ?? 0;
    if (pair === undefined || quotient === 0) continue;
    const g = placeIn(values, quotient);
    group[index] = g;
    if (numerator[g] !== 0) continue;
    const divisor = gcd(over(pair), under(pair));
    numerator[g] = over(pair) / divisor;
    denominator[g] = under(pair) / divisor;
  }
  const ratios = {
    log: values.map(Math.log),
    numerator,
    denominator,
    top: new Int32Array(numerator),
    bottom: new Int32Array(denominator),
    exact: (g: number) => [BigInt(numerator[g] ?? 1), BigInt(denominator[g] ?? 1)] as const,
  };
  known.push({ quotients, ratios, group });
  return listOf(ratios, group, ranks);
}

const areTeeth = (teeth: number): boolean => Number.isInteger(teeth) && teeth > 0 && teeth < MOST_TEETH;

function gcd(a: number, b: number): number {
  let x = a;
  let y = b;
  while (y !== 0) {
    const rest = x % y;
    x = y;
    y = rest;
  }
  return x;
}

/** The pump ratios over `unit`, what they have in common. */
export function pumpList(pumps: readonly PumpPair[], unit: Fraction, ranks: Ranks, chosen: (pump: PumpPair) => boolean): RatioList {
  const groups = new Map<string, { readonly ratio: Fraction; readonly log: number; readonly members: number[] }>();
  for (const [index, pump] of pumps.entries()) {
    if (!chosen(pump)) continue;
    const ratio = pump.ratio.div(unit);
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
      log: numbersOf(ratios, ({ log }) => log),
      numerator: numbersOf(ratios, ({ ratio }) => Number(ratio.n)),
      denominator: numbersOf(ratios, ({ ratio }) => Number(ratio.d)),
      top: Int32Array.from(ratios, ({ ratio }) => residue(ratio.n)),
      bottom: Int32Array.from(ratios, ({ ratio }) => residue(ratio.d)),
      exact: (g) => [ratios[g]?.ratio.n ?? 1n, ratios[g]?.ratio.d ?? 1n],
    },
    group,
    ranks,
  );
}

/** Only the choices that are `chosen`, by their index. */
export function restrictedTo(list: RatioList, chosen: (index: number) => boolean): RatioList {
  const group = new Int32Array(list.ranks.changed.length).fill(-1);
  const places = new Int32Array(list.log.length);
  let size = 0;
  for (let g = 0; g < list.log.length; g++) {
    let taken = false;
    for (let m = list.first[g] ?? 0; m < (list.first[g + 1] ?? 0); m++) {
      const index = list.member[m] ?? 0;
      if (!chosen(index)) continue;
      group[index] = size;
      taken = true;
    }
    if (taken) places[size++] = g;
  }
  const kept = places.slice(0, size);
  const ratios = {
    log: picked(list.log, kept, new Float64Array(size)),
    numerator: picked(list.numerator, kept, new Float64Array(size)),
    denominator: picked(list.denominator, kept, new Float64Array(size)),
    top: picked(list.top, kept, new Int32Array(size)),
    bottom: picked(list.bottom, kept, new Int32Array(size)),
    exact: (g: number) => list.exact(kept[g] ?? 0),
  };
  return listOf(ratios, group, list.ranks);
}

function picked<T extends Float64Array | Int32Array>(values: T, places: Int32Array, into: T): T {
  for (let i = 0; i < places.length; i++) into[i] = values[places[i] ?? 0] ?? 0;
  return into;
}

/** @param group of each choice its ratio, -1 where it takes no part */
function listOf(ratios: Ratios, group: Int32Array, ranks: Ranks): RatioList {
  const size = ratios.log.length;
  const first = new Int32Array(size + 1);
  for (let index = 0; index < group.length; index++) {
    const g = group[index] ?? -1;
    if (g >= 0) first[g + 1] = (first[g + 1] ?? 0) + 1;
  }
  for (let g = 0; g < size; g++) first[g + 1] = (first[g + 1] ?? 0) + (first[g] ?? 0);
  const member = new Int32Array(first[size] ?? 0);
  const next = first.slice();
  const fewest = new Uint8Array(size).fill(255);
  const earliest = new Float64Array(size).fill(Infinity);
  for (let k = 0; k < ranks.sequence.length; k++) {
    const index = ranks.sequence[k] ?? 0;
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
    first,
    member,
    fewest,
    earliest,
    ranks,
  };
}

/** Whether two lists hold the same ratios, whatever choices give them: then their products come in pairs. */
export function sameRatios(a: RatioList, b: RatioList): boolean {
  const most = Math.max(a.mostNumerator, a.mostDenominator, b.mostNumerator, b.mostDenominator);
  // what is rounded is not compared
  return most < 2 ** 53 && sameNumbers(a.numerator, b.numerator) && sameNumbers(a.denominator, b.denominator);
}

function sameNumbers(a: Float64Array, b: Float64Array): boolean {
  return a === b || (a.length === b.length && a.every((value, i) => value === b[i]));
}

/** Modulo 2^32, as `Math.imul` gives it. */
export const residue = (value: bigint): number => Number(BigInt.asIntN(32, value));

/** Natural logarithm of an exact ratio; -Infinity at 0 and below, which no ratio reaches. */
export function logarithm(value: Fraction): number {
  return value.s <= 0n ? -Infinity : Math.log(float(value));
}

const largestOf = (values: Float64Array): number => values.reduce((largest, value) => Math.max(largest, value), 1);
