import { ONE, ZERO } from '../ratio.ts';
import type { Ratio } from './distinct.ts';
import { levelsOf } from './levels.ts';
import type { Pace } from './pace.ts';
import { residue } from './ratioLists.ts';
import { type Entry, shortlist } from './shortlist.ts';
import { bestSplit } from './sides.ts';
import type { Space } from './space.ts';
import { type Admit, searchPart } from './tiedOptions.ts';

/** In stream products looked up: a few more than the largest part of three stages of 60 teeth takes. */
const MOST_COST = 2 ** 23;

/**
 * The first `wanted` options if all of them make the wanted ratio exactly, found by number of changed parts without any ranking; else null.
 * A round ratio like 1:1 can be made in millions of ways, and this needs a few thousand of them.
 */
export function exactHits(space: Space, wanted: number, admit: Admit, pace: Pace): readonly Entry[] | null {
  if (!mayMakeExactly(space)) return null;
  const { constant } = space;
  const wantedRatio: Ratio = {
    log: 0,
    top: residue(constant.d),
    bottom: residue(constant.n),
    y: () => ONE,
    inside: true,
    off: 0,
    place: () => ({ inside: true, off: ZERO }),
    options: 0,
    cells: null,
  };
  const list = shortlist(space, wanted);
  let cost = 0;
  for (const [changed, parts] of levelsOf(space).entries()) {
    if (changed > list.mostChanged()) break;
    cost += parts.reduce((sum, part) => sum + bestSplit(part).cost, 0);
    if (cost > MOST_COST) return null;
    for (const part of parts) searchPart(part, wantedRatio, list, admit, pace);
  }
  const entries = list.entries();
  return entries.length === wanted ? entries : null;
}

/** Whether constant * product = 1 is possible by size, which `makes` relies on for its proof, and by prime factors. */
function mayMakeExactly({ constant, factors, mostNumerator, mostDenominator }: Space): boolean {
  if (Number(constant.d) > mostNumerator || Number(constant.n) > mostDenominator) return false;
  return (
    factors.reduce((rest, { numerator }) => without(rest, numerator), constant.d) === 1n &&
    factors.reduce((rest, { denominator }) => without(rest, denominator), constant.n) === 1n
  );
}

/** What is left of `value` once every factor it shares with the divisors is divided out, as often as it goes. */
function without(value: bigint, divisors: readonly bigint[]): bigint {
  let rest = value;
  for (const divisor of divisors) {
    for (let common = gcd(rest, divisor); common > 1n; common = gcd(rest, common)) rest /= common;
  }
  return rest;
}

function gcd(a: bigint, b: bigint): bigint {
  return b === 0n ? a : gcd(b, a % b);
}
