import { en } from './en.ts';
import type { EntryText } from './entry.ts';
import { quoted } from './visible.ts';

/** From and to, both counted in. */
export interface TeethRange {
  readonly from: number;
  readonly to: number;
}

const FEWEST = 5;
const MOST = 400;
/** Within which both ends must lie. */
export const TEETH_RANGE = en`a wheel has ${FEWEST} to ${MOST} teeth`;
const RANGE = /^(\d{1,6})(?:\s*(?:to|-|–|\.\.)\s*|\s+)(\d{1,6})$/i;

/**
 * A range of teeth as typed; an empty box is not given.
 *
 * @returns both ends, in order
 * @source our choice
 * @example readTeethRange('12 to 40')  // { from: 12, to: 40 }
 */
export function readTeethRange(text: string): EntryText<TeethRange> {
  const typed = text.trim();
  if (typed === '') return { ok: true, value: undefined };
  const [, from, to] = RANGE.exec(typed) ?? [];
  if (from === undefined || to === undefined)
    return { ok: false, expected: en`${quoted(typed)} is not a range of teeth, such as ${'12 to 40'}.` };
  const range = { from: Number(from), to: Number(to) };
  if (range.from < FEWEST || range.to > MOST) return { ok: false, expected: `"${typed}": ${TEETH_RANGE}.` };
  if (range.from > range.to) return { ok: false, expected: en`"${typed}": the first must not be larger than the second.` };
  return { ok: true, value: range };
}
