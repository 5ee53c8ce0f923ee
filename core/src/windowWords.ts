import { countOf } from './buyWords.ts';
import { en } from './en.ts';
import type { Say } from './format.ts';
import type { ReachWish } from './reach/figures.ts';
import { offText, ratioInWords, toleranceText, windowText } from './reachWords.ts';
import type { WindowLeft, WindowPlans, WindowPurchase } from './windowPlans.ts';

// Purchases for a window of ratios, as people read them.

/** What is left of a window: how far off its worst target is, and which that is. */
export const leftText = ({ worstTarget, offRatio }: WindowLeft, say: Say): string =>
  worstTarget === null || offRatio === null ? en`nothing can be built` : en`${offText(offRatio, say)} at ${ratioInWords(worstTarget, say)}`;

/**
 * How many wheels bring a window within its tolerance, in a sentence.
 *
 * @source our choice of words
 * @example windowSentence(plans of Bench 1 of the demo, 1 to 9:2 within 1.5 %, say)  // '1 wheel, the fewest, brings every ratio from 1 to 4.5 : 1 within ± 1.50 %; one plan.'
 */
export function windowSentence(plans: WindowPlans, wish: Omit<ReachWish, 'bins'>, say: Say): string {
  const { fewestPurchases, mostPurchases, planCount, more, buysPumps } = plans;
  const goal = en`every ratio from ${windowText(wish, say)} within ${toleranceText(wish.tolerance, say)}`;
  if (fewestPurchases === null) return en`No plan of up to ${countOf(mostPurchases, buysPumps)} brings ${goal}.`;
  if (fewestPurchases === 0) return en`Nothing to buy: the rack as it is brings ${goal}.`;
  const equal = planCount === 1 && !more ? en`one plan` : en`${planCount}${more ? en` or more` : ''} equal plans`;
  return en`${countOf(fewestPurchases, buysPumps)}, the fewest, ${fewestPurchases === 1 ? 'brings' : 'bring'} ${goal}; ${equal}.`;
}

/** What one part of a plan is good for. */
export const windowGainText = ({ quantity, alone, without }: Pick<WindowPurchase, 'quantity' | 'alone' | 'without'>, say: Say): string =>
  en`alone it leaves ${leftText(alone, say)}; ${quantity === 1 ? en`without it` : en`with one fewer`} ${leftText(without, say)} would be left`;
