import { en } from './en.ts';
import { type EntryText, quantityText, readCount, readQuantityEntry } from './entry.ts';
import type { Say } from './format.ts';
import type { TypedQuantity } from './reading.ts';
import { type Dimension, readQuantity } from './units.ts';
import { quoted } from './visible.ts';

/** A range as typed; an end left open is absent. A single figure is a range whose ends are one. */
export interface TypedRange {
  readonly from?: TypedQuantity;
  readonly to?: TypedQuantity;
}

/** A range with both its ends. */
export interface TypedWindow {
  readonly from: TypedQuantity;
  readonly to: TypedQuantity;
}

/** What the box of a range holds. */
export interface RangeEntry {
  readonly dimension: Dimension;
  /** Meant where none is typed. */
  readonly unit: string;
  /** Two figures as they could stand in this box. */
  readonly example: string;
}

/** A dash or a word between two figures, the same in every language; the dash of a negative power of ten is none. */
const BETWEEN = /\s*(?:(?<!\de)[-–—−]|\bto\b|\.\.\.?|…)\s*/i;

/**
 * A range typed into one box, with both ends: `250 to 263`, `250-263 mm`, `9 3/4 – 10 1/4 in`; a single figure is both of them.
 *
 * @param text  as typed; where only the second figure has a unit, the first shares it
 * @returns both ends as typed; blank is not given
 * @source our choice
 * @example readWindowEntry(centre, '250-263', say)  // from 250 mm, to 263 mm
 */
export function readWindowEntry(entry: RangeEntry, text: string, say: Say): EntryText<TypedWindow> {
  const typed = text.trim();
  if (typed === '') return { ok: true, value: undefined };
  const [first = '', second = first, ...more] = typed.split(BETWEEN);
  const read = more.length > 0 ? null : readEnds(entry, first, second, say);
  if (read !== null && !read.ok) return read;
  const { from, to } = read?.value ?? {};
  if (from === undefined || to === undefined) return { ok: false, expected: expectedText(typed, entry.example, false) };
  return { ...read, ok: true, value: { from, to } };
}

/**
 * A range typed into one box, of which one end may be left open: `10 to 100`, `10 to`, `- 100`; a single figure could be either end
 * and is refused.
 *
 * @param text  as typed; where only the second figure has a unit, the first shares it
 * @returns the ends as typed; blank is not given
 * @source our choice
 * @example readOpenRangeEntry(speed, '10 to', say)  // from 10 rpm
 */
export function readOpenRangeEntry(entry: RangeEntry, text: string, say: Say): EntryText<TypedRange> {
  const typed = text.trim();
  if (typed === '') return { ok: true, value: undefined };
  const [first = '', second, ...more] = typed.split(BETWEEN);
  if (more.length > 0 || second === undefined || first + second === '')
    return { ok: false, expected: expectedText(typed, entry.example, true) };
  return readEnds(entry, first, second, say);
}

function readEnds(entry: RangeEntry, first: string, second: string, say: Say): EntryText<TypedRange> {
  const to = readQuantityEntry(entry.dimension, second, entry.unit, say);
  if (!to.ok) return to;
  const from = readQuantityEntry(entry.dimension, first, to.value?.unit ?? entry.unit, say);
  if (!from.ok) return from;
  if (from.value !== undefined && to.value !== undefined && larger(entry.dimension, from.value, to.value))
    return { ok: false, expected: en`${first} to ${second}: the first must not be larger than the second.` };
  const value = { ...(from.value && { from: from.value }), ...(to.value && { to: to.value }) };
  if (from.reading === undefined && to.reading === undefined) return { ok: true, value };
  const ends = first === second ? [to] : [from, to];
  const spoken = ends.map((end) => end.reading?.replace(/^= /, '') ?? end.value?.value ?? '');
  return { ok: true, value, reading: `= ${spoken.join(en` to `).trim()}` };
}

function expectedText(typed: string, example: string, open: boolean): string {
  const [first = ''] = example.split(BETWEEN);
  return open
    ? en`${quoted(typed)} is not a range. Expected two figures, as ${example}, or ${`${first} to`}, with the end open.`
    : en`${quoted(typed)} is not a range. Expected two figures, as ${example}, or ${first} where it is one figure.`;
}

function larger(dimension: Dimension, from: TypedQuantity, to: TypedQuantity): boolean {
  const [a, b] = [readQuantity(dimension, from), readQuantity(dimension, to)];
  return a.ok && b.ok && a.value.compare(b.value) > 0;
}

/**
 * A range as it stands in its box; the unit is left out where it is the one meant anyway.
 *
 * @param dimension  of the box
 * @param range      as kept in the file; a bare number is brought to the unit of the box
 * @param unit       meant where none is written
 * @returns the text, which the box reads as the same range
 * @source inverse of `readWindowEntry` and `readOpenRangeEntry`
 * @example rangeText('share', { from: { value: '0.2', unit: '' }, to: { value: '1', unit: '' } }, '%')  // '20 to 100 %'
 */
export function rangeText(dimension: Dimension, { from, to }: TypedRange, unit: string): string {
  const asMeant = [from, to].every((end) => end === undefined || end.unit === unit);
  const brought = (end: TypedQuantity) => (end.unit === '' ? { value: quantityText(dimension, end, unit), unit } : end);
  const words = (end: TypedQuantity) => (asMeant ? end.value : `${end.value} ${end.unit}`.trimEnd());
  const [low, high] = [from && brought(from), to && brought(to)];
  if (low === undefined || high === undefined) return `${low ? words(low) : ''} to ${high ? words(high) : ''}`.trim();
  if (low.unit !== high.unit) return `${words(low)} to ${words(high)}`;
  // The second unit holds for both.
  return low.value === high.value ? words(high) : `${low.value} to ${words(high)}`;
}

/** A range of whole numbers; an end left open is absent. */
export interface CountRange {
  readonly from?: number;
  readonly to?: number;
}

/**
 * A range of teeth as typed into one box: `13 to 40`, `13-40`, or with one end open `13 to`.
 *
 * @param least, most  the limits of both ends
 * @returns both ends; blank is not given
 * @source our choice
 * @example readCountRange('13-40', 5, 400)  // from 13, to 40
 */
export function readCountRange(text: string, least: number, most: number): EntryText<CountRange> {
  const typed = text.trim();
  if (typed === '') return { ok: true, value: undefined };
  const [first = '', second, ...more] = typed.split(BETWEEN);
  if (more.length > 0 || second === undefined || (first === '' && second === ''))
    return { ok: false, expected: expectedText(typed, '13 to 40', true) };
  const [from, to] = [readCount(first, least, most), readCount(second, least, most)];
  if (!from.ok) return from;
  if (!to.ok) return to;
  if (from.value !== undefined && to.value !== undefined && from.value > to.value)
    return { ok: false, expected: en`${quoted(typed)}: the first must not be larger than the second.` };
  return {
    ok: true,
    value: { ...(from.value === undefined ? {} : { from: from.value }), ...(to.value === undefined ? {} : { to: to.value }) },
  };
}

/** A range of whole numbers as it stands in its box. */
export const countRangeText = ({ from, to }: CountRange): string =>
  from === undefined && to === undefined ? '' : `${from ?? ''} to ${to ?? ''}`.trim();
