import { canonicalUnit, type Dimension, readEntry } from '../../units.ts';
import type { LimitsRow } from '../material.ts';
import { PART_COLUMNS } from './partColumns.ts';

/** The definitions of limits that a printed ratio may have. */
export const LIMIT_DEFINITIONS = [
  '% of B per A',
  '% of A per B',
  'points of B in the total',
  'parts of B',
] as const satisfies readonly LimitsRow['definition'][];
export type LimitDefinition = (typeof LIMIT_DEFINITIONS)[number];

/** What a list is written with, in this order; the quantities of both parts stand between. */
export const LEADING = [
  'name',
  'ratio',
  'basis',
  'ratio at',
  'other ratio',
  'limit low',
  'limit high',
  'limits definition',
  'name A',
  'name B',
];
export const TRAILING = ['note', 'cautions', 'id'];
/** Further columns that are read. */
const READ_TOO = ['B per 100 A', 'ratio by weight', 'ratio by volume', 'limits', '±', 'density at'];
const LIMIT_HEADS = ['limits', '±', 'limit low', 'limit high'];

/** The order of a list without a head; what is not needed at its end may be left out. */
export const PLAIN_ORDER: readonly string[] = [
  'name',
  'ratio',
  'basis',
  'limits',
  'density A',
  'density B',
  'density at',
  'run A',
  'run B',
  'expansion A',
  'expansion B',
];

const ALL: readonly string[] = [...LEADING, ...READ_TOO, ...PART_COLUMNS.map(({ head }) => head), ...TRAILING];

/** Heads that mean the same. */
const ALSO: readonly (readonly [written: string, name: string])[] = [
  ['material', 'name'],
  ['mix ratio', 'ratio'],
  ['mix ratio by weight', 'ratio by weight'],
  ['mix ratio by volume', 'ratio by volume'],
  ['by weight or volume', 'basis'],
  ['+/-', '±'],
  ['limits ±', '±'],
  ['tolerance', 'limits'],
  ['low limit', 'limit low'],
  ['high limit', 'limit high'],
  ['definition', 'limits definition'],
  ['run temperature A', 'run A'],
  ['run temperature B', 'run B'],
  ['run A at', 'run A'],
  ['run B at', 'run B'],
  ['temperature A', 'run A'],
  ['temperature B', 'run B'],
];

/** Longer heads first: `density A at` begins like `density A`. */
const KNOWN = [...ALL.map((name) => [name, name] as const), ...ALSO].sort(([a], [b]) => b.length - a.length);

/** Where a column stands, and what its head says for all its cells. */
export interface Column {
  readonly name: string;
  readonly at: number;
  readonly unit: string | null;
  /** Of a density: the temperature it holds at, as written. */
  readonly heldAt: string | null;
  readonly definition: LimitDefinition | null;
}

const DIMENSIONS: ReadonlyMap<string, Dimension> = new Map([
  ...PART_COLUMNS.map(({ head, dimension }) => [head, dimension] as const),
  ['density at', 'temperature'],
  ['ratio at', 'temperature'],
]);

export const dimensionOf = (name: string): Dimension | null => DIMENSIONS.get(name) ?? null;

/** A definition of limits as somebody writes it; null where it is none. */
export const definitionCalled = (text: string): LimitDefinition | null =>
  LIMIT_DEFINITIONS.find((one) => plain(one) === plain(text)) ?? null;

const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, '');

/**
 * What one head says; null where it names no column known here.
 *
 * @source our choice
 * @example columnCalled('Density A (g/cm3 at 25 °C)', 4)?.unit  // 'g/cm3'
 */
export function columnCalled(head: string, at: number): Column | null {
  const written = head.replace(/[_\s]+/g, ' ').trim();
  for (const [known, name] of KNOWN) {
    if (!written.toLowerCase().startsWith(known.toLowerCase())) continue;
    const rest = written.slice(known.length);
    if (/^[a-z0-9]/i.test(rest)) continue;
    const bare = rest.replace(/^[\s,:]+/, '');
    const said = saidBy(name, bare) ?? saidBy(name, bare.replace(/^[([]\s*(.*?)\s*[)\]]$/, '$1'));
    if (said !== null) return { name, at, ...said };
  }
  return null;
}

type Said = Pick<Column, 'unit' | 'heldAt' | 'definition'>;
export const NOTHING: Said = { unit: null, heldAt: null, definition: null };

/** What stands behind the name of a column; null where that is not understood. */
function saidBy(name: string, rest: string): Said | null {
  if (rest === '') return NOTHING;
  if (LIMIT_HEADS.includes(name)) {
    const definition = definitionCalled(rest);
    return rest === '%' || definition !== null ? { ...NOTHING, definition } : null;
  }
  const dimension = dimensionOf(name);
  if (dimension === null) return null;
  const [unitText = '', heldAt = null] = dimension === 'density' ? atParts(rest) : [rest];
  const unit = canonicalUnit(dimension, unitText);
  if (unit === null && unitText !== '') return null;
  if (heldAt !== null && !readEntry('temperature', heldAt).ok) return null;
  return { ...NOTHING, unit: unitText === '' ? null : unit, heldAt };
}

/** `1.16 g/cm3 at 25 °C`: the density, and the temperature it holds at. */
export function atParts(text: string): readonly [string, (string | null)?] {
  const [value = '', heldAt = null] = text.split(/(?:^|\s+)at\s+|\s*@\s*/i);
  return [value.trim(), heldAt];
}
