import { firstEntries, placeOf } from './findOptions.ts';
import { cellsIn } from './levels.ts';
import { partOf } from './pace.ts';
import type { Hooks, Rules } from './problem.ts';
import { compareTied, type Entry } from './shortlist.ts';
import type { Space } from './space.ts';
import { comparePlaces, type Place } from './window.ts';

/** What a search is told besides what it searches. */
export interface Manner {
  readonly rules: Rules;
  readonly hooks: Hooks;
}

/** A level: parts of a space that hold no option twice. */
type Level = readonly Space[];

/**
 * Searches levels one after another, each call the next of them: answers its best option up to `last` (null: to the end), or null.
 * Each part is searched no further than the best so far; small ones first, for what they find narrows the search of the large ones.
 */
export function levelSearch(levels: readonly Level[], manner: Manner): (level: Level, last: Place | null) => Entry | null {
  // a join takes about the square root of its cells
  const effort = (part: Space): number => Math.sqrt(cellsIn(part));
  const total = levels.flat().reduce((sum, part) => sum + effort(part), 0);
  let done = 0;
  return (level, last) => {
    let best: Entry | null = null;
    for (const part of [...level].sort((a, b) => cellsIn(a) - cellsIn(b))) {
      const share = effort(part) / total;
      best = better(part, best, last, { ...manner, hooks: partOf(manner.hooks, done, share) });
      done += share;
    }
    return best;
  };
}

function better(part: Space, best: Entry | null, last: Place | null, { rules, hooks }: Manner): Entry | null {
  const [entry] = firstEntries(part, rules, 1, best ? placeOf(best) : last, hooks);
  if (!entry || !best) return entry ?? best;
  return (comparePlaces(placeOf(entry), placeOf(best)) || compareTied(part, entry, best)) < 0 ? entry : best;
}
