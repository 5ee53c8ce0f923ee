import { en } from '../../en.ts';
import { float } from '../../ratio.ts';
import { type Cause, likely, notLookedFor, ruledOut } from './cause.ts';
import { shareText } from './words.ts';

const LOOK_FOR = en`Look for air, a starving or blocked side, a valve that sticks, and catch again. No sprocket is proposed from such catches.`;

const rangeText = (range: string, apart: string, width: string | null): string =>
  width === null
    ? en`The catches do not agree: they range over ${range}, and the limits lie ${apart} apart.`
    : en`The catches do not agree: they range over ${range}, the interval is ${width} wide, and the limits lie ${apart} apart.`;

/** Catches that do not agree have a cause of their own, and it comes before every other. */
export const agree: Cause = {
  id: 'cause.agree',
  title: en`Catches that disagree`,
  within: en`catches that disagree`,
  source: en`our choice: the range against the width between the limits, the interval against half of it`,
  why: en`The mean of catches that do not agree is the ratio of no batch: whoever changes sprockets by it changes them for nothing.`,
  judge({ evaluation: { input, counted, range, interval, unstable } }) {
    const { limits } = input.terms;
    if (counted.length < 2) return notLookedFor(en`One catch does not tell whether catches agree; make a second.`);
    if (limits === null) return notLookedFor(en`The material has no limits, so nothing says how far catches may differ.`);
    const apart = limits.high.sub(limits.low);
    const width = interval === null ? null : interval.to.value - interval.from.value;
    return unstable.length > 0
      ? likely(
          (say) => `${rangeText(shareText(range, say), shareText(apart, say), width === null ? null : shareText(width, say))} ${LOOK_FOR}`,
        )
      : ruledOut(
          (say) =>
            en`The catches agree: they range over ${shareText(range, say)}, the limits lie ${shareText(apart, say)} apart; the interval is ${shareText(width ?? 0, say)} wide, no more than half of that, ${shareText(float(apart) / 2, say)}.`,
        );
  },
};
