import { optionOf } from './findOptions.ts';
import { levelSearch } from './levelSearch.ts';
import { levelsOf } from './levels.ts';
import type { Hooks, Option, Rules, SearchProblem } from './problem.ts';
import { buildableSpace } from './space.ts';
import { DEFAULT_TUNING, type Tuning } from './tuning.ts';

/**
 * The best option for each number of changed parts, in the order of the ranking.
 *
 * @param problem only choices whose `failed` is 0 take part
 * @param rules   asked for every option that may come into the list
 * @param hooks   progress and cancelling
 * @returns index c, from 0 to twice the stages plus 2: the best with exactly c changed, null where there is none
 * @throws RangeError and Cancelled as `findOptions`
 * @source our choice of method: the space cut by what changes, each part searched as `findOptions` does
 * @example bestPerChange(problem, { admit: () => 0 })[0]?.ratio.toFraction()  // '1'
 */
export function bestPerChange(
  problem: SearchProblem,
  rules: Rules,
  hooks: Hooks = {},
  tuning: Tuning = DEFAULT_TUNING,
): readonly (Option | null)[] {
  const space = buildableSpace(problem, tuning);
  const levels = space ? levelsOf(space) : [];
  const bestOf = levelSearch(levels, { rules, hooks });
  const best: (Option | null)[] = Array.from({ length: 2 * problem.stages.length + 3 }, () => null);
  for (const [changed, level] of levels.entries()) {
    const entry = bestOf(level, null);
    best[changed] = entry && optionOf(problem, entry);
  }
  hooks.progress?.(1);
  return best;
}
