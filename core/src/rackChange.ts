import type { DriveKind } from './drives/driveKind.ts';
import { freshId } from './file/freshId.ts';
import type { PieceRow } from './file/rack.ts';
import type { RackCount } from './rackLine.ts';
import type { TypedQuantity } from './reading.ts';

/** What a rack becomes by a line: its rows, and in how many the change shows. */
export interface RackChange {
  readonly rows: readonly PieceRow[];
  readonly added: number;
  /** Rows that the line no longer holds. */
  readonly gone: readonly PieceRow[];
}

/**
 * The rack after a line: the line is all there is of the sizes it names, other sizes stay as they are.
 *
 * Rows that stay keep bore, part number and place. Where several rows share a tooth count, the first takes what is added and
 * gives what is taken. Rows without a piece left stay, as their place does.
 *
 * @param rows    of the rack now
 * @param counts  as read from the line
 * @param kind    of the line
 * @param bore    of new rows; undefined where it is not given
 * @source our choice
 * @example applyRackLine([], counts, chain, { value: '25', unit: 'mm' }).added  // 17
 */
export function applyRackLine(
  rows: readonly PieceRow[],
  counts: readonly RackCount[],
  kind: DriveKind,
  bore: TypedQuantity | undefined,
): RackChange {
  const named = (row: PieceRow) => row.kind === kind.kind && counts.some(({ size }) => kind.sameSize(size, row.size));
  const matches = (row: PieceRow, count: RackCount) =>
    row.kind === kind.kind && row.teeth === count.teeth && kind.sameSize(row.size, count.size);
  const gone = rows.filter((row) => named(row) && row.quantity > 0 && !counts.some((count) => matches(row, count)));
  const kept = rows.filter((row) => !gone.includes(row)).map((row) => ({ ...row }));
  let added = 0;
  for (const count of counts) {
    const same = kept.filter((row) => matches(row, count));
    if (same.length > 0) {
      share(same, count.quantity);
      continue;
    }
    added += 1;
    const id = freshId([...rows, ...kept], 'piece');
    const after = kept.findIndex((row) => row.kind === kind.kind && kind.sameSize(row.size, count.size) && row.teeth > count.teeth);
    const fresh: PieceRow = { id, kind: kind.kind, ...count, ...(bore === undefined ? {} : { bore }) };
    kept.splice(after < 0 ? kept.length : after, 0, fresh);
  }
  return { rows: kept, added, gone };
}

function share(rows: readonly PieceRow[], quantity: number): void {
  let change = quantity - rows.reduce((sum, row) => sum + row.quantity, 0);
  for (const row of rows) {
    const before = row.quantity;
    row.quantity = Math.max(0, before + change);
    change -= row.quantity - before;
  }
}
