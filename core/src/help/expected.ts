import type { Reading } from '../reading.ts';

/**
 * What a reader says it expects, from its own refusal.
 *
 * @param read  a reading that was refused
 * @throws RangeError  if it was not refused
 * @source our choice: what may be typed is said once, by what reads it
 * @example expectedOf(readPrice('-1'))  // 'a number from 0 to 1000000 with at most two places, as 18.50'
 */
export function expectedOf(read: Pick<Reading<unknown>, 'ok'> & { readonly expected?: string }): string {
  if (read.ok || read.expected === undefined) throw new RangeError('a refused reading is expected');
  return read.expected.replace(/^"[^"]*"[^:.]*[:.] (Expected )?|\.$/g, '');
}
