import { choicesOf } from '../choices.ts';
import type { Plan } from '../plan.ts';
import { type Fraction, least, most, ONE, ratioOf, ZERO } from '../ratio.ts';
import { findOptions } from '../search/index.ts';

/** Every wanted ratio from `low` to `high`, both in it, is to be within the tolerance. */
export interface RatioWindow {
  /** B per A by volume, as run, > 0. */
  readonly low: Fraction;
  readonly high: Fraction;
  /** Share of B per A, above 0 and below 1. */
  readonly tolerance: Fraction;
}

/**
 * Wanted ratios of a window that nothing comes close enough to, one in each gap, ascending. Goes from each buildable ratio to the
 * largest that still reaches back to it: where there is none, a gap begins.
 *
 * @param keep how many are wanted
 * @returns none where the whole window is within the tolerance
 * @source a ratio r serves the wanted ones from r / (1 + tolerance) to r / (1 - tolerance)
 */
export function openRatios(plan: Plan, { low, high, tolerance }: RatioWindow, keep: number): readonly Fraction[] {
  const { problem, ...choices } = choicesOf(plan);
  const rules = choices.rules(0);
  const nearest = (wanted: Fraction, limits: { readonly low: Fraction; readonly high: Fraction }): Fraction | null =>
    findOptions({ ...problem, wanted, limits }, rules, 1, {}, 'inside').options[0]?.ratio ?? null;
  const up = ONE.add(tolerance);
  const down = ONE.sub(tolerance);
  const open: Fraction[] = [];
  let served: Fraction | null = null;
  /** All of the window below it is served or told of. */
  let from = low;
  while (open.length < keep) {
    const reach = from.mul(up);
    const next = nearest(reach, { low: down.div(up).sub(ONE), high: ZERO });
    if (next !== null && (served === null || next.compare(served) > 0)) {
      served = next;
    } else {
      const above = nearest(reach, { low: ZERO, high: most(ZERO, high.mul(ratioOf(2, 1)).div(reach)) });
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
