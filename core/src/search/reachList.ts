import { type Fraction, ONE } from '../ratio.ts';
import { cellReader } from './cell.ts';
import { optionsOf } from './findOptions.ts';
import { cellsIn } from './levels.ts';
import { pacedAdmit, paceOf } from './pace.ts';
import type { Hooks, Option, Rules, SearchProblem } from './problem.ts';
import { buildableOf, ratiosBetween } from './reachRatios.ts';
import { splitSides } from './sides.ts';
import { buildableSpace, exactY } from './space.ts';
import { tiedOptions } from './tiedOptions.ts';
import { DEFAULT_TUNING, type Tuning } from './tuning.ts';

/** Every ratio that can be built, each once, ascending. */
export interface ReachList {
  /** ln of B per A, as computed; true within `slack` */
  readonly log: Float64Array;
  readonly slack: number;
  /** B per A, exact */
  readonly ratio: (index: number) => Fraction;
  /** of each ratio from one index up to, not including, another: its first option in the order of the ranking */
  readonly firstOptions: (from: number, to: number, hooks?: Hooks) => readonly Option[];
}

const NOTHING: ReachList = { log: new Float64Array(0), slack: 0, ratio: () => ONE, firstOptions: () => [] };

/**
 * Lists every ratio that can be built.
 *
 * @param problem only choices whose `failed` is 0 take part; what is wanted, and its limits, play no part
 * @param rules   asked for options of every ratio until one may be listed
 * @param hooks   progress and cancelling
 * @returns null where there are more products of ratios than `mostCells`
 * @throws Cancelled as `findOptions`
 * @source plain enumeration, gathered by exact ratio
 * @example listReach(problem, { admit: () => 0 }, 1000)?.log.length  // 4
 */
export function listReach(
  given: SearchProblem,
  rules: Rules,
  mostCells: number,
  hooks: Hooks = {},
  tuning: Tuning = DEFAULT_TUNING,
): ReachList | null {
  const problem: SearchProblem = { ...given, wanted: ONE, limits: null };
  const space = buildableSpace(problem, tuning);
  if (space === null) return NOTHING;
  if (cellsIn(space) > mostCells) return null;
  const sides = splitSides(space);
  const reader = cellReader(space, sides);
  const pace = paceOf(hooks);
  const isBuildable = buildableOf(space, sides, pacedAdmit(rules, pace.check));
  const logs: number[] = [];
  const groups: Int32Array[] = [];
  for (const ratio of ratiosBetween(space, sides, pace, -Infinity, Infinity)) {
    const [cell] = ratio.cells ?? [];
    if (cell === undefined || !isBuildable(ratio)) continue;
    logs.push(ratio.log);
    groups.push(reader.groups(cell.table, cell.stream).slice());
  }
  const log = Float64Array.from(logs);
  const exact = new Map<number, Fraction>();
  const ratioAt = (index: number): Fraction => {
    const known = exact.get(index) ?? exactY(space, groups[index] ?? []);
    exact.set(index, known);
    return known;
  };
  return {
    log,
    slack: space.slack,
    ratio: ratioAt,
    firstOptions: (from, to, more = {}) => {
      if (from >= to) return [];
      const itsPace = paceOf(more);
      const run = { space, sides, pace: itsPace };
      const admit = pacedAdmit(rules, itsPace.check);
      const [low, high] = [log[from] ?? 0, log[to - 1] ?? 0];
      const found: Option[] = [];
      const toOption = optionsOf(problem);
      for (const ratio of ratiosBetween(space, sides, itsPace, low - 3 * space.slack, high + 3 * space.slack)) {
        if (ratio.y().compare(ratioAt(from)) < 0 || ratio.y().compare(ratioAt(to - 1)) > 0) continue;
        const [first] = tiedOptions(run, [ratio], 1, admit);
        if (first) found.push(toOption(first));
      }
      return found;
    },
  };
}
