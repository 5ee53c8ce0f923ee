import { gridFor, positionFor, positionsOn, sift } from './grid.ts';
import type { Sides } from './sides.ts';
import { firstAbove } from './sorted.ts';
import type { Space } from './space.ts';

/** The logarithms of y that are looked for; may be narrowed while the join runs. */
export interface Span {
  low: number;
  high: number;
}

/** Receives a cell and its computed ln y; answers true to end the join there. Of cells that differ in order alone it sees one. */
export type Visit = (table: number, stream: number, log: number) => boolean;

/** Stream products sifted at a time. */
const BLOCK = 2048;

/**
 * Runs through every cell whose true ln y lies in the span: the computed one then lies in it widened by `slack` at both ends.
 *
 * Every stream product is sifted through the grid first, which lets through whatever may have a partner in the table, and one in sixty
 * that has none; only these are looked up. The grid is a map of the span as it is at the start, so narrowing it later loses nothing.
 */
export function join({ logConstant, slack }: Space, sides: Sides, span: Span, visit: Visit, pass: (share: number) => void): void {
  const { table, alike } = sides;
  const outer = sides.outer.log;
  const inner = sides.inner.log;
  const look = lookUp(sides, span, slack, visit);
  sides.grid = gridFor(table, span.high - span.low + 2 * slack, sides.grid);
  const { grid } = sides;
  const positions = grid && positionsOn(grid, inner);
  const middle = (span.low + span.high) / 2;
  const found = new Int32Array(grid ? BLOCK : 0);
  for (let o = 0; o < outer.length; o++) {
    pass(o / outer.length);
    const base = logConstant + (outer[o] ?? 0);
    // the table holds no partner for what lies beyond; one slack more than inside covers the rounding of these bounds
    const lowest = firstAbove(inner, span.low - base - table.high - 2 * slack);
    // of what may change places only one order is looked for: the inner product is no less than the outer, and no more than the table's
    const highest = alike.tableInner ? (span.high - base) / 2 + slack : Infinity;
    const end = firstAbove(inner, Math.min(span.high - base - table.low + 2 * slack, highest));
    for (let from = alike.outerInner ? Math.max(o, lowest) : lowest; from < end; from += BLOCK) {
      const to = Math.min(from + BLOCK, end);
      if (grid === null || positions === null) {
        for (let i = from; i < to; i++) if (look(o, base, i)) return;
        continue;
      }
      const count = sift(grid, positions, positionFor(grid, table, middle - base), from, to, found);
      for (let k = 0; k < count; k++) if (look(o, base, found[k] ?? 0)) return;
    }
  }
  pass(1);
}

type Look = (outer: number, base: number, inner: number) => boolean;

/** Finds the partners of one stream product in the table. */
function lookUp({ table, inner, alike }: Sides, span: Span, slack: number, visit: Visit): Look {
  const { start, log, low: tableLow, bucketsPerUnit } = table;
  const last = start.length - 2;
  const width = inner.log.length;
  return (o, base, i) => {
    const streamLog = base + (inner.log[i] ?? 0);
    const low = span.low - slack - streamLog;
    const high = span.high + slack - streamLog;
    // the entries' buckets come from the same monotone expression, so that no entry from low to high lies outside these
    const from = Math.max(0, Math.min(last, (low - tableLow) * bucketsPerUnit)) | 0;
    const to = Math.max(0, Math.min(last, (high - tableLow) * bucketsPerUnit)) | 0;
    const stop = start[to + 1] ?? 0;
    for (let k = start[from] ?? 0; k < stop; k++) {
      const entry = log[k] ?? 0;
      if (entry < low || entry > high || (alike.tableInner && k < i)) continue;
      if (visit(k, o * width + i, streamLog + entry)) return true;
    }
    return false;
  };
}
