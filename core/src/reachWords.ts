import { en, plural } from './en.ts';
import { exactRatioText, fixed, percentText, ratioText, type Say, significant } from './format.ts';
import { type Fraction, ONE, whole } from './ratio.ts';
import type { Reach, ReachGap, ReachWish } from './reach/figures.ts';

// A reach as people read it; what is exact is shown as whole numbers where they are short enough.

/** Whole numbers of a ratio longer than this say less than its decimals. */
const SHORT = 9;
const HUNDRED = whole(100);

/**
 * A ratio by volume in a sentence: exact where that is short, with its decimals where they tell more.
 *
 * @param R  A per B
 * @source our choice
 * @example ratioInWords(ratioOf(14, 3), say)  // '14 : 3 (4.6667 : 1)'
 */
export function ratioInWords(R: Fraction, say: Say): string {
  if (R.d === 1n) return `${R.n} : 1`;
  const exact = exactRatioText(R);
  return exact.length > SHORT ? ratioText(R, say) : `${exact} (${ratioText(R, say)})`;
}

/** Both ends of a window of ratios. */
export const windowText = ({ low, high }: Pick<ReachWish, 'low' | 'high'>, say: Say): string =>
  en`${significant(low, 6, say)} to ${significant(high, 6, say)} : 1`;

/** An off-ratio without its sign, in per cent. */
export const offText = (offRatio: Fraction, say: Say): string => percentText(offRatio, say);

/**
 * A share of the window; short of all of it, it never reads as all.
 *
 * @source our choice
 * @example coveredText(0.95417, say)  // '95.42 %'
 */
export function coveredText(covered: number, say: Say): string {
  if (covered >= 1) return en`all`;
  const text = fixed(100 * covered, 2, say);
  return text === fixed(100, 2, say) ? en`over ${`${fixed(99.99, 2, say)}\u00A0%`}` : `${text}\u00A0%`;
}

export const toleranceText = (tolerance: Fraction, say: Say): string => {
  const isWhole = tolerance.mul(HUNDRED).d === 1n;
  return `±\u00A0${percentText(tolerance, say, isWhole ? 0 : 2)}`;
};

/**
 * What a machine can make within a window, in sentences: how many ratios, how much of the window, the worst target, the widest gap,
 * the ends of all that can be built.
 *
 * @source our choice of words
 * @example reachSentences(Bench 1 of the demo over 1 to 5, say)  // '191 ratios from 1 to 5 : 1 by volume; 95.42 % of that window lies within ± 2 % of one of them.', …
 */
export function reachSentences(reach: Reach, say: Say): readonly string[] {
  const { smallest, largest, worst, widest, wish } = reach;
  if (smallest === null || largest === null || worst === null) return [en`Nothing can be built with what the search may use.`];
  const widestToo = widest !== null && !(same(widest.low, worst.low) && same(widest.high, worst.high));
  return [
    en`${countText(reach)} from ${windowText(wish, say)} by volume; ${withinText(reach, say)}.`,
    `${en`Any target in it is met to ${offText(worst.offRatio, say)} or better.`} ${worstText(worst, say)}`,
    ...(widestToo
      ? [
          en`The widest gap between two ratios is ${gapText(widest, say)}: a target of ${ratioInWords(widest.worstTarget, say)} is ${offText(widest.offRatio, say)} off.`,
        ]
      : []),
    en`Of all that can be built, the smallest is ${ratioInWords(smallest.aPerB, say)}, the largest ${ratioInWords(largest.aPerB, say)}.`,
  ];
}

export function countText({ distinct }: Reach): string {
  if (distinct === null) return en`More ratios than can be listed`;
  return plural(distinct)`${distinct} ratio|${distinct} ratios`;
}

const same = (a: Fraction | null, b: Fraction | null): boolean => (a === null || b === null ? a === b : a.equals(b));

/** From one neighbour to the other. */
export function gapText({ low, high }: ReachGap, say: Say): string {
  if (low === null) return high === null ? '' : en`below ${fixed(high, 4, say)}, the smallest`;
  return high === null ? en`above ${fixed(low, 4, say)}, the largest` : `${fixed(low, 4, say)} – ${fixed(high, 4, say)}`;
}

function withinText({ covered, wish }: Reach, say: Say): string {
  const tolerance = toleranceText(wish.tolerance, say);
  if (covered === null) return en`gaps wider than ${tolerance} are too many to be looked for`;
  return en`${coveredText(covered, say)} of that window lies within ${tolerance} of one of them`;
}

/** How many gaps are wider than the tolerance; where they are too many to be looked for, that. */
export const gapCountText = ({ gaps, moreGaps }: Reach): string => {
  if (moreGaps === null) return en`too many gaps to be looked for, wider`;
  const count = gaps.length + moreGaps;
  return count === 0 ? en`no gap wider` : plural(count)`${count} gap wider|${count} gaps wider`;
};

/** Where a target lies, by its neighbours, within a sentence. */
export const placeText = (gap: ReachGap, say: Say): string =>
  gap.low === null || gap.high === null ? gapText(gap, say) : en`between ${fixed(gap.low, 4, say)} and ${fixed(gap.high, 4, say)}`;

/** The worst target with what comes nearest to it, and on which side that errs. */
function worstText({ low, high, worstTarget, offRatio }: ReachGap, say: Say): string {
  const target = ratioInWords(worstTarget, say);
  if (offRatio.n === 0n) return en`The worst is ${target}, which can be made exactly.`;
  const off = offText(offRatio, say);
  const errs = (neighbour: Fraction) => worstTarget.div(neighbour).sub(ONE).abs().equals(offRatio);
  // Below a target there is less A for as much B.
  const rich = low !== null && errs(low) ? en`${ratioInWords(low, say)} makes ${off} B-rich` : null;
  const lean = high !== null && errs(high) ? en`${ratioInWords(high, say)} makes ${off} B-lean` : null;
  const makes = [rich, lean].filter((words) => words !== null).join(en` and `);
  if (low === null) return en`The worst is ${target}, which ${makes}; nothing lower can be built.`;
  return high === null
    ? en`The worst is ${target}, which ${makes}; nothing higher can be built.`
    : en`The worst is ${target}, which ${makes}.`;
}
