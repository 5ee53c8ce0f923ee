import { type Fraction, float, ratioOf } from '../ratio.ts';
import { findOptions } from './findOptions.ts';
import type { Hooks, Option, Rules, SearchProblem } from './problem.ts';
import { reachSpace } from './reachList.ts';
import { exactY } from './space.ts';

/** Just beyond: lists are in the order of floats, so that the very last may not stand at the end. */
const BELOW = ratioOf(999_999_999, 1_000_000_000);
const ABOVE = ratioOf(1_000_000_001, 1_000_000_000);

/**
 * The options that make the least and the most B per A of all that can be built.
 *
 * @param problem as `findOptions`; what is wanted plays no part
 * @throws as `findOptions`
 * @source the search, asked for the ratio beyond which no product of the factors lies
 * @example extremes(problem, { admit: () => 0 }).highest?.ratio.toFraction()  // '4'
 */
export function extremes(
  problem: SearchProblem,
  rules: Rules,
  hooks: Hooks = {},
): { readonly lowest: Option | null; readonly highest: Option | null } {
  const space = reachSpace(problem);
  if (space === null) return { lowest: null, highest: null };
  const nearest = (wanted: Fraction): Option | null =>
    findOptions({ ...problem, wanted, limits: null }, rules, 1, hooks).options[0] ?? null;
  const { low, high } = rules.span ?? { low: 0, high: Infinity };
  const first = space.factors.map(() => 0);
  const last = space.factors.map(({ log }) => log.length - 1);
  const [least, greatest] = [exactY(space, first), exactY(space, last)];
  // of all that lies beyond, nothing may be listed, and it may be very much
  return {
    lowest: nearest((low > float(least) ? nearly(low) : least).mul(BELOW)),
    highest: nearest((high < float(greatest) ? nearly(high) : greatest).mul(ABOVE)),
  };
}

const BITS = 40;

/** A fraction beside a positive float, far nearer than `BELOW` and `ABOVE` are to 1. */
function nearly(value: number): Fraction {
  const shift = BITS - Math.ceil(Math.log2(value));
  const scaled = BigInt(Math.round(value * 2 ** shift));
  return shift < 0 ? ratioOf(scaled * 2n ** BigInt(-shift), 1) : ratioOf(scaled, 2n ** BigInt(shift));
}
