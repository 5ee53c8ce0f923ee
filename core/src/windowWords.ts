import { countOf, equalPlansText } from './buyWords.ts';
import { en, plural } from './en.ts';
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
  const bought = countOf(fewestPurchases, buysPumps);
  const equal = equalPlansText(planCount, more);
  return plural(fewestPurchases)`${bought}, the fewest, brings ${goal}; ${equal}.|${bought}, the fewest, bring ${goal}; ${equal}.`;
}

/** What one part of a plan is good for. */
export const windowGainText = ({ quantity, alone, without }: Pick<WindowPurchase, 'quantity' | 'alone' | 'without'>, say: Say): string =>
  quantity === 1
    ? en`alone it leaves ${leftText(alone, say)}; without it ${leftText(without, say)} would be left`
    : en`alone it leaves ${leftText(alone, say)}; with one fewer ${leftText(without, say)} would be left`;
