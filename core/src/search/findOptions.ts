import { type Fraction, ONE, ZERO } from '../ratio.ts';
import { affordable } from './affordable.ts';
import type { Run } from './collect.ts';
import { exactHits } from './exactHits.ts';
import { pacedAdmit, paceOf, partOf } from './pace.ts';
import type { Hooks, Option, Rules, SearchProblem } from './problem.ts';
import { tiesInOrder } from './ranking.ts';
import { compareTied, type Entry } from './shortlist.ts';
import { splitSides } from './sides.ts';
import { buildableSpace, type Space } from './space.ts';
import { tiedOptions } from './tiedOptions.ts';
import { DEFAULT_TUNING, type Tuning } from './tuning.ts';
import { comparePlaces, type Place } from './window.ts';

export interface Found {
  readonly options: readonly Option[];
  /** further options exist beyond those kept */
  readonly more: boolean;
}

/**
 * The best options of a problem, in the order of the ranking: exact, and the same as listing every option would give.
 *
 * @param problem only choices whose `failed` is 0 take part
 * @param rules   asked for every option that may come into the list
 * @param keep    how many, a whole number >= 0
 * @param hooks   progress and cancelling
 * @param scope   `inside` lists only options inside the limits, so none where there are no limits
 * @returns at most `keep` options, and whether there are more in that scope
 * @throws RangeError on `keep`, a ratio not above 0 or limits that do not hold the wanted ratio; Cancelled when asked to stop
 * @source our choice of method: meeting in the middle over distinct ratios; floats only where their error cannot decide
 * @example findOptions(problem, { admit: () => 0 }, 1).options[0]?.ratio.toFraction()  // '2/3'
 */
export function findOptions(
  problem: SearchProblem,
  rules: Rules,
  keep: number,
  hooks: Hooks = {},
  scope: 'all' | 'inside' = 'all',
  tuning: Tuning = DEFAULT_TUNING,
): Found {
  if (!Number.isSafeInteger(keep) || keep < 0) throw new RangeError(`findOptions: keep ${keep}`);
  const space = buildableSpace(problem, tuning);
  if (space === null || (scope === 'inside' && problem.limits === null)) return { options: [], more: false };
  const entries = firstEntries(space, rules, keep + 1, scope === 'inside' ? lastInside(problem) : null, hooks);
  hooks.progress?.(1);
  return { options: entries.slice(0, keep).map(optionsOf(problem)), more: entries.length > keep };
}

/** The first `wanted` options up to `last` (null: to the end), in order. */
export function firstEntries(space: Space, rules: Rules, wanted: number, last: Place | null, hooks: Hooks): readonly Entry[] {
  const parts = affordable(space);
  if (parts.length === 1 && parts[0] !== undefined) return entriesOf(parts[0], rules, wanted, last, hooks);
  let first: readonly Entry[] = [];
  for (const [index, part] of parts.entries()) {
    const end = first.length === wanted ? first.at(-1) : undefined;
    const found = entriesOf(part, rules, wanted, end ? placeOf(end) : last, partOf(hooks, index / parts.length, 1 / parts.length));
    first = [...first, ...found].sort((a, b) => comparePlaces(placeOf(a), placeOf(b)) || compareTied(space, a, b)).slice(0, wanted);
  }
  return first;
}

function entriesOf(space: Space, rules: Rules, wanted: number, last: Place | null, hooks: Hooks): readonly Entry[] {
  const pace = paceOf(hooks);
  const admit = pacedAdmit(rules, pace.check);
  const exact = exactHits(space, wanted, admit, pace);
  if (exact) return exact;
  const run: Run = { space, sides: splitSides(space), pace };
  const entries: Entry[] = [];
  for (const tie of tiesInOrder(run, wanted, last)) {
    for (const entry of tiedOptions(run, tie, wanted - entries.length, admit)) entries.push(entry);
    if (entries.length >= wanted) break;
  }
  return entries;
}

export const placeOf = ({ inside, y }: Entry): Place => ({ inside, off: y.sub(1).abs() });

/** The end of what is inside, null without limits. */
export function lastInside({ limits }: SearchProblem): Place | null {
  if (limits === null) return null;
  const below = limits.low.neg();
  return { inside: true, off: below.compare(limits.high) > 0 ? below : limits.high };
}

export const optionOf = (problem: SearchProblem, entry: Entry): Option => optionsOf(problem)(entry);

/** Options of one ratio follow one another: what they have in common is computed once. */
export function optionsOf({ wanted, limits }: SearchProblem): (entry: Entry) => Option {
  let last: Fraction | null = null;
  let made = { ratio: wanted, offRatio: ZERO };
  return ({ pump, pairs, y, inside, changed, purchases }) => {
    if (y !== last) made = { ratio: y.mul(wanted), offRatio: y.sub(ONE) };
    last = y;
    return { pump, pairs, ...made, inside: limits && inside, changed, purchases };
  };
}
