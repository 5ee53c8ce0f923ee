import type { Table } from './table.ts';

/** Steps to a cell of the grid; one bit says whether the table holds anything near the cell. */
const STEPS_PER_CELL = 64;
/** What is looked for reaches at most this many steps to either side. */
const REACH = 2;
/**
 * An entry marks every cell within so many steps. Three roundings to whole steps, of the entry, the outer and the inner
 * product, are off by at most half a step each, and the floats they come from by far less than another half.
 */
const MARGIN = REACH + 2;
/** So many cells to an entry leave one stream product in sixty to be looked up, fewer where the table is thin. */
const CELLS_PER_ENTRY = 64;
/** Coarser than this the grid would mark nearly everything. */
const FEWEST_CELLS_PER_ENTRY = 4;
/** Positions are 32 bits. */
const MOST_STEPS = 2 ** 30;

/** A map of where a table has entries, on a grid of logarithms, small enough to stay in the processor's cache. */
export interface Grid {
  /** one bit a cell */
  readonly bits: Int32Array;
  readonly stepsPerUnit: number;
}

/** The finest grid that pays for a span of so many logarithms across; null where none does. */
export function gridFor(table: Table, across: number, known: Grid | null): Grid | null {
  const span = table.high - table.low;
  const entries = table.log.length;
  const finest = Math.min(entries * CELLS_PER_ENTRY * STEPS_PER_CELL, MOST_STEPS) / span;
  const coarsest = (entries * FEWEST_CELLS_PER_ENTRY * STEPS_PER_CELL) / span;
  const stepsPerUnit = Math.min(finest, (2 * REACH) / across);
  if (!(span > 0) || stepsPerUnit < coarsest) return null;
  // a grid made before serves as well unless it is too fine to be safe, or far too coarse
  const suits = known && known.stepsPerUnit <= stepsPerUnit && 2 * known.stepsPerUnit >= stepsPerUnit;
  return suits ? known : gridOf(table, stepsPerUnit);
}

function gridOf({ log, low, high }: Table, stepsPerUnit: number): Grid {
  // one cell to spare at both ends, for what rounding puts just beyond
  const cells = Math.ceil(((high - low) * stepsPerUnit) / STEPS_PER_CELL) + 3;
  const bits = new Int32Array((cells >>> 5) + 1);
  for (let i = 0; i < log.length; i++) {
    // rounded to the nearest step, as all of them are at least 0
    const step = (((log[i] ?? 0) - low) * stepsPerUnit + 0.5 + STEPS_PER_CELL) | 0;
    // twice the margin is less than a cell, so that its two ends lie in all the cells it touches
    const from = step - MARGIN;
    const to = step + MARGIN;
    bits[from >>> 11] = (bits[from >>> 11] ?? 0) | (1 << (from >> 6));
    bits[to >>> 11] = (bits[to >>> 11] ?? 0) | (1 << (to >> 6));
  }
  return { bits, stepsPerUnit };
}

/** Positions of a list of logarithms in steps, modulo 2^32: only their differences count, and those fit. */
export function positionsOn({ stepsPerUnit }: Grid, log: Float64Array): Int32Array {
  const positions = new Int32Array(log.length);
  for (let i = 0; i < log.length; i++) positions[i] = Math.round((log[i] ?? 0) * stepsPerUnit) | 0;
  return positions;
}

/** Where the grid would have an entry that leaves `rest` for the inner product: their position is subtracted from this. */
export function positionFor({ stepsPerUnit }: Grid, { low }: Table, rest: number): number {
  return (Math.round((rest - low) * stepsPerUnit) + STEPS_PER_CELL) | 0;
}

/** Writes those of the positions `from` up to `to` into `found` for which the table may hold a partner, and answers how many. */
export function sift({ bits }: Grid, positions: Int32Array, sought: number, from: number, to: number, found: Int32Array): number {
  let count = 0;
  for (let i = from; i < to; i++) {
    const step = (sought - (positions[i] ?? 0)) | 0;
    if (((bits[step >>> 11] ?? 0) >>> (step >> 6)) & 1) found[count++] = i;
  }
  return count;
}
