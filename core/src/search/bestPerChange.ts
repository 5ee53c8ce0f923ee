import { firstEntries, optionOf } from './findOptions.ts';
import { cellsIn, levelsOf } from './levels.ts';
import { partOf } from './pace.ts';
import type { Hooks, Option, Rules, SearchProblem } from './problem.ts';
import { compareTied, type Entry } from './shortlist.ts';
import { buildableSpace, type Space } from './space.ts';
import { DEFAULT_TUNING, type Tuning } from './tuning.ts';
import { comparePlaces, type Place } from './window.ts';

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
  const space = buildableSpace(problem);
  const levels = space ? levelsOf(space) : [];
  const cells = levels.flat().reduce((sum, part) => sum + cellsIn(part), 0);
  const best: (Option | null)[] = Array.from({ length: 2 * problem.stages.length + 3 }, () => null);
  let done = 0;
  for (const [changed, parts] of levels.entries()) {
    let entry: Entry | null = null;
    // each part is searched no further than the best so far; small ones first, for what they find narrows the search of the large ones
    for (const part of [...parts].sort((a, b) => cellsIn(a) - cellsIn(b))) {
      entry = better(part, entry, rules, partOf(hooks, done / cells, cellsIn(part) / cells), tuning);
      done += cellsIn(part);
    }
    best[changed] = entry && optionOf(problem, entry);
  }
  hooks.progress?.(1);
  return best;
}

function better(space: Space, best: Entry | null, rules: Rules, hooks: Hooks, tuning: Tuning): Entry | null {
  const [entry] = firstEntries(space, rules, 1, best && placeOf(best), hooks, tuning);
  if (!entry || !best) return entry ?? best;
  return (comparePlaces(placeOf(entry), placeOf(best)) || compareTied(space, entry, best)) < 0 ? entry : best;
}

const placeOf = ({ inside, y }: Entry): Place => ({ inside, off: y.sub(1).abs() });
