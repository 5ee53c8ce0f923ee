import { type Fraction, ratioOf } from '../ratio.ts';
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
  const first = space.factors.map(() => 0);
  const last = space.factors.map(({ log }) => log.length - 1);
  return { lowest: nearest(exactY(space, first).mul(BELOW)), highest: nearest(exactY(space, last).mul(ABOVE)) };
}
