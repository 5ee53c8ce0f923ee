import type { Buying, BuyingLevel } from './planBuying.ts';

/** The level whose plans are worth reading: of those that serve most targets the one of fewest wheels. */
export function bestLevel({ levels }: Buying): BuyingLevel {
  const best = levels.findLast(({ noGain }) => !noGain);
  if (best === undefined) throw new RangeError('bestLevel: no level');
  return best;
}
