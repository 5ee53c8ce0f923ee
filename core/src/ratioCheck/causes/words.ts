import { fixed, quantity, type Say } from '../../format.ts';
import type { Fraction } from '../../ratio.ts';
import { whole } from '../../ratio.ts';

/** A share in per cent, without sign. */
export const shareText = (share: Fraction | number, say: Say, places = 2): string =>
  `${fixed(typeof share === 'number' ? 100 * share : share.mul(whole(100)), places, say)}\u00A0%`;

/** What was caught: grams, or cubic centimetres where nothing was weighed. */
export const caughtText = (amount: Fraction, weighed: boolean, say: Say): string =>
  weighed ? quantity(amount, 'mass', 'g', 1, say) : quantity(amount, 'volume', 'cc', 1, say);
