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
  /** how many options the first `counted` cells stand for, before any rule across stages */
  options: number;
  counted: number;
  /** whether floats tell it apart from every other ratio, see `isAlone`; asked only of what is met very often */
  alone: boolean;
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
  if (ratio.alone) return true;
  const groups = reader.groups(table, stream);
  if (Math.imul(ratio.top, residueOf(space, groups, 'bottom')) !== Math.imul(ratio.bottom, residueOf(space, groups, 'top'))) return false;
  return space.residuesDecide || ratio.y().equals(exactY(space, groups));
}

/** Numerator or denominator of the product, not reduced, modulo 2^32. */
function residueOf({ factors }: Space, groups: Int32Array, part: 'top' | 'bottom'): number {
  let residue = 1;
  for (let f = 0; f < factors.length; f++) residue = Math.imul(residue, factors[f]?.[part][groups[f] ?? 0] ?? 0);
  return residue;
}

const OFTEN = 4;

/** The cells gathered by exact ratio, in no order. */
export function distinctRatios(space: Space, reader: CellReader, cells: readonly Cell[]): Ratio[] {
  const ratios: Ratio[] = [];
  // in the order of the logarithms equal ratios lie within two slacks: only the last few can be met again
  let recent = 0;
  for (const cell of [...cells].sort((a, b) => a.log - b.log)) {
    const { table, stream, log } = cell;
    while (recent < ratios.length && log - (ratios[recent]?.log ?? 0) > 2 * space.slack) recent += 1;
    let ratio: Ratio | undefined;
    for (let r = recent; r < ratios.length && ratio === undefined; r++) {
      const known = ratios[r];
      if (known && makes(space, known, reader, table, stream, log)) ratio = known;
    }
    if (!ratio) {
      ratio = ratioOf(space, reader, cell);
      ratios.push(ratio);
    }
    // once it is met again and again, it pays to know whether floats are enough
    if (ratio.cells?.push(cell) === OFTEN) ratio.alone = isAlone(space, ratio);
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
  return {
    log,
    top: residueOf(space, groups, 'top'),
    bottom: residueOf(space, groups, 'bottom'),
    y,
    inside,
    off,
    place,
    options: 0,
    counted: 0,
    alone: false,
    cells: [],
  };
}

/**
 * Whether no other ratio lies within what floats cannot tell.
 *
 * Two different ratios N/D and n/d, the constant left out, are at least 1/(N * d) and 1/(n * D) of themselves apart;
 * computed logarithms that agree within two slacks stand for true ones that agree within four.
 */
export function isAlone({ constant, mostNumerator, mostDenominator, slack }: Space, { y }: Ratio): boolean {
  const { n, d } = y().div(constant);
  return Math.min(mostNumerator * Number(d), mostDenominator * Number(n)) * 5 * slack < 1;
}

/** How many options the cells stand for, before any rule across stages; of a heavy ratio fewer than that. */
export function optionCount(ratio: Ratio, reader: CellReader): number {
  const { cells } = ratio;
  for (; cells && ratio.counted < cells.length; ratio.counted++) {
    const cell = cells[ratio.counted];
    if (cell) ratio.options += reader.options(cell.table, cell.stream);
  }
  return ratio.options;
}

/** The order of the ranking among ratios, exact: floats decide only where their own error cannot. */
export function compareRatios(space: Space, a: Ratio, b: Ratio): number {
  if (a.inside !== b.inside) return a.inside ? -1 : 1;
  // d|e| = y * d(ln y), with y <= 1 + |e|, is at most 1.1 slacks * (1 + |e|) for each of the two
  if (Math.abs(a.off - b.off) > 4 * space.slack * (1 + Math.max(a.off, b.off))) return a.off - b.off;
  return comparePlaces(a.place(), b.place());
}
