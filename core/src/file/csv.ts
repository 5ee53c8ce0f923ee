/// <reference path="./papaparse.d.ts" />

import papaparse from 'papaparse/papaparse.js';
import { en } from '../en.ts';
import type { Say } from '../format.ts';

/** One line that could not be read, counted from 1 with the head. */
export interface CsvTrouble {
  readonly line: number;
  readonly what: string;
}

/** A row of a table, with the line of the text it begins on, counted from 1. */
export interface CsvRow {
  readonly cells: readonly string[];
  readonly line: number;
}

/** The rows that hold anything, and what is wrong with the table as a table. */
export interface CsvTable {
  readonly rows: readonly CsvRow[];
  readonly troubles: readonly CsvTrouble[];
  /** Between cells. */
  readonly delimiter: string;
}

export const LARGEST_CSV_BYTES = 1_000_000;
const MOST_TROUBLES = 100;

const MARK = '\uFEFF';

/**
 * A table for spreadsheets: UTF-8 with its mark; where a comma is the decimal sign, they expect semicolons between cells.
 *
 * @param rows     cells as they are to be read again, the head first
 * @param decimal  of the shop
 * @returns the text of the file; `readCsv` reads it back to the same rows
 * @source RFC 4180 for quotes and line ends; the delimiter is common practice, no source
 * @example writeCsv([['name', 'ratio'], ['E12', '100:38.9']], '.')  // '\uFEFFname,ratio\r\nE12,100:38.9\r\n'
 */
export const writeCsv = (rows: readonly (readonly string[])[], decimal: Say['decimal']): string =>
  `${MARK}${csvLines(rows, decimal === ',' ? ';' : ',')}\r\n`;

/** Rows with the delimiter named, as they go through the clipboard or back into a box. */
export const csvLines = (rows: readonly (readonly string[])[], delimiter: string): string =>
  papaparse.unparse(rows, { delimiter, newline: '\r\n' });

/**
 * The rows of a table, blank ones left out.
 *
 * @param text  of a file or out of a spreadsheet: tabs, semicolons or commas between cells
 * @source our choice: where the first row holds a tab it parts the cells, else a semicolon, else a comma; what stands in quotation marks does not count
 * @example readCsv('name;ratio\nE12;100:38,9').rows[1]  // { cells: ['E12', '100:38,9'], line: 2 }
 */
export function readCsv(text: string): CsvTable {
  const plain = text.startsWith(MARK) ? text.slice(1) : text;
  const delimiter = delimiterOf(plain);
  if (text.includes('\uFFFD'))
    return { rows: [], troubles: [{ line: 1, what: en`The file is not UTF-8 text: save it as "CSV UTF-8".` }], delimiter };
  const { data, errors } = papaparse.parse(plain, { delimiter, skipEmptyLines: false });
  const rows = numbered(data);
  // A file that is no table has one at every quotation mark.
  const troubles = errors.slice(0, MOST_TROUBLES).map(({ row = 0, message }) => ({ line: rows[row]?.line ?? 1, what: `${message}.` }));
  return { rows: rows.filter(({ cells }) => cells.some((cell) => cell.trim() !== '')), troubles, delimiter };
}

function delimiterOf(text: string): string {
  const unquoted = text.replace(/(^|[\t;,\r\n])"(?:[^"]|"")*"/g, '$1quoted');
  const first = unquoted.split(/[\r\n]/).find((line) => /[^\s;,]/.test(line)) ?? '';
  return ['\t', ';'].find((mark) => first.includes(mark)) ?? ',';
}

/** A cell may hold line ends, so rows are counted by them. */
function numbered(data: readonly (readonly string[])[]): readonly CsvRow[] {
  let next = 1;
  return data.map((cells) => {
    const line = next;
    next += 1 + cells.reduce((sum, cell) => sum + cell.split('\n').length - 1, 0);
    return { cells, line };
  });
}
