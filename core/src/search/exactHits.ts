import { ONE, ZERO } from '../ratio.ts';
import { isAlone, type Ratio } from './distinct.ts';
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
  if (!space.mayBeExact()) return null;
  const { constant } = space;
  const exactly: Ratio = {
    log: 0,
    top: residue(constant.d),
    bottom: residue(constant.n),
    y: () => ONE,
    inside: true,
    off: 0,
    place: () => ({ inside: true, off: ZERO }),
    options: 0,
    counted: 0,
    alone: false,
    cells: null,
  };
  exactly.alone = isAlone(space, exactly);
  const list = shortlist(space, wanted);
  let cost = 0;
  for (const [changed, parts] of levelsOf(space).entries()) {
    if (changed > list.mostChanged()) break;
    cost += parts.reduce((sum, part) => sum + bestSplit(part).cost, 0);
    if (cost > MOST_COST) return null;
    for (const part of parts) searchPart(part, exactly, list, admit, pace);
  }
  const entries = list.entries();
  return entries.length === wanted ? entries : null;
}
