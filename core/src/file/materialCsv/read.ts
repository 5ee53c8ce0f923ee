import { en, plural } from '../../en.ts';
import type { Mix } from '../../plan.ts';
import { clip, quoted } from '../../visible.ts';
import { type CsvRow, csvLines, readCsv } from '../csv.ts';
import { freshId } from '../freshId.ts';
import type { MaterialRow } from '../material.ts';
import { textOfCell } from '../spreadsheet.ts';
import { PLAIN_ORDER } from './columns.ts';
import { type Columns, columnsOf } from './head.ts';
import type { Cells } from './partCells.ts';
import { type CellFault, type ListReading, type RowRead, readRow } from './readRow.ts';

export const MOST_MATERIALS = 500;
/** Of heads not known here. */
const MOST_LETTERS = 400;

/** A material of a list, with the line it stands on. */
export interface ListedMaterial {
  readonly line: number;
  readonly material: MaterialRow;
  /** Null where a density is missing that its ratio by weight needs. */
  readonly mix: Mix | null;
  readonly notes: readonly string[];
}

/** A fault of a list; the column is null where the row or the head is meant. */
export interface ListFault extends CellFault {
  readonly line: number;
}

/** All that a list says: what could be read, and every fault of the rest. */
export interface MaterialList {
  readonly materials: readonly ListedMaterial[];
  readonly faults: readonly ListFault[];
  /** The rows with faults as they were, under their head; empty where there are none. */
  readonly left: string;
  /** What was taken for granted or left out, in sentences. */
  readonly notes: readonly string[];
}

/** A list is read for a file whose materials it joins. */
export interface ListWish extends ListReading {
  readonly taken: readonly { readonly id: string }[];
}

/**
 * Reads a list of materials, as CSV or pasted out of a spreadsheet. Good rows are read whatever is wrong with others.
 *
 * @param text  a head and one material a row, columns in any order; or no head and the columns in `PLAIN_ORDER`
 * @source our choice
 * @example readMaterials('E12\t100:38.9\tweight\t±2 %', wish).materials[0]?.material.limits  // { definition: '% of B per A', low: '-2', high: '2' }
 */
export function readMaterials(text: string, wish: ListWish): MaterialList {
  const table = readCsv(text);
  const [first, ...others] = table.rows;
  if (first === undefined || table.troubles.length > 0) {
    const faults = table.troubles.map(({ line, what }) => ({ line, column: null, what }));
    return { materials: [], faults, left: faults.length > 0 ? text : '', notes: [] };
  }
  const columns = columnsOf(first.cells);
  if (columns.troubles.length > 0)
    return { materials: [], faults: columns.troubles.map((what) => ({ line: first.line, column: null, what })), left: text, notes: [] };
  const rows = columns.hasHead ? others : table.rows;
  const materials: ListedMaterial[] = [];
  const faults: ListFault[] = [];
  const left: CsvRow[] = [];
  const ids: { readonly id: string }[] = [...wish.taken];
  let assumed = 0;
  for (const [index, row] of rows.entries()) {
    if (index > MOST_MATERIALS) {
      left.push(row);
      continue;
    }
    const cells = cellsOf(columns, row);
    const asked = cells.text('id');
    const id = asked === '' || ids.some((one) => one.id === asked) ? freshId(ids, 'material') : asked;
    const extra = columns.hasHead ? first.cells.length : columns.byName.size;
    const read = index === MOST_MATERIALS ? TOO_MANY : (tooWide(row, extra) ?? readRow(cells, id, wish));
    if (read.ok) {
      ids.push({ id });
      assumed += Number(read.assumed);
      const twice = materials.find(({ material }) => material.name === read.material.name);
      const notes = twice === undefined ? read.notes : [...read.notes, en`Line ${twice.line} has a material of the same name.`];
      materials.push({ line: row.line, material: read.material, mix: read.mix, notes });
    } else {
      faults.push(...read.faults.map((fault) => ({ line: row.line, ...fault })));
      left.push(row);
    }
  }
  return {
    materials,
    faults,
    left:
      left.length === 0
        ? ''
        : csvLines([columns.hasHead ? first.cells : plainHead(left), ...left.map(({ cells }) => cells)], table.delimiter),
    notes: [...assumedNote(assumed, wish), ...ignoredNote(columns)],
  };
}

function cellsOf({ byName }: Columns, { cells }: CsvRow): Cells {
  return {
    text: (name) => textOfCell((cells[byName.get(name)?.at ?? -1] ?? '').trim()).trim(),
    column: (name) => byName.get(name),
  };
}

/** A row that is left might be taken for a head itself, so one stands above it. */
const plainHead = (rows: readonly CsvRow[]): readonly string[] =>
  PLAIN_ORDER.slice(0, Math.max(3, ...rows.map(({ cells }) => cells.length)));

/** Only the first row beyond the most says so; the others stay too. */
const TOO_MANY: RowRead = {
  ok: false,
  faults: [{ column: null, what: en`A list takes ${MOST_MATERIALS} materials: this row and those behind it are left.` }],
};

function tooWide({ cells }: CsvRow, most: number): { readonly ok: false; readonly faults: readonly CellFault[] } | null {
  const beyond = cells.slice(most).find((cell) => cell.trim() !== '');
  if (beyond === undefined) return null;
  return {
    ok: false,
    faults: [
      { column: null, what: en`${quoted(beyond.trim())} stands in cell ${cells.indexOf(beyond) + 1}, and there are ${most} columns.` },
    ],
  };
}

function assumedNote(assumed: number, { limitsMean }: ListWish): readonly string[] {
  if (assumed === 0) return [];
  return [
    plural(
      assumed,
    )`Limits of 1 material say no definition: taken as ${limitsMean}.|Limits of ${assumed} materials say no definition: taken as ${limitsMean}.`,
  ];
}

const ignoredNote = ({ ignored }: Columns): readonly string[] =>
  ignored.length === 0 ? [] : [en`Columns not read: ${clip(ignored.join(', '), MOST_LETTERS)}.`];
