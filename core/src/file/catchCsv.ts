import * as v from 'valibot';
import { en } from '../en.ts';
import type { Say } from '../format.ts';
import { SIDES, type SideName } from '../plan.ts';
import type { TypedQuantity } from '../reading.ts';
import { readEntry } from '../units.ts';
import { quoted } from '../visible.ts';
import { CAUGHT, type CatchColumn, type CatchColumns, readCatchHead } from './catchColumns.ts';
import { type CsvRow, readCsv, writeCsv } from './csv.ts';
import { type CatchRow, type CaughtRow, catchRow, MOST_CATCHES } from './ratioCheckRow.ts';
import { spreadsheetText, textOfCell } from './spreadsheet.ts';

/** What is wrong with a table of catches; the column is null where the line or the table is meant. */
export interface CatchFault {
  readonly line: number;
  readonly column: string | null;
  readonly what: string;
}

export type CatchCsv =
  | {
      readonly ok: true;
      readonly catches: readonly [CatchRow, ...CatchRow[]] /** Heads of columns that are not known and were left out. */;
      readonly ignored: readonly string[];
    }
  | { readonly ok: false; readonly faults: readonly [CatchFault, ...CatchFault[]] };

/**
 * Reads catches from a table: all of it, or nothing and every fault with its line and column.
 *
 * @param text  of the file: commas, semicolons or tabs between cells, columns in any order: gross, tare, net and volume of A and of B,
 *   `left out` with the reason; a unit stands in the cell or in its head (`A net g`)
 * @source our choice
 * @example readCatchCsv('A net g;B net g\n244,6;101,9').catches[0].A.net  // { value: '244,6', unit: 'g' }
 */
export function readCatchCsv(text: string): CatchCsv {
  const table = readCsv(text);
  const [first, ...body] = table.rows;
  const head = readCatchHead(first?.cells ?? []);
  const faults: CatchFault[] = [
    ...table.troubles.map(({ line, what }) => ({ line, column: null, what })),
    ...(table.troubles.length > 0 ? [] : head.troubles).map((what) => ({ line: first?.line ?? 1, column: null, what })),
  ];
  const rows = body.filter(({ cells }) => [...head.columns.values()].some(({ at }) => (cells[at] ?? '').trim() !== ''));
  const beyond = rows[MOST_CATCHES];
  if (beyond !== undefined)
    faults.push({
      line: beyond.line,
      column: null,
      what: en`There are ${rows.length} catches; a ratio check has at most ${MOST_CATCHES}.`,
    });
  if (faults.length === 0 && rows.length === 0)
    faults.push({ line: first?.line ?? 1, column: null, what: en`There is no catch under the head.` });
  const catches = faults.length > 0 ? [] : rows.map((row) => readRow(head.columns, row, first?.cells.length ?? 0, faults));
  const [worst, ...others] = faults;
  if (worst !== undefined) return { ok: false, faults: [worst, ...others] };
  const [one, ...rest] = catches;
  if (one === undefined) throw new RangeError('readCatchCsv: neither a catch nor a fault');
  return { ok: true, catches: [one, ...rest], ignored: head.ignored };
}

function readRow(columns: CatchColumns, { cells, line }: CsvRow, columnCount: number, faults: CatchFault[]): CatchRow {
  const fault = (column: string | null, what: string) => void faults.push({ line, column, what });
  const beyond = cells.slice(columnCount).find((cell) => cell.trim() !== '');
  if (beyond !== undefined) fault(null, en`${quoted(beyond.trim())} stands beyond the ${columnCount} columns of the head.`);
  const text = (name: CatchColumn) => textOfCell((cells[columns.get(name)?.at ?? -1] ?? '').trim()).trim();
  const side = (name: SideName): CaughtRow =>
    Object.fromEntries(
      CAUGHT.flatMap(({ key, dimension, example }) => {
        const column: CatchColumn = `${name} ${key}`;
        const cell = text(column);
        if (cell === '') return [];
        const read = readEntry(dimension, cell);
        const unit = read.ok ? (read.value.unit ?? columns.get(column)?.unit ?? null) : null;
        if (!read.ok) fault(column, read.expected);
        else if (unit === null)
          fault(column, en`${quoted(cell)} has no unit: write ${cell} ${example}, or the unit in the head, as "${column} ${example}".`);
        else return [[key, { value: read.value.value, unit } satisfies TypedQuantity] as const];
        return [];
      }),
    );
  const leftOut = text('left out');
  const row: CatchRow = { A: side('A'), B: side('B'), ...(leftOut !== '' && { leftOut }) };
  for (const { path, message } of v.safeParse(catchRow, row).issues ?? []) {
    const [place, key] = (path ?? []).map(({ key }) => String(key));
    fault(place === 'leftOut' ? 'left out' : `${place} ${key}`, `${message}.`);
  }
  return row;
}

/**
 * Catches as a table for spreadsheets that `readCatchCsv` reads back to the same amounts: numbers with the decimal sign of the shop, the
 * unit in the head where a column has one only, in its cells otherwise.
 *
 * @source our choice
 * @example writeCatchCsv([{ A: { net: 244.6 g }, B: { net: 101.9 g } }], '.')  // '\uFEFFcatch,A net g,B net g\r\n1,244.6,101.9\r\n'
 */
export function writeCatchCsv(catches: readonly CatchRow[], decimal: Say['decimal']): string {
  const columns = SIDES.flatMap((side) => CAUGHT.map(({ key }) => ({ side, key }))).flatMap(({ side, key }) => {
    const of = (row: CatchRow) => row[side][key];
    const units = new Set(catches.flatMap((row) => of(row)?.unit ?? []));
    if (units.size === 0) return [];
    const [unit = ''] = units.size === 1 ? units : [];
    return [{ head: `${side} ${key} ${unit}`.trimEnd(), cell: (row: CatchRow) => cellOf(of(row), unit, decimal) }];
  });
  const leftOut = catches.some((row) => row.leftOut !== undefined);
  return writeCsv(
    [
      ['catch', ...columns.map(({ head }) => head), ...(leftOut ? ['left out'] : [])],
      ...catches.map((row, index) => [
        String(index + 1),
        ...columns.map(({ cell }) => cell(row)),
        ...(leftOut ? [spreadsheetText(row.leftOut ?? '')] : []),
      ]),
    ],
    decimal,
  );
}

/** A plain decimal is a number to a spreadsheet once it has its sign; anything else is kept text. */
function cellOf(typed: TypedQuantity | undefined, unit: string, decimal: Say['decimal']): string {
  if (typed === undefined) return '';
  const value = typed.value.trim();
  const cell = typed.unit === unit ? value : `${value} ${typed.unit}`;
  return /^\d+(?:[.,]\d+)?$/.test(cell) ? cell.replace(/[.,]/, decimal) : spreadsheetText(cell);
}
