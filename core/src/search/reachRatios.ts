import { cellReader } from './cell.ts';
import { distinctRatios, type Ratio } from './distinct.ts';
import { expander } from './expand.ts';
import { join } from './join.ts';
import { cellsIn } from './levels.ts';
import type { Pace } from './pace.ts';
import type { Sides } from './sides.ts';
import type { Space } from './space.ts';
import type { Admit } from './tiedOptions.ts';

/** Cells gathered at a time, on average. */
const CELLS_PER_SLICE = 2 ** 16;

/** The ratios of a space whose computed logarithm lies between two bounds, ascending and each once, whatever the rules across stages say. */
export function* ratiosBetween(space: Space, sides: Sides, pace: Pace, low: number, high: number): Generator<Ratio> {
  const reader = cellReader(space, sides);
  const [lowest, highest] = reachOfLogs(space);
  const from = Math.max(low, lowest - space.slack);
  const to = Math.min(high, highest + space.slack);
  if (from > to) return;
  const share = (to - from) / (highest - lowest + 2 * space.slack);
  const slices = Math.max(1, Math.ceil((share * cellsIn(space)) / CELLS_PER_SLICE));
  const bound = (i: number): number => (i === slices ? to : from + ((to - from) * i) / slices);
  const pass = pace.pass();
  for (let i = 0; i < slices; i++) {
    pass(i / slices);
    // all cells of a ratio lie within two slacks, so it is complete here if its lowest lies in the slice, and it does in one slice only
    const span = { low: bound(i) - 3 * space.slack, high: bound(i + 1) + 3 * space.slack };
    const cells: { table: number; stream: number; log: number }[] = [];
    const visit = (table: number, stream: number, log: number): boolean => {
      cells.push({ table, stream, log });
      return false;
    };
    join(space, sides, span, visit, pace.check);
    const last = i === slices - 1;
    const own = distinctRatios(space, reader, cells).filter(({ log }) => log >= bound(i) && (log < bound(i + 1) || last));
    yield* own.sort((a, b) => compareUp(space, a, b));
  }
  pass(1);
}

/** The least and the greatest computed logarithm of y. */
export function reachOfLogs({ factors, logConstant }: Space): readonly [low: number, high: number] {
  return [
    factors.reduce((sum, { log }) => sum + (log[0] ?? 0), logConstant),
    factors.reduce((sum, { log }) => sum + (log.at(-1) ?? 0), logConstant),
  ];
}

/** Floats decide only where their own error cannot. */
function compareUp({ slack }: Space, a: Ratio, b: Ratio): number {
  return Math.abs(a.log - b.log) > 4 * slack ? a.log - b.log : a.y().compare(b.y());
}

/** Asks of a ratio whether the rules across stages let any of its options through. */
export function buildableOf(space: Space, sides: Sides, admit: Admit): (ratio: Ratio) => boolean {
  const reader = cellReader(space, sides);
  let found = false;
  const expand = expander(space, {
    // fewer than none: once one is found no more are wanted
    mostChanged: () => (found ? -1 : Infinity),
    take: ({ pump, pairs }) => {
      found ||= admit({ pump, pairs: pairs.slice() }) !== null;
    },
  });
  return ({ cells }) => {
    found = false;
    for (const { table, stream } of cells ?? []) {
      reader.every(table, stream, (groups) => {
        if (!found) expand(groups);
      });
      if (found) return true;
    }
    return false;
  };
}
