import { en } from './en.ts';
import { amountEntryText, type EntryText, readAmountEntry, readQuantityEntry, type TypedWithError } from './entry.ts';
import type { Say } from './format.ts';
import type { TypedQuantity } from './reading.ts';
import type { Dimension } from './units.ts';

// Two figures in one box that belong together but are no range.

/** So much in so long. */
export interface TypedShot {
  readonly amount: TypedQuantity;
  readonly time: TypedQuantity;
}

/** The last "in" stands before the time, so that cubic inches may stand before it; it is the same in every language. */
const SHOT = /^(.+)\sin\s+(\S.*)$/i;

/**
 * A shot as typed into one box: `400 g in 6 s`, `2.5 L in 1 min`. Where the time has no unit, seconds are meant.
 *
 * @param text  as typed
 * @returns amount and time as typed; blank is not given
 * @source our choice
 * @example readShotEntry('400 g in 6 s', say)  // 400 g, 6 s
 */
export function readShotEntry(text: string, say: Say): EntryText<TypedShot> {
  const typed = text.trim();
  if (typed === '') return { ok: true, value: undefined };
  const [, first = '', second = ''] = SHOT.exec(typed) ?? [];
  const amount = readAmountEntry(first, say);
  if (!amount.ok) return amount;
  const time = readQuantityEntry('time', second, 's', say);
  if (!time.ok) return time;
  if (amount.value === undefined || time.value === undefined)
    return { ok: false, expected: en`"${typed}" is no shot. Expected an amount and its time, as ${'400 g in 6 s'}.` };
  const value = { amount: amount.value, time: time.value };
  const plain = amount.reading === undefined && time.reading === undefined && /[a-z]/i.test(second);
  const spoken = [amount.reading ?? amountEntryText(amount.value), time.reading ?? amountEntryText(time.value)];
  return { ok: true, value, ...(plain ? {} : { reading: `= ${spoken.map(withoutSign).join(en` in `)}` }) };
}

/**
 * A shot as it stands in its box.
 *
 * @param shot  as kept in the file
 * @source inverse of `readShotEntry`
 * @example shotText({ amount: { value: '400', unit: 'g' }, time: { value: '6', unit: 's' } })  // '400 g in 6 s'
 */
export const shotText = ({ amount, time }: TypedShot): string => `${amountEntryText(amount)} in ${amountEntryText(time)}`;

const PLUS_MINUS = /\s*(?:±|\+\s*\/?\s*[-\u2212])\s*/;

/**
 * A figure with its error as typed into one box: `98.5 ± 0.4`, `98.5 +- 0.4`, `98.5 +/- 0.4 %`, or the figure alone.
 *
 * @param dimension  of both
 * @param text       as typed
 * @param unit       meant where none is typed
 * @returns both as typed; blank is not given
 * @source our choice
 * @example readWithErrorEntry('share', '98.5 +- 0.4', '%', say)  // 98.5 %, ± 0.4 %
 */
export function readWithErrorEntry(dimension: Dimension, text: string, unit: string, say: Say): EntryText<TypedWithError> {
  const typed = text.trim();
  if (typed === '') return { ok: true, value: undefined };
  const [first = '', second, ...more] = typed.split(PLUS_MINUS);
  if (first === '' || second === '' || more.length > 0)
    return { ok: false, expected: en`"${typed}" is no figure with its error. Expected it as 98.5 ± 0.4 or 98.5 +- 0.4.` };
  const value = readQuantityEntry(dimension, first, unit, say);
  if (!value.ok) return value;
  const error = readQuantityEntry(dimension, second ?? '', unit, say);
  if (!error.ok) return error;
  if (value.value === undefined) return { ok: true, value: undefined };
  const kept = { value: value.value, ...(error.value && { uncertainty: error.value }) };
  if (value.reading === undefined && error.reading === undefined) return { ok: true, value: kept };
  const spoken = [value.value, error.value].flatMap((one, index) => {
    const reading = [value.reading, error.reading][index];
    return one === undefined ? [] : [reading ?? amountEntryText(one)];
  });
  return { ok: true, value: kept, reading: `= ${spoken.map(withoutSign).join(' ± ')}` };
}

const withoutSign = (reading: string): string => reading.replace(/^= /, '');
