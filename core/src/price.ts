import { en } from './en.ts';
import { whole, ZERO } from './ratio.ts';
import { type Reading, readNumber } from './reading.ts';
import { quoted } from './visible.ts';

const HUNDRED = whole(100);
const MOST = whole(1_000_000);
/** What may be typed as one. */
export const PRICE = en`a number from 0 to ${MOST.n} with at most two places, as 18.50`;

/**
 * A price as typed, in whatever money the shop counts in.
 *
 * @param text  a number from 0 to 1000000 with at most two places
 * @returns hundredths, so that sums are exact; or what was expected
 * @source our choice
 * @example readPrice('18,50')  // 1850
 */
export function readPrice(text: string): Reading<number> {
  const read = readNumber(text);
  if (!read.ok) return read;
  const hundredths = read.value.mul(HUNDRED);
  if (read.value.compare(ZERO) < 0 || read.value.compare(MOST) > 0 || hundredths.d !== 1n)
    return { ok: false, expected: en`${quoted(text.trim())} is no price. Expected ${PRICE}.` };
  return { ok: true, value: Number(hundredths.n) };
}
