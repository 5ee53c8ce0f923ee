import { dayCount } from '../days.ts';
import { writeCsv } from '../file/csv.ts';
import type { RatioCheckRow } from '../file/ratioCheckRow.ts';
import type { ShopFile } from '../file/shopFile.ts';
import { spreadsheetText } from '../file/spreadsheet.ts';
import { fixed, type Say } from '../format.ts';
import { orNull } from '../given.ts';
import type { SideName } from '../plan.ts';
import { type Fraction, ONE, whole } from '../ratio.ts';
import { type Evaluation, evaluate } from './evaluate.ts';
import { readCheck } from './readCheck.ts';
import { readTerms } from './terms.ts';

type Cell = (row: RatioCheckRow, found: Evaluation, decimal: Say['decimal']) => string;

/** Figures of a check; blank where it has none. */
const FIGURES: readonly (readonly [head: string, cell: Cell])[] = [
  ['catches', (_, { counted }) => String(counted.length)],
  ['A per B by weight', (_, found, decimal) => aPerB(weightBPerA(found), decimal)],
  ['A per B by volume', (_, found, decimal) => aPerB(found.volumeBPerA, decimal)],
  ['off-ratio %', (_, found, decimal) => percent(found.offRatio.value, 4, decimal)],
  ['from %', (_, found, decimal) => percent(found.interval?.from.value, 4, decimal)],
  ['to %', (_, found, decimal) => percent(found.interval?.to.value, 4, decimal)],
  ['confidence %', (_, { input }, decimal) => percent(input.confidence, 1, decimal)],
  ['limit low %', (_, { input }, decimal) => percent(input.terms.limits?.low, 4, decimal)],
  ['limit high %', (_, { input }, decimal) => percent(input.terms.limits?.high, 4, decimal)],
  ['verdict', (_, { verdict }) => verdict],
  ['catches agree', (_, { unstable, counted }) => (counted.length < 2 ? '' : unstable.length === 0 ? 'yes' : 'no')],
  ['delivery A %', (_, found, decimal) => percent(found.delivery.A?.share.value, 4, decimal)],
  ['± of A', (_, found, decimal) => plusMinus(found, 'A', decimal)],
  ['delivery B %', (_, found, decimal) => percent(found.delivery.B?.share.value, 4, decimal)],
  ['± of B', (_, found, decimal) => plusMinus(found, 'B', decimal)],
];

const HEADS = ['date', 'check', 'machine', 'material', 'change sheet', ...FIGURES.map(([head]) => head), 'by', 'note', 'not judged'];

/**
 * The kept ratio checks of a file as a table for spreadsheets, one a row, in the order of their days, by the terms of their day. Off-ratio
 * is B per A made over B per A wanted, less 1: above 0 is B-rich.
 *
 * @param decimal  of the shop; numbers stand as numbers
 * @returns the text of the file; a check that cannot be judged any more keeps its row and says why
 * @source our choice
 */
export function checksCsv(file: ShopFile, decimal: Say['decimal']): string {
  const rows = [...file.ratioChecks].sort((a, b) => dayCount(a.date) - dayCount(b.date));
  return writeCsv([HEADS, ...rows.map((row) => cellsOf(file, row, decimal))], decimal);
}

function cellsOf(file: ShopFile, row: RatioCheckRow, decimal: Say['decimal']): readonly string[] {
  const read = readCheck(row, readTerms(row.terms), ['ratioChecks', file.ratioChecks.indexOf(row)]);
  const found = read.ok ? evaluate(read.value) : null;
  const words = [
    row.id,
    nameOf(file.machines, row.machine),
    nameOf(file.materials, row.material),
    file.changeSheets.find(({ id }) => id === row.changeSheet)?.number ?? row.changeSheet ?? '',
  ];
  return [
    row.date,
    ...words.map(spreadsheetText),
    ...FIGURES.map(([, cell]) => (found === null ? '' : cell(row, found, decimal))),
    spreadsheetText(row.by ?? ''),
    spreadsheetText(row.note ?? ''),
    read.ok ? '' : spreadsheetText(read.findings.map(({ what }) => what).join(' ')),
  ];
}

const nameOf = (rows: readonly { readonly id: string; readonly name: string }[], id: string): string =>
  rows.find((row) => row.id === id)?.name ?? id;

/** B per A by weight as run; null where no densities carry it over. */
export function weightBPerA({ weighed, bPerA, volumeBPerA, input }: Evaluation): Fraction | null {
  if (weighed) return bPerA.value;
  const densities = orNull(input.terms.densityBOverA);
  return densities === null || volumeBPerA === null ? null : volumeBPerA.mul(densities);
}

const number = (value: Fraction | number, places: number, decimal: Say['decimal']): string =>
  // a spreadsheet knows no true minus
  fixed(value, places, { decimal, system: 'metric' }).replace('\u2212', '-');

const aPerB = (bPerA: Fraction | null, decimal: Say['decimal']): string => (bPerA === null ? '' : number(ONE.div(bPerA), 5, decimal));

function percent(share: Fraction | number | undefined, places: number, decimal: Say['decimal']): string {
  if (share === undefined) return '';
  return number(typeof share === 'number' ? 100 * share : share.mul(whole(100)), places, decimal);
}

const plusMinus = ({ delivery }: Evaluation, side: SideName, decimal: Say['decimal']): string =>
  percent(delivery[side]?.uncertainty?.value, 4, decimal);
