import type { Fraction } from '../ratio.ts';
import type { Cell, CellReader } from './cell.ts';
import { exactY, type Space } from './space.ts';
import { comparePlaces, holds, type Place } from './window.ts';

/** One exact y with the cells that make it. */
export interface Ratio {
  readonly log: number;
  /** numerator and denominator, not reduced, modulo 2^32 */
  readonly top: number;
  readonly bottom: number;
  /** 1 + off-ratio, exact */
  readonly y: () => Fraction;
  readonly inside: boolean;
  /** |e| as a float: decides the order unless two are very near */
  readonly off: number;
  readonly place: () => Place;
  /** how many options the cells stand for, before any rule across stages */
  options: number;
  /** null: heavy, so many options that its cells are not kept but found again by a join of their own */
  cells: Cell[] | null;
}

/**
 * Whether a cell makes the ratio; decided on integers.
 *
 * N/D = N'/D' needs N*D' = D*N', also modulo 2^32. The computed logarithms of equal ratios agree within two slacks; where they do,
 * the true ones agree within four, so |N*D' - D*N'| < 5 * slack * max N * max D. While that is under 2^31 (`residuesDecide`)
 * equal residues prove equality.
 */
export function makes(space: Space, ratio: Ratio, reader: CellReader, table: number, stream: number, log: number): boolean {
  if (Math.abs(ratio.log - log) > 2 * space.slack) return false;
  if (Math.imul(ratio.top, reader.bottom(table, stream)) !== Math.imul(ratio.bottom, reader.top(table, stream))) return false;
  return space.residuesDecide || ratio.y().equals(exactY(space, reader.groups(table, stream)));
}

/** The cells gathered by exact ratio, in no order. */
export function distinctRatios(space: Space, reader: CellReader, cells: readonly Cell[]): Ratio[] {
  const ratios: Ratio[] = [];
  // in the order of the logarithms equal ratios lie within two slacks: only the last few can be met again
  let recent: Ratio[] = [];
  for (const cell of [...cells].sort((a, b) => a.log - b.log)) {
    const { table, stream, log } = cell;
    recent = recent.filter((known) => log - known.log <= 2 * space.slack);
    let ratio = recent.find((known) => makes(space, known, reader, table, stream, log));
    if (!ratio) {
      ratio = ratioOf(space, reader, cell);
      ratios.push(ratio);
      recent.push(ratio);
    }
    ratio.options += reader.options(table, stream);
    ratio.cells?.push(cell);
  }
  return ratios;
}

function ratioOf(space: Space, reader: CellReader, { table, stream, log }: Cell): Ratio {
  const groups = reader.groups(table, stream).slice();
  let exact: Fraction | null = null;
  const y = (): Fraction => {
    exact ??= exactY(space, groups);
    return exact;
  };
  const inside = holds(space.inside, log, space.slack, y);
  const place = (): Place => ({ inside, off: y().sub(1).abs() });
  const off = Math.abs(Math.expm1(log));
  return { log, top: reader.top(table, stream), bottom: reader.bottom(table, stream), y, inside, off, place, options: 0, cells: [] };
}

/** The order of the ranking among ratios, exact: floats decide only where their own error cannot. */
export function compareRatios(space: Space, a: Ratio, b: Ratio): number {
  if (a.inside !== b.inside) return a.inside ? -1 : 1;
  // d|e| = y * d(ln y), with y <= 1 + |e|, is at most 1.1 slacks * (1 + |e|) for each of the two
  if (Math.abs(a.off - b.off) > 4 * space.slack * (1 + Math.max(a.off, b.off))) return a.off - b.off;
  return comparePlaces(a.place(), b.place());
}
