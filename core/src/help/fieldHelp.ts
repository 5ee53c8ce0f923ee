import { en } from '../en.ts';
import { type Accepts, accepts } from '../file/accepts.ts';
import { type SchemaLeaf, schemaLeaves } from '../file/schemaLeaves.ts';
import { type Say, withTrueMinus } from '../format.ts';
import type { FieldLine } from './fieldLine.ts';
import { FIELD_PAGES } from './fields/index.ts';
import { begins, matches } from './match.ts';

const LINES: readonly FieldLine[] = FIELD_PAGES.flatMap(({ lines }) => lines);
export const placesOf = ({ place, also = [] }: FieldLine): readonly string[] => [place, ...also];

/**
 * The line of a box.
 *
 * @param place  as the box carries it, `machines.0.motor.speed`, or its name
 * @returns null where the place is no box
 * @source our choice
 * @example lineAt('racks.0.pieces.3.bore')?.name  // 'Bore'
 */
export function lineAt(place: string): FieldLine | null {
  const steps = place.split('.');
  return LINES.find((line) => placesOf(line).some((pattern) => matches(pattern, steps))) ?? null;
}

/** Words for what is typed; a choice and a tick show what they take. */
const KINDS: Readonly<Record<Accepts['what'], string>> = {
  quantity: '',
  'whole number': en`whole number`,
  number: en`number`,
  ratio: en`ratio, as 100 : 38.9`,
  'yes or no': '',
  text: en`text`,
  choice: '',
};

/** A single unit stands at the limits already. */
const unitsText = (units: readonly string[]): string => {
  const named = units.filter((unit) => unit !== '');
  return named.length < 2 ? '' : en`in ${named.join(', ')}`;
};
const acceptsText = ({ what, units, limits }: Accepts): string =>
  [KINDS[what], ...limits, unitsText(units)].filter((words) => words !== '').join(', ');

/**
 * What may be typed into a box: its limits and the units it takes, as the schema of the shop file has them.
 *
 * @returns null where nothing limits it
 * @source our choice
 * @example limitsOf(lineAt('machines.0.stages.0.takeUp'), say)  // 'at least 0 pitches, at most 100 pitches'
 */
export function limitsOf(line: FieldLine, say: Say): string | null {
  const text = line.limits?.() ?? together(leavesOf(line));
  if (text === '') return null;
  return withTrueMinus(text.replace(/(?<=\d)\.(?=\d)/g, say.decimal)).replace(/(?<=[a-z])3(?!\d)/g, '³');
}

let leaves: readonly SchemaLeaf[] | null = null;

/** The fields of the file that a box fills. */
function leavesOf(line: FieldLine): readonly SchemaLeaf[] {
  leaves ??= schemaLeaves();
  const patterns = line.limitsOf === undefined ? placesOf(line) : [line.limitsOf];
  return leaves.filter(({ steps }) => patterns.some((pattern) => begins(pattern, steps)));
}

/** Figures that stand in one box. */
const KEYS: Readonly<Record<string, string>> = {
  from: en`from`,
  to: en`to`,
  value: en`value`,
  uncertainty: en`uncertainty`,
  amount: en`amount`,
  time: en`time`,
  parts: en`parts`,
};

/** Each with its own limits, or once where all have the same. */
function together(found: readonly SchemaLeaf[]): string {
  const said = found.map((leaf) => [leaf.steps.at(-1) ?? '', acceptsText(accepts(leaf))] as const);
  const different = [...new Set(said.map(([, text]) => text))];
  if (different.length <= 1) return different[0] ?? '';
  return [...new Set(said.flatMap(([key, text]) => (text === '' ? [] : [`${KEYS[key] ?? key}: ${text}`])))].join('; ');
}
