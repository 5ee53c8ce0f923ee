import type { Wheel } from './buying/index.ts';
import { fixed, lengthText, type Say } from './format.ts';
import { float, ratioOf } from './ratio.ts';

// What is to be bought, as people read it.

/** A wheel by what it is ordered by; the bore apart. */
export const wheelText = ({ size, teeth }: Pick<Wheel, 'size' | 'teeth'>): string => `${size} ${teeth}\u00A0T`;

export const boreText = ({ bore_m }: Wheel, say: Say): string =>
  bore_m.known ? `bore ${lengthText(float(bore_m.value), say, 2)}` : 'bore as the shaft';

/**
 * Wheels of one purchase; of one that is bought several times how many.
 *
 * @source our choice of words
 * @example wheelsText([08B with 14 teeth, 08B with 14 teeth, 08B with 37 teeth])  // '2 of 08B 14 T and 08B 37 T'
 */
export function wheelsText(wheels: readonly Wheel[]): string {
  const counts = new Map<string, number>();
  for (const wheel of wheels) counts.set(wheelText(wheel), (counts.get(wheelText(wheel)) ?? 0) + 1);
  return [...counts].map(([words, count]) => (count === 1 ? words : `${count} of ${words}`)).join(' and ');
}

export const countOfWheels = (count: number): string => (count === 1 ? '1 wheel' : `${count} wheels`);

/**
 * A price in the money of the shop.
 *
 * @param price     in hundredths
 * @param currency  its word; null where none is given
 * @source our choice
 * @example priceText(1850, 'crowns', say)  // '18.50 crowns'
 */
export const priceText = (price: number, currency: string | null, say: Say): string =>
  `${fixed(ratioOf(price, 100), 2, say)}${currency === null ? '' : `\u00A0${currency}`}`;
