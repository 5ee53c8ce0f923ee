import { en } from '../../en.ts';
import { quantityText } from '../../entry.ts';
import type { Say } from '../../format.ts';
import type { TypedQuantity } from '../../reading.ts';
import type { Dimension } from '../../units.ts';
import { writeCsv } from '../csv.ts';
import type { MaterialRow } from '../material.ts';
import { spreadsheetText } from '../spreadsheet.ts';
import { LEADING, TRAILING } from './columns.ts';
import { PART_COLUMNS } from './partColumns.ts';

/** The list as text, and which materials it cannot hold. */
export interface WrittenMaterials {
  readonly text: string;
  readonly leftOut: readonly { readonly name: string; readonly why: string }[];
}

const HEADS = [...LEADING, ...PART_COLUMNS.map(({ head }) => head), ...TRAILING];

/**
 * The materials of a file as a list that `readMaterials` reads back to the same rows, numbers and units as typed.
 *
 * @returns what comes from chemistry or has a third part is left out and named: a row has one ratio of two parts
 * @source our choice
 * @example writeMaterials(the demo's materials, '.').leftOut  // [{ name: 'U40 elastomer', why: 'its ratio comes from chemistry' }]
 */
export function writeMaterials(materials: readonly MaterialRow[], decimal: Say['decimal']): WrittenMaterials {
  const rows = materials.filter((material) => why(material) === null);
  return {
    text: writeCsv([HEADS, ...rows.map((row) => cellsOf(row).map(spreadsheetText))], decimal),
    leftOut: materials.flatMap((material) => {
      const reason = why(material);
      return reason === null ? [] : [{ name: material.name, why: reason }];
    }),
  };
}

function why({ chemistry, ratio, third, premix }: MaterialRow): string | null {
  if (chemistry !== undefined) return en`its ratio comes from chemistry`;
  return ratio?.thirdInto !== undefined || third !== undefined || premix !== undefined ? en`it has a third part` : null;
}

function cellsOf({ id, name, note, ratio, otherRatio, limits, A, B, cautions }: MaterialRow): readonly string[] {
  const parts = ratio?.perHundredA === undefined ? (ratio?.parts ?? '') : `${ratio.perHundredA} per 100 A`;
  const leading = [name, parts, ratio?.basis ?? '', quantityCell('temperature', ratio?.at), otherRatio?.parts ?? ''];
  const limited = [limits?.low ?? '', limits?.high ?? '', limits?.definition ?? ''];
  const of = { A, B };
  const quantities = PART_COLUMNS.map(({ side, dimension, of: typed }) => quantityCell(dimension, typed(of[side])));
  return [...leading, ...limited, A.name ?? '', B.name ?? '', ...quantities, note ?? '', cautions?.join('\n') ?? '', id];
}

/** A share without a unit is written in per cent: a bare number would be refused. */
function quantityCell(dimension: Dimension, typed: TypedQuantity | undefined): string {
  if (typed === undefined) return '';
  return typed.unit === '' ? `${quantityText(dimension, typed, '%')} %` : `${typed.value} ${typed.unit}`;
}
