import type { Fraction } from '../ratio.ts';
import { readNumber, readRatio, spokenReading } from '../reading.ts';
import type { MaterialRow } from './material.ts';

/**
 * Puts a ratio that was tried into its material, as it was typed. A third part keeps its share of its tank, and a second ratio on the
 * other basis moves along, so that the densities which it tells stay the same.
 *
 * @param row    a material whose ratio is printed on its sheet; it is changed
 * @param text   A to B of the tanks, or parts of B per 100 A where it is a number alone
 * @param times  the tried B per A over the one before
 * @throws RangeError where the ratio comes from chemistry, or the text is none
 * @example takeTried(row of 100 : 45, '100 : 50', ratioOf(10, 9))  // row of 100 : 50
 */
export function takeTried(row: MaterialRow, text: string, times: Fraction): void {
  const { ratio } = row;
  if (ratio === undefined) throw new RangeError('takeTried: the material has no printed ratio');
  const alone = readNumber(text).ok;
  if (!alone && !readRatio(text).ok) throw new RangeError(`takeTried: "${text}" is no ratio`);
  const threeParts = ratio.parts === undefined ? null : scaled(ratio.parts, times, ratio.thirdInto);
  const parts = ratio.thirdInto === undefined || threeParts === null ? text.trim() : threeParts;
  if (alone && ratio.thirdInto === undefined) {
    ratio.perHundredA = parts;
    Reflect.deleteProperty(ratio, 'parts');
  } else {
    ratio.parts = parts;
    Reflect.deleteProperty(ratio, 'perHundredA');
  }
  if (row.otherRatio !== undefined) row.otherRatio.parts = scaled(row.otherRatio.parts, times, ratio.thirdInto) ?? row.otherRatio.parts;
}

/** All that belongs to B times the same, exactly; null where the text is no ratio. */
function scaled(parts: string, times: Fraction, thirdInto: 'A' | 'B' | undefined): string | null {
  const read = readRatio(parts);
  if (!read.ok) return null;
  const [a, b, third] = read.value;
  const written = [a, b.mul(times), ...(third === undefined ? [] : [thirdInto === 'B' ? third.mul(times) : third])];
  return written.map((part) => spokenReading(part).replace(/ \(.*\)$/, '')).join(' : ');
}
