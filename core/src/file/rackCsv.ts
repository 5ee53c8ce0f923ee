import * as v from 'valibot';
import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import { type EntryText, readCount } from '../entry.ts';
import type { Say } from '../format.ts';
import type { TypedQuantity } from '../reading.ts';
import { readEntry } from '../units.ts';
import { quoted } from '../visible.ts';
import { type CsvTrouble, readCsv, writeCsv } from './csv.ts';
import { length as lengthInFile } from './fields.ts';
import { freshId } from './freshId.ts';
import type { PieceRow } from './rack.ts';
import { type Columns, HEADS, readHead, SIZES } from './rackColumns.ts';
import { spreadsheetText, textOfCell } from './spreadsheet.ts';

export { LARGEST_CSV_BYTES } from './csv.ts';

export type RackCsv =
  | {
      readonly ok: true;
      readonly rows: readonly PieceRow[] /** Heads of columns that are not known and were left out. */;
      readonly ignored: readonly string[];
    }
  | { readonly ok: false; readonly troubles: readonly [CsvTrouble, ...CsvTrouble[]] };

const MOST_CSV_ROWS = 500;
const MOST_PIECES = 10_000;
const LONGEST_TEXT = 200;

/**
 * The rack as a table for spreadsheets: UTF-8 with its mark, numbers and units as typed, one cell for each.
 *
 * @param rows     of the rack
 * @param decimal  of the shop: where a comma is the decimal sign, spreadsheets expect semicolons between cells
 * @returns the text of the file; `readRackCsv` reads it back to the same rows
 * @source our choice
 * @example writeRackCsv([], '.')  // '\uFEFFchain number,teeth,bore,keyway,quantity,part number,place\r\n'
 */
export function writeRackCsv(rows: readonly PieceRow[], decimal: Say['decimal']): string {
  const length = (typed: TypedQuantity | undefined) => (typed === undefined ? '' : `${typed.value} ${typed.unit}`);
  const cells = rows.map((row) => [
    ...SIZES.map(({ kind }) => (row.kind === kind ? spreadsheetText(row.size) : '')),
    String(row.teeth),
    spreadsheetText(length(row.bore)),
    spreadsheetText(length(row.keyway)),
    String(row.quantity),
    spreadsheetText(row.part ?? ''),
    spreadsheetText(row.place ?? ''),
  ]);
  return writeCsv([HEADS, ...cells], decimal);
}

/**
 * Reads a rack from a table: all of it, or nothing and every line that stands against it.
 *
 * @param text  of the file: commas, semicolons or tabs between cells, columns in any order; a length carries its unit, or its
 *   column does (`bore mm`); `chain number`, `teeth` and `quantity` must be there
 * @source our choice
 * @example readRackCsv('chain;teeth;quantity\n40;12;1')  // one row
 */
export function readRackCsv(text: string): RackCsv {
  const table = readCsv(text);
  if (table.troubles.length > 0) return refused(table.troubles);
  const [first, ...body] = table.rows;
  const head = readHead(first?.cells ?? []);
  const troubles = head.troubles.map((what) => ({ line: first?.line ?? 1, what }));
  const beyond = body[MOST_CSV_ROWS];
  if (beyond !== undefined) troubles.push({ line: beyond.line, what: en`There are more than ${MOST_CSV_ROWS} rows.` });
  if (troubles.length > 0) return refused(troubles);
  const rows: PieceRow[] = [];
  for (const { cells, line } of body) {
    const row = readRow(head.columns, cells, freshId(rows, 'piece'));
    if (row.ok) rows.push(row.value);
    else troubles.push(...row.troubles.map((what) => ({ line, what })));
  }
  return troubles.length > 0 ? refused(troubles) : { ok: true, rows, ignored: head.ignored };
}

function refused(troubles: readonly CsvTrouble[]): RackCsv {
  const [first, ...rest] = troubles;
  if (first === undefined) throw new RangeError('refused: nothing is wrong with the table');
  return { ok: false, troubles: [first, ...rest] };
}

function readRow(
  columns: Columns,
  cells: readonly string[],
  id: string,
): { readonly ok: true; readonly value: PieceRow } | { readonly ok: false; readonly troubles: readonly string[] } {
  const troubles: string[] = [];
  const cell = (name: string) => textOfCell(cells[columns.get(name)?.at ?? -1] ?? '');
  const of = SIZES.find(({ head }) => cell(head).trim() !== '');
  const size = of === undefined ? null : driveKind(of.kind).size(cell(of.head));
  if (of === undefined) troubles.push(en`There is no ${SIZES.map(({ head }) => head).join(en` or `)}.`);
  else if (size === null)
    troubles.push(
      en`${quoted(cell(of.head))} is not a ${driveKind(of.kind).words.size} known here (${driveKind(of.kind).sizes.join(', ')}).`,
    );
  const count = (name: string, least: number, most: number) => {
    const read = readCount(cell(name), least, most);
    if (!read.ok) troubles.push(`${name}: ${read.expected}`);
    else if (read.value === undefined) troubles.push(en`${name}: nothing is given.`);
    else return read.value;
    return 0;
  };
  const length = (name: 'bore' | 'keyway') => {
    const read = readLength(cell(name), columns.get(name)?.unit ?? null);
    if (read.ok) return read.value === undefined ? {} : { [name]: read.value };
    troubles.push(`${name}: ${read.expected}`);
    return {};
  };
  const words = (name: string, key: 'part' | 'place') => {
    const text = cell(name);
    if (text.length > LONGEST_TEXT) troubles.push(en`${name}: ${text.length} characters, more than ${LONGEST_TEXT}.`);
    return text === '' ? {} : { [key]: text };
  };
  const value: PieceRow = {
    id,
    kind: of?.kind ?? '',
    size: size ?? '',
    teeth: count('teeth', 5, 400),
    ...length('bore'),
    ...length('keyway'),
    quantity: count('quantity', 0, MOST_PIECES),
    ...words('part number', 'part'),
    ...words('place', 'place'),
  };
  return troubles.length === 0 ? { ok: true, value } : { ok: false, troubles };
}

function readLength(text: string, unit: string | null): EntryText<TypedQuantity> {
  if (text.trim() === '') return { ok: true, value: undefined };
  const read = readEntry('length', text);
  if (!read.ok) return read;
  const named = read.value.unit ?? unit;
  if (named === null)
    return { ok: false, expected: en`${quoted(text)} has no unit: write ${text} ${'mm'}, or the unit in the head, as "${'bore mm'}".` };
  const value = { value: read.value.value, unit: named };
  const [issue] = v.safeParse(lengthInFile, value).issues ?? [];
  return issue === undefined ? { ok: true, value } : { ok: false, expected: `${issue.message}.` };
}
