import { choicesOf } from '../choices.ts';
import type { Plan } from '../plan.ts';
import { type Fraction, least, ONE, ZERO } from '../ratio.ts';
import { slideOf } from '../search/index.ts';

/** Every wanted ratio from `low` to `high`, both in it, is to be within the tolerance. */
export interface RatioWindow {
  /** B per A by volume, as run, > 0. */
  readonly low: Fraction;
  readonly high: Fraction;
  /** Share of B per A, above 0 and below 1. */
  readonly tolerance: Fraction;
}

/** So many ratios are looked at around each place, before more are. */
const FIRST_LOOK = 8;

/**
 * Wanted ratios of a window that nothing comes close enough to, one in each gap, ascending. Goes from each buildable ratio to the
 * largest that still reaches back to it: where there is none, a gap begins.
 *
 * @param keep how many are wanted
 * @returns none where the whole window is within the tolerance
 * @source a ratio r serves the wanted ones from r / (1 + tolerance) to r / (1 - tolerance)
 */
export function openRatios(plan: Plan, { low, high, tolerance }: RatioWindow, keep: number): readonly Fraction[] {
  const choices = choicesOf(plan);
  const rules = choices.rules(0);
  const slide = slideOf({ ...choices.problem, limits: null });
  /** The buildable ratio nearest to one on one side of it, no further than the end. */
  const nearest = (to: Fraction, end: Fraction): Fraction | null => {
    const side = end.compare(to);
    for (let keep = FIRST_LOOK; ; keep *= 4) {
      const found = slide?.at(to, keep) ?? [];
      for (const { ratio, options } of found) {
        const order = ratio.compare(to);
        if (order * side >= 0 && ratio.compare(end) * side <= 0 && options(rules, 1).length > 0) return ratio;
      }
      const last = found.at(-1);
      if (last === undefined || found.length < keep || last.offRatio.abs().compare(end.div(to).sub(ONE).abs()) > 0) return null;
    }
  };
  const up = ONE.add(tolerance);
  const down = ONE.sub(tolerance);
  const open: Fraction[] = [];
  let served: Fraction | null = null;
  /** All of the window below it is served or told of. */
  let from = low;
  while (open.length < keep) {
    const reach = from.mul(up);
    const next = nearest(reach, from.mul(down));
    if (next !== null && (served === null || next.compare(served) > 0)) {
      served = next;
    } else {
      const above = nearest(reach, high.mul(2));
      const middle = above === null ? high : above.add(served ?? ZERO).div(2);
      // before the first ratio nothing serves the low end itself
      open.push(served === null ? low : least(middle, high));
      if (above === null) break;
      served = above;
    }
    from = served.div(down);
    if (from.compare(high) >= 0) break;
  }
  return open;
}
