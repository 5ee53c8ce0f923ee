import { whole } from './ratio.ts';
import { readNumber, readRatio, spokenReading } from './reading.ts';

/**
 * How many parts a typed ratio has, so that a third one asks for its tank.
 *
 * @returns 0 where the text is no ratio
 * @example partCount('4 : 1 : 1')  // 3
 */
export function partCount(parts: string): 0 | 2 | 3 {
  const read = readRatio(parts);
  return read.ok ? read.value.length : 0;
}

/**
 * The same ratio written as parts of B per 100 A, exactly: as a decimal where one ends, else as a fraction.
 *
 * @returns null where there are not just two parts
 * @source arithmetic
 * @example perHundredOf('3 : 1')  // '100/3'
 */
export function perHundredOf(parts: string): string | null {
  const read = readRatio(parts);
  if (!read.ok || read.value.length === 3) return null;
  const [a, b] = read.value;
  return spokenReading(b.mul(whole(100)).div(a)).replace(/ \(.*\)$/, '');
}

/**
 * Parts of B per 100 A written as A : B.
 *
 * @returns null where the text is no number
 * @example partsOf('38,9')  // '100 : 38,9'
 */
export function partsOf(perHundredA: string): string | null {
  return readNumber(perHundredA).ok ? `100 : ${perHundredA.trim()}` : null;
}
