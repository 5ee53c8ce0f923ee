import type { Sides } from './sides.ts';
import type { Space } from './space.ts';

/** The logarithms of y that are looked for; may be narrowed while the join runs. */
export interface Span {
  low: number;
  high: number;
}

/** Receives a cell and its computed ln y; answers true to end the join there. */
export type Visit = (table: number, stream: number, log: number) => boolean;

/** Runs through every cell whose true ln y lies in the span: the computed one then lies in it widened by `slack` at both ends. */
export function join({ logConstant, slack }: Space, sides: Sides, span: Span, visit: Visit, pass: (share: number) => void): void {
  const { start, log, low: tableLow, high: tableHigh, bucketsPerUnit } = sides.table;
  const outer = sides.outer.log;
  const inner = sides.inner.log;
  const last = start.length - 2;
  for (let o = 0; o < outer.length; o++) {
    pass(o / outer.length);
    const base = logConstant + (outer[o] ?? 0);
    // the table holds no partner for what lies beyond; one slack more than inside covers the rounding of these two bounds
    const end = firstAbove(inner, span.high - base - tableLow + 2 * slack);
    for (let i = firstAbove(inner, span.low - base - tableHigh - 2 * slack); i < end; i++) {
      const streamLog = base + (inner[i] ?? 0);
      const low = span.low - slack - streamLog;
      const high = span.high + slack - streamLog;
      // the entries' buckets come from the same monotone expression, so that no entry from low to high lies outside these
      const from = Math.max(0, Math.min(last, (low - tableLow) * bucketsPerUnit)) | 0;
      const to = Math.max(0, Math.min(last, (high - tableLow) * bucketsPerUnit)) | 0;
      const stop = start[to + 1] ?? 0;
      for (let k = start[from] ?? 0; k < stop; k++) {
        const entry = log[k] ?? 0;
        if (entry >= low && entry <= high && visit(k, o * inner.length + i, streamLog + entry)) return;
      }
    }
  }
  pass(1);
}

function firstAbove(sorted: Float64Array, value: number): number {
  let from = 0;
  let to = sorted.length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((sorted[middle] ?? 0) > value) to = middle;
    else from = middle + 1;
  }
  return from;
}
