import { type Fraction, float } from '../ratio.ts';
import type { OpenStage, Pair, PumpPair } from './problem.ts';

/** The distinct ratios of one factor (a stage, or the pumps), ascending, each with the choices that give it. */
export interface RatioList {
  /** reduced */
  readonly numerator: readonly bigint[];
  readonly denominator: readonly bigint[];
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
  /** by choice, not by ratio: changed parts, and the place among the choices in the order of the file or of the teeth */
  readonly changed: Uint8Array;
  readonly order: Int32Array;
}

interface Choice {
  readonly index: number;
  readonly numerator: bigint;
  readonly denominator: bigint;
}

type Ranks = Pick<RatioList, 'changed' | 'order'>;

/** Teeth stay below this, so that a pair of them is one safe integer. */
const MOST_TEETH = 2 ** 26;

function gcd(a: number, b: number): number {
  let x = a;
  let y = b;
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}

/** The same place for pairs of equal teeth: such pairs are told apart by the other stages first. */
export function stageRanks(stage: OpenStage): Ranks {
  const key = ({ driver, driven }: Pair): number => driver * MOST_TEETH + driven;
  const keys = [...new Set(stage.pairs.map(key))].sort((a, b) => a - b);
  const place = new Map(keys.map((k, i) => [k, i]));
  return {
    changed: Uint8Array.from(stage.pairs, (pair) => pair.changed),
    order: Int32Array.from(stage.pairs, (pair) => place.get(key(pair)) ?? 0),
  };
}

export function pumpRanks(pumps: readonly PumpPair[]): Ranks {
  return { changed: Uint8Array.from(pumps, (pump) => pump.changed), order: Int32Array.from(pumps, (pump) => pump.order) };
}

export function stageList(stage: OpenStage, ranks: Ranks, chosen: (pair: Pair) => boolean): RatioList {
  const choices: Choice[] = [];
  for (const [index, pair] of stage.pairs.entries()) {
    if (!chosen(pair)) continue;
    const [a, b] = stage.effect === 'B' ? [pair.driver, pair.driven] : stage.effect === 'A' ? [pair.driven, pair.driver] : [1, 1];
    if (!(Number.isInteger(a) && Number.isInteger(b) && a > 0 && b > 0 && a < MOST_TEETH && b < MOST_TEETH))
      throw new RangeError(`teeth ${pair.driver}/${pair.driven}: not whole numbers from 1 to ${MOST_TEETH - 1}`);
    const divisor = gcd(a, b);
    choices.push({ index, numerator: BigInt(a / divisor), denominator: BigInt(b / divisor) });
  }
  return ratioList(choices, ranks);
}

/** The pump ratios over `unit`, one of them: what they have in common would only make the integers long. */
export function pumpList(pumps: readonly PumpPair[], unit: Fraction, ranks: Ranks, chosen: (pump: PumpPair) => boolean): RatioList {
  const choices: Choice[] = [];
  for (const [index, pump] of pumps.entries()) {
    if (!chosen(pump)) continue;
    const ratio = pump.ratio.div(unit);
    if (ratio.s <= 0n || ratio.n === 0n) throw new RangeError(`pump ratio ${pump.ratio.toFraction()}: not above 0`);
    choices.push({ index, numerator: ratio.n, denominator: ratio.d });
  }
  return ratioList(choices, ranks);
}

function ratioList(choices: readonly Choice[], ranks: Ranks): RatioList {
  const byRatio = new Map<string, Group & { readonly members: number[] }>();
  for (const { index, numerator, denominator } of choices) {
    const key = `${numerator}/${denominator}`;
    const known = byRatio.get(key);
    if (known) known.members.push(index);
    else byRatio.set(key, { numerator, denominator, log: Math.log(Number(numerator) / Number(denominator)), members: [index] });
  }
  const groups = [...byRatio.values()].sort((a, b) => a.log - b.log);
  const { changed, order } = ranks;
  const part = (of: ArrayLike<number>, index: number): number => of[index] ?? 0;
  for (const { members } of groups) members.sort((a, b) => part(changed, a) - part(changed, b) || part(order, a) - part(order, b) || a - b);
  return listOf(groups, ranks);
}

/** Only the choices that are `chosen`, by their index. */
export function restrictedTo(list: RatioList, chosen: (index: number) => boolean): RatioList {
  const groups = list.numerator.map((numerator, g) => ({
    numerator,
    denominator: list.denominator[g] ?? 1n,
    log: list.log[g] ?? 0,
    members: [...list.member.subarray(list.first[g], list.first[g + 1])].filter(chosen),
  }));
  return listOf(
    groups.filter(({ members }) => members.length > 0),
    list,
  );
}

interface Group {
  readonly numerator: bigint;
  readonly denominator: bigint;
  readonly log: number;
  readonly members: readonly number[];
}

function listOf(groups: readonly Group[], { changed, order }: Ranks): RatioList {
  const first = new Int32Array(groups.length + 1);
  for (const [g, { members }] of groups.entries()) first[g + 1] = (first[g] ?? 0) + members.length;
  const least = (of: ArrayLike<number>, members: readonly number[]): number =>
    members.reduce((min, index) => Math.min(min, of[index] ?? 0), Infinity);
  return {
    numerator: groups.map(({ numerator }) => numerator),
    denominator: groups.map(({ denominator }) => denominator),
    log: Float64Array.from(groups, ({ log }) => log),
    top: Int32Array.from(groups, ({ numerator }) => residue(numerator)),
    bottom: Int32Array.from(groups, ({ denominator }) => residue(denominator)),
    first,
    member: Int32Array.from(groups.flatMap(({ members }) => members)),
    fewest: Uint8Array.from(groups, ({ members }) => least(changed, members)),
    earliest: Int32Array.from(groups, ({ members }) => least(order, members)),
    changed,
    order,
  };
}

/** Modulo 2^32, as `Math.imul` gives it. */
export const residue = (value: bigint): number => Number(BigInt.asIntN(32, value));

/** Natural logarithm of an exact ratio; -Infinity at 0 and below, which no ratio reaches. */
export function logarithm(value: Fraction): number {
  return value.s <= 0n ? -Infinity : Math.log(float(value));
}

export function largestOf(values: readonly bigint[]): number {
  return values.reduce((largest, value) => Math.max(largest, Number(value)), 0);
}
