import { optionOf } from './findOptions.ts';
import { levelSearch } from './levelSearch.ts';
import { levelsOf } from './levels.ts';
import type { Hooks, Option, Rules, SearchProblem } from './problem.ts';
import { buildableSpace } from './space.ts';
import { DEFAULT_TUNING, type Tuning } from './tuning.ts';

/** Told of each level as it is found: those of few changed parts are there long before the last. */
export interface LevelHooks extends Hooks {
  readonly level?: (changed: number, best: Option | null) => void;
}

/**
 * The best option for each number of changed parts, in the order of the ranking.
 *
 * @param problem only choices whose `failed` is 0 take part
 * @param rules   asked for every option that may come into the list
 * @param hooks   progress, cancelling, and each level as soon as it is known
 * @returns index c, from 0 to twice the stages plus 2: the best with exactly c changed, null where there is none
 * @throws RangeError and Cancelled as `findOptions`
 * @source our choice of method: the space cut by what changes, each part searched as `findOptions` does
 * @example bestPerChange(problem, { admit: () => 0 })[0]?.ratio.toFraction()  // '1'
 */
export function bestPerChange(
  problem: SearchProblem,
  rules: Rules,
  hooks: LevelHooks = {},
  tuning: Tuning = DEFAULT_TUNING,
): readonly (Option | null)[] {
  const space = buildableSpace(problem, tuning);
  const levels = space ? levelsOf(space) : [];
  const bestOf = levelSearch(levels, { rules, hooks });
  const best: (Option | null)[] = Array.from({ length: 2 * problem.stages.length + 3 }, () => null);
  for (const [changed, level] of levels.entries()) {
    const entry = bestOf(level, null);
    const option = entry && optionOf(problem, entry);
    best[changed] = option;
    hooks.level?.(changed, option);
  }
  hooks.progress?.(1);
  return best;
}
