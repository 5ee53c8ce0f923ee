import type { OffRatioLimits } from '../mixRatio.ts';
import { float } from '../ratio.ts';
import type { Interval } from './model.ts';

/** Pass: the whole interval inside the limits; fail: all of it outside; otherwise nothing is proven. */
export type CheckVerdict = 'pass' | 'fail' | 'not proven' | 'no limits';

/** Why catches do not agree among themselves. */
export type Unstable = 'range wider than the limits are apart' | 'interval wider than half of that';

/**
 * The decision rule. The interval already holds what is not known, so no second guard band is put on top.
 *
 * @param interval  of the off-ratio; null where catches give none
 * @source our choice, after ISO 14253-1 and JCGM 106 (from memory): proven inside, proven outside, or neither; limits are inclusive
 * @example verdictOf({ from: −0.0066, to: −0.0034 }, { low: −1/35, high: 1/35 })  // 'pass'
 */
export function verdictOf(interval: Interval | null, limits: OffRatioLimits | null): CheckVerdict {
  if (limits === null) return 'no limits';
  if (interval === null) return 'not proven';
  const [low, high] = [float(limits.low), float(limits.high)];
  if (low <= interval.from && interval.to <= high) return 'pass';
  if (interval.to < low || high < interval.from) return 'fail';
  return 'not proven';
}

/**
 * Whether catches disagree by more than the limits leave room for. Beside the verdict, not in it; but no sprocket is proposed from such.
 *
 * @param range  largest less smallest off-ratio of the catches, from 0
 * @source our choice
 * @example unstableBy(0.0196, { from: −0.0455, to: 0.0038 }, { low: −1/35, high: 1/35 })  // 'interval wider than half of that'
 */
export function unstableBy(range: number, interval: Interval | null, limits: OffRatioLimits | null): readonly Unstable[] {
  if (limits === null) return [];
  const apart = float(limits.high.sub(limits.low));
  return [
    ...(range > apart ? (['range wider than the limits are apart'] as const) : []),
    ...(interval !== null && interval.to - interval.from > apart / 2 ? (['interval wider than half of that'] as const) : []),
  ];
}
