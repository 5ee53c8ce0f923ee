import type { Plan } from '../plan.ts';
import { sameSize } from '../rack.ts';
import type { BuyingWish } from './target.ts';

/**
 * The prices of a shop file, as a buying plan asks for them.
 *
 * @returns undefined where the rack has none
 * @source the price list of the rack
 */
export function pricesOf({ prices }: Plan): BuyingWish['priceOf'] {
  if (prices.length === 0) return undefined;
  return (wheel) => prices.find((row) => sameSize(row, wheel) && row.from <= wheel.teeth && wheel.teeth <= row.to)?.price ?? null;
}
