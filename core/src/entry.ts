import { en } from './en.ts';
import type { Say } from './format.ts';
import { Fraction } from './ratio.ts';
import { readNumber, readRatio, spokenReading, type TypedQuantity } from './reading.ts';
import { type Dimension, fromSI, readEntry, readQuantity, unitsOf } from './units.ts';
import { quoted } from './visible.ts';

export type { Dimension, TypedQuantity };

/** What an entry box holds: a value to keep, nothing (not given), or what was expected. `reading` stands beside the box where it helps. */
export type EntryText<T> =
  | { readonly ok: true; readonly value: T | undefined; readonly reading?: string }
  | { readonly ok: false; readonly expected: string };

const EMPTY = { ok: true, value: undefined } as const;

/** A plain decimal with a point reads as itself, so nothing need stand beside it. */
const PLAIN = /^[+-]?\d+(\.\d+)?$/;

/**
 * A quantity as typed into a box whose unit is known where none is typed.
 *
 * @returns the value as typed, for the file; `reading` where the text could be read in more than one way
 * @example readQuantityEntry('length', '10,5', 'mm', say)  // 10,5 mm, reading "10.5 mm"
 */
export function readQuantityEntry(dimension: Dimension, text: string, unit: string, say: Say): EntryText<TypedQuantity> {
  if (text.trim() === '') return EMPTY;
  const read = readEntry(dimension, text);
  if (!read.ok) return read;
  const value = { value: read.value.value, unit: read.value.unit ?? unit };
  if (PLAIN.test(read.value.value.trim())) return { ok: true, value };
  return { ok: true, value, reading: `= ${spokenReading(read.value.number, say.decimal)} ${value.unit}`.trimEnd() };
}

/**
 * A quantity as it stands in its box; the unit is left out where it is the one meant anyway.
 *
 * @param dimension  of the box
 * @param typed      as kept in the file
 * @param unit       meant where none is written
 * @returns the text, which the box reads as the same quantity
 * @source inverse of `readQuantityEntry`
 * @example quantityText('share', { value: '0.88', unit: '' }, '%')  // '88'
 */
export function quantityText(dimension: Dimension, typed: TypedQuantity, unit: string): string {
  if (typed.unit === unit) return typed.value;
  if (typed.unit !== '') return `${typed.value} ${typed.unit}`;
  // A bare number would be read in the unit of the box, so it is brought to that unit.
  const read = readQuantity(dimension, typed);
  if (!read.ok) return typed.value;
  const inBox = fromSI(dimension, read.value, unit);
  const decimal = inBox.toString();
  return decimal.includes('(') ? inBox.toFraction() : decimal;
}

/** A figure and how far it may be off, both ways, in the same dimension. */
export interface TypedWithError {
  readonly value: TypedQuantity;
  readonly uncertainty?: TypedQuantity;
}

/**
 * A figure with its error as it stands in its box; the unit is left out where it is the one meant anyway.
 *
 * @param typed  as kept in the file
 * @param unit   meant where none is written
 * @source inverse of `readWithErrorEntry`
 * @example withErrorText('share', { value: { value: '98.5', unit: '%' }, uncertainty: { value: '0.4', unit: '%' } }, '%')  // '98.5 ± 0.4'
 */
export function withErrorText(dimension: Dimension, { value, uncertainty }: TypedWithError, unit: string): string {
  const error = uncertainty === undefined ? '' : ` ± ${quantityText(dimension, uncertainty, unit)}`;
  return quantityText(dimension, value, unit) + error;
}

/**
 * An amount as typed into a box: a mass or a volume, whichever its unit says. None is meant where no unit is typed.
 *
 * @returns the amount as typed, for the file; `reading` where the text could be read in more than one way
 * @source our choice
 * @example readAmountEntry('2,5 kg', say)  // 2,5 kg, reading "= 2.5 kg"
 */
export function readAmountEntry(text: string, say: Say): EntryText<TypedQuantity> {
  if (text.trim() === '') return EMPTY;
  for (const dimension of ['mass', 'volume'] as const) {
    const read = readEntry(dimension, text);
    if (read.ok && read.value.unit !== null) return readQuantityEntry(dimension, text, read.value.unit, say);
  }
  const units = [...unitsOf('mass'), ...unitsOf('volume')].join(', ');
  return { ok: false, expected: en`${quoted(text.trim())} is no mass or volume. Expected a number with its unit, as 400 g: ${units}.` };
}

/** An amount as it stands in its box, always with its unit. */
export const amountEntryText = ({ value, unit }: TypedQuantity): string => `${value} ${unit}`;

/** A number without a unit, kept as typed. */
export function readNumberEntry(text: string, say: Say): EntryText<string> {
  if (text.trim() === '') return EMPTY;
  const read = readNumber(text);
  if (!read.ok) return read;
  return PLAIN.test(text.trim())
    ? { ok: true, value: text }
    : { ok: true, value: text, reading: `= ${spokenReading(read.value, say.decimal)}` };
}

/** A mix ratio, kept as typed; the reading says which part is A and which is B. */
export function readRatioEntry(text: string): EntryText<string> {
  if (text.trim() === '') return EMPTY;
  const read = readRatio(text);
  if (!read.ok) return read;
  const [a, b, third] = read.value;
  const names =
    third === undefined
      ? `A ${spokenReading(a)}, B ${spokenReading(b)}`
      : en`A ${spokenReading(a)}, B ${spokenReading(b)}, third ${spokenReading(third)}`;
  return { ok: true, value: text, reading: names };
}

/** A whole number between two limits. */
export function readCount(text: string, least: number, most: number): EntryText<number> {
  const typed = text.trim();
  if (typed === '') return EMPTY;
  const value = Number(typed);
  if (/^\d{1,6}$/.test(typed) && value >= least && value <= most) return { ok: true, value };
  return { ok: false, expected: en`${quoted(typed)} is not a whole number from ${least} to ${most}.` };
}

/**
 * What an arrow key makes of a number: one more or one less, its decimals kept as typed, never below 0.
 *
 * @returns the new text, or null where the text is not a plain decimal
 * @example stepNumber('3.14', -1)  // '2.14'
 */
export function stepNumber(text: string, by: 1 | -1): string | null {
  const typed = text.trim();
  if (!/^\d+([.,]\d+)?$/.test(typed)) return null;
  const mark = typed.includes(',') ? ',' : '.';
  const places = typed.split(mark)[1]?.length ?? 0;
  const next = new Fraction(typed.replace(',', '.')).add(by);
  return next.s < 0n
    ? null
    : next
        .toString(places + 1)
        .replace(/^(\d+)(?:\.(\d+))?$/, (_, whole: string, rest = '') =>
          places === 0 ? whole : `${whole}${mark}${String(rest).padEnd(places, '0')}`,
        );
}
