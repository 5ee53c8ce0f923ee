import type { OffRatioLimits } from '../mixRatio.ts';
import { float } from '../ratio.ts';
import type { BySide } from './model.ts';
import { enlarged, type Pairs, ratioInterval } from './pairs.ts';
import { type CheckVerdict, type Unstable, verdictOf } from './verdict.ts';

/** What would settle a check that is not proven. */
export type Further =
  /** One catch alone does not tell how catches spread. */
  | { readonly kind: 'a second catch' }
  /** The catches do not agree: the cause comes before any further catch. */
  | { readonly kind: 'find the cause' }
  /** So many more that agree as these do; `toward` the verdict they would give. */
  | { readonly kind: 'more catches'; readonly catches: number; readonly toward: 'pass' | 'fail' }
  /** As many catches as these, each of at least so much: the scale's steps stand in the way. kg, or m³ where nothing was weighed. */
  | { readonly kind: 'larger catches'; readonly amount: BySide<number>; readonly toward: 'pass' | 'fail' }
  /** The mean lies so near a limit that not even many more tell. */
  | { readonly kind: 'too near the limit' };

/** More than this many further catches nobody makes. */
const MOST_FURTHER = 20;
/** A catch is enlarged by no more than this. */
const MOST_TIMES = 64;

/**
 * What settles it, taking further catches to spread as these do about the same mean.
 *
 * @param wanted  B per A on the basis of the catches
 * @returns null where the verdict is pass or fail, or where there are no limits
 * @source our choice; arithmetic on Fieller's interval
 */
export function furtherOf(
  pairs: Pairs,
  { wanted, limits, confidence }: { readonly wanted: number; readonly limits: OffRatioLimits | null; readonly confidence: number },
  { verdict, unstable }: { readonly verdict: CheckVerdict; readonly unstable: readonly Unstable[] },
): Further | null {
  if (verdict !== 'not proven' || limits === null) return null;
  if (pairs.spread === null) return { kind: 'a second catch' };
  const settled = (of: Pairs, count: number): 'pass' | 'fail' | null => {
    const interval = ratioInterval(of, confidence, count);
    if (interval === null) return null;
    const off = { from: interval.from.value / wanted - 1, to: interval.to.value / wanted - 1 };
    const then = verdictOf(off, limits);
    return then === 'pass' || then === 'fail' ? then : null;
  };
  const agree = unstable.length === 0;
  for (let catches = 1; agree && catches <= MOST_FURTHER; catches++) {
    const toward = settled(pairs, pairs.count + catches);
    if (toward !== null) return { kind: 'more catches', catches, toward };
  }
  // where catches only seem to disagree because the scale is coarse, larger ones settle it
  for (let times = 2; times <= MOST_TIMES; times++) {
    const larger = enlarged(pairs, times);
    const toward = settled(larger, pairs.count);
    if (toward === null) continue;
    const { A, B } = larger.mean;
    return { kind: 'larger catches', amount: { A: float(A), B: float(B) }, toward };
  }
  return { kind: agree ? 'too near the limit' : 'find the cause' };
}
