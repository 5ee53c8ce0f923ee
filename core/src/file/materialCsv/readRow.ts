import { en } from '../../en.ts';
import type { Place } from '../../finding.ts';
import type { Say as SayNumbers } from '../../format.ts';
import type { Mix } from '../../plan.ts';
import type { MaterialRow } from '../material.ts';
import { Problems } from '../problems.ts';
import { resolveMix } from '../resolveMix.ts';
import type { LimitDefinition } from './columns.ts';
import { limitsOf } from './limitsCells.ts';
import { type Cells, partOf, quantityIn } from './partCells.ts';
import { PART_COLUMNS } from './partColumns.ts';
import { ratioOf } from './ratioCells.ts';

/** One cell that could not be read; the column is null where the whole row is meant. */
export interface CellFault {
  readonly column: string | null;
  readonly what: string;
}

export type RowRead =
  | {
      readonly ok: true;
      readonly material: MaterialRow;
      /** Null where a density is missing that its ratio by weight needs. */
      readonly mix: Mix | null;
      /** What is missing, in sentences. */
      readonly notes: readonly string[];
      /** Whether the definition of its limits is the one taken where none is said. */
      readonly assumed: boolean;
    }
  | { readonly ok: false; readonly faults: readonly CellFault[] };

/** How a list is read: as the shop reads numbers, and what limits without a definition mean. */
export interface ListReading {
  readonly say: SayNumbers;
  readonly limitsMean: LimitDefinition;
}

/** One row of a list as a material of the shop file, or every fault of it. */
export function readRow(cells: Cells, id: string, { say: numbers, limitsMean }: ListReading): RowRead {
  const faults: CellFault[] = [];
  const say = (column: string, what: string) => void faults.push({ column, what });
  const { text, column } = cells;
  const name = text('name');
  if (name === '') say('name', en`Nothing is given.`);
  const ratio = ratioOf(
    {
      ratio: text('ratio'),
      perHundredA: text('B per 100 A'),
      byWeight: text('ratio by weight'),
      byVolume: text('ratio by volume'),
      other: text('other ratio'),
      basis: text('basis'),
    },
    say,
  );
  const filled = ['limits', '±', 'limit low', 'limit high'].filter((head) => text(head) !== '');
  const limits = limitsOf(
    {
      limits: text('limits'),
      plusMinus: text('±'),
      low: text('limit low'),
      high: text('limit high'),
      definition: text('limits definition'),
      headed: filled.map((head) => column(head)?.definition ?? null).find((one) => one !== null) ?? null,
    },
    limitsMean,
    say,
  );
  const at = quantityIn('ratio at', cells, say);
  const [A, B] = [partOf('A', cells, say), partOf('B', cells, say)];
  if (ratio === null || faults.length > 0) return { ok: false, faults };
  const note = text('note');
  const cautions = text('cautions')
    .split('\n')
    .filter((line) => line.trim() !== '');
  const material: MaterialRow = {
    id,
    name,
    ...(note !== '' && { note }),
    ...ratio,
    ...(at && { ratio: { ...ratio.ratio, at } }),
    ...(limits && { limits: limits.row }),
    A,
    B,
    ...(cautions.length > 0 && { cautions }),
  };
  return judged(material, limits?.assumed ?? false, numbers, (head) => text(head) !== '');
}

/** The material held against the rules of the shop file. A density may be missing: that is filled in on its page. */
function judged(material: MaterialRow, assumed: boolean, numbers: SayNumbers, filled: (head: string) => boolean): RowRead {
  const problems = new Problems();
  const resolved = resolveMix(material, [], numbers, problems);
  if (resolved !== null) return { ok: true, material, mix: resolved.mix, notes: [], assumed };
  const found = problems.failure().findings;
  const missing = ({ where: [side, key, inside] }: (typeof found)[number]) =>
    (side === 'A' || side === 'B') && key === 'density' && inside === undefined && material[side].density === undefined;
  if (found.every(missing)) return { ok: true, material, mix: null, notes: found.map(({ what }) => what), assumed };
  return { ok: false, faults: found.filter((one) => !missing(one)).map(({ where, what }) => ({ column: columnAt(where, filled), what })) };
}

/** The column that a place in a material was read from. */
function columnAt([first, second, third]: Place, filled: (head: string) => boolean): string | null {
  const ofPart = PART_COLUMNS.filter(({ side, path: [key] }) => side === first && key === second);
  const part = ofPart.find(({ path: [, inside] }) => inside === third) ?? ofPart[0];
  if (part !== undefined) return part.head;
  const one = (...heads: readonly string[]) => heads.find(filled) ?? heads.at(-1) ?? null;
  if (first === 'ratio') return second === 'at' ? 'ratio at' : one('B per 100 A', 'ratio by weight', 'ratio by volume', 'ratio');
  if (first === 'otherRatio') return one('other ratio', 'ratio by volume');
  if (first === 'limits') return one('limits', '±', second === 'high' ? 'limit high' : 'limit low');
  return typeof first === 'string' ? first : null;
}
