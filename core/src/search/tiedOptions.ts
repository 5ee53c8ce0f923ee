import { cellReader } from './cell.ts';
import type { Run } from './collect.ts';
import { makes, type Ratio } from './distinct.ts';
import { expander } from './expand.ts';
import { join } from './join.ts';
import { byPumps, levelsOf } from './levels.ts';
import type { Pace } from './pace.ts';
import { type Candidate, copyOf } from './problem.ts';
import { type Entry, type Shortlist, shortlist } from './shortlist.ts';
import { splitSides } from './sides.ts';
import type { Space } from './space.ts';

export type Admit = (candidate: Candidate) => number | null;

/** The first `wanted` options of a tie, in order. */
export function tiedOptions(run: Run, tie: readonly Ratio[], wanted: number, admit: Admit): readonly Entry[] {
  const { space, sides, pace } = run;
  const list = shortlist(space, wanted);
  const reader = cellReader(space, sides);
  for (const ratio of tie) {
    const offer = offerTo(list, space, ratio, admit);
    for (const { table, stream } of ratio.cells ?? []) reader.every(table, stream, offer);
  }
  const heavy = tie.filter(({ cells }) => cells === null);
  if (heavy.length === 0) return list.entries();
  for (const [changed, parts] of levelsOf(space).entries()) {
    if (changed > list.mostChanged()) break;
    for (const part of parts) for (const ratio of heavy) searchPart(part, ratio, list, admit, pace);
  }
  return list.entries();
}

/**
 * Offers the options of a part that make the ratio: there may be millions, so none is kept but in the shortlist.
 * The order begins with the pumps, so those that come first are tried first: they may leave nothing for the others.
 */
export function searchPart(part: Space, ratio: Ratio, list: Shortlist, admit: Admit, pace: Pace): void {
  for (const piece of byPumps(part)) {
    if (list.hopelessPart(piece)) return;
    searchPiece(piece, ratio, list, admit, pace);
  }
}

function searchPiece(part: Space, ratio: Ratio, list: Shortlist, admit: Admit, pace: Pace): void {
  const sides = splitSides(part);
  const reader = cellReader(part, sides);
  const offer = offerTo(list, part, ratio, admit);
  const visit = (table: number, stream: number, log: number): boolean => {
    if (makes(part, ratio, reader, table, stream, log)) reader.every(table, stream, offer);
    return false;
  };
  join(part, sides, { low: ratio.log - 2 * part.slack, high: ratio.log + 2 * part.slack }, visit, pace.check);
}

/** Offers every option of one way to make the ratio. */
export function offerTo(list: Shortlist, space: Space, ratio: Pick<Ratio, 'y' | 'inside'>, admit: Admit): (groups: Int32Array) => void {
  const y = ratio.y();
  const { inside } = ratio;
  const take = (current: Candidate, changed: number): void => {
    if (list.hopeless(current, changed)) return;
    const { pump, pairs } = copyOf(current);
    const purchases = admit({ pump, pairs });
    if (purchases !== null) list.add({ pump, pairs, y, inside, changed, purchases });
  };
  const expand = expander(space, { mostChanged: list.mostChanged, take });
  return (groups) => {
    if (!list.hopelessCell(space, groups)) expand(groups);
  };
}
