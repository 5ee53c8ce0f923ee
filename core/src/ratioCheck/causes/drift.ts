import { en } from '../../en.ts';
import { SIDES, type SideName } from '../../plan.ts';
import { type Fraction, float } from '../../ratio.ts';
import { amountsOf } from '../amounts.ts';
import { quarterToLimit } from '../before.ts';
import { scaleVariance } from '../pairs.ts';
import { type Cause, likely, notLookedFor, ruledOut } from './cause.ts';
import { caughtText, shareText } from './words.ts';

const FEWEST = 3;
/** Of what the scale alone may do, so that its steps are not taken for a drift. */
const SIGMAS = 4;

interface Drift {
  readonly side: SideName;
  readonly readings: readonly Fraction[];
  /** Of the first. */
  readonly share: Fraction;
}

/** One side that gives less, or more, from catch to catch. */
export const drift: Cause = {
  id: 'cause.drift',
  title: en`One side drifting`,
  within: en`one side drifting`,
  source: en`our choice: each catch on the same side of the one before, in all by more than a quarter of the way to the nearer limit`,
  why: en`A side that gives less and less is drawing air or running short; one that gives more and more is still filling or clearing.`,
  judge({ evaluation: { input, weighed } }) {
    const { limits } = input.terms;
    const amounts = amountsOf(input);
    if (amounts.numbers.length < FEWEST) return notLookedFor(en`A drift shows from three catches on.`);
    const quarter = limits && quarterToLimit(limits);
    if (!quarter) return notLookedFor(en`The material has no limits, so nothing says how far a side may drift.`);
    const byScale = weighed ? SIGMAS * Math.sqrt(2 * scaleVariance(input.scale).step) : 0;
    const found = SIDES.flatMap((side): readonly Drift[] => {
      const readings = amounts.of[side];
      const [first, last] = [readings[0], readings.at(-1)];
      if (first === undefined || last === undefined) return [];
      const steps = readings.slice(1).map((one, index) => one.compare(readings[index] ?? one));
      const oneWay = steps.every((step) => step < 0) || steps.every((step) => step > 0);
      const share = last.sub(first).div(first);
      const tells = share.abs().compare(quarter) > 0 && float(last.sub(first).abs()) > byScale;
      return oneWay && tells ? [{ side, readings, share }] : [];
    });
    if (found.length === 0) return ruledOut(() => en`Neither side drifts: none gives less, or more, from each catch to the next.`);
    return likely((say) =>
      found
        .map(({ side, readings, share }) => {
          const list = readings.map((one) => caughtText(one, weighed, say)).join(', ');
          const falls = share.s < 0n;
          const all = shareText(share.abs(), say);
          return falls
            ? en`Side ${side} gives less from catch to catch: ${list}, ${all} in all. Look for air drawn in, a tank or filter running short, a valve that does not close.`
            : en`Side ${side} gives more from catch to catch: ${list}, ${all} in all. It is still filling, warming or clearing: run it on, then catch again.`;
        })
        .join(' '),
    );
  },
};
