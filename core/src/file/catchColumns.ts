import { en } from '../en.ts';
import { SIDES, type SideName } from '../plan.ts';
import { readEntry } from '../units.ts';
import { quoted } from '../visible.ts';

/** What may be written down of one side, in the order of the columns. */
export const CAUGHT = [
  { key: 'gross', dimension: 'mass', example: 'g' },
  { key: 'tare', dimension: 'mass', example: 'g' },
  { key: 'net', dimension: 'mass', example: 'g' },
  { key: 'volume', dimension: 'volume', example: 'cc' },
] as const;

const COLUMNS = [...SIDES.flatMap((side) => CAUGHT.map(({ key }) => `${side} ${key}`)), 'left out'].join(', ');
const EXAMPLE = 'A net g';

export type CatchColumn = `${SideName} ${(typeof CAUGHT)[number]['key']}` | 'left out';

/** Where each known column stands, and the unit its head gives. */
export type CatchColumns = ReadonlyMap<CatchColumn, { readonly at: number; readonly unit: string | null }>;

/** Finds the columns by their heads; those not known are named, so that nothing is lost unsaid. */
export function readCatchHead(cells: readonly string[]): {
  readonly columns: CatchColumns;
  readonly ignored: readonly string[];
  readonly troubles: readonly string[];
} {
  const columns = new Map<CatchColumn, { readonly at: number; readonly unit: string | null }>();
  const ignored: string[] = [];
  const troubles: string[] = [];
  cells.forEach((cell, at) => {
    const known = columnOf(cell);
    if (known === null) {
      // the number of a catch is where it stands
      if (!/^\s*(?:catch|no\.?|nr\.?|#)?\s*$/i.test(cell)) ignored.push(cell.trim());
    } else if (columns.has(known.name)) troubles.push(en`The column "${known.name}" stands there twice.`);
    else {
      columns.set(known.name, { at, unit: known.unit });
      if (known.unit === null && known.unitText !== '')
        troubles.push(en`${quoted(cell.trim())}: ${quoted(known.unitText)} is no unit known here.`);
    }
  });
  const without = SIDES.filter((side) => CAUGHT.every(({ key }) => key === 'tare' || !columns.has(`${side} ${key}`)));
  if (without.length > 0)
    troubles.push(
      without.length === 2
        ? en`The head has no amount of A and none of B. The columns are: ${COLUMNS}; with the unit, as "${EXAMPLE}".`
        : en`The head has no amount of ${without[0]}. The columns are: ${COLUMNS}; with the unit, as "${EXAMPLE}".`,
    );
  return { columns, ignored, troubles };
}

function columnOf(cell: string): { readonly name: CatchColumn; readonly unit: string | null; readonly unitText: string } | null {
  const written = cell.trim().replace(/_/g, ' ');
  if (/^left[ -]?out$/i.test(written)) return { name: 'left out', unit: null, unitText: '' };
  const [, side, key, bracketed] = /^([AB])[ ,.-]*(gross|tare|net|volume)(?:[ ,]*(.*))?$/i.exec(written) ?? [];
  const at = CAUGHT.find((one) => one.key === key?.toLowerCase());
  const of = SIDES.find((one) => one === side?.toUpperCase());
  if (at === undefined || of === undefined) return null;
  const unitText = (bracketed ?? '').replace(/^[([]|[)\]]$/g, '').trim();
  const read = unitText === '' ? null : readEntry(at.dimension, `1 ${unitText}`);
  return { name: `${of} ${at.key}`, unit: read?.ok ? read.value.unit : null, unitText };
}
