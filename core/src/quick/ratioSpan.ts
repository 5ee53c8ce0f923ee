import type { RatioSpan } from '../search/index.ts';

/** Whether an option with these turns of the pumps, for one of the motor, may be built: false, it cannot. */
type MayPass = (turnsOfA: number, turnsOfB: number) => boolean;

/** Places at which a range is looked at before its ends are closed in on, and steps of that. */
const PLACES = 1024;
const HALVINGS = 60;
/** As a share: more than the rounding of all that enters. */
const ROOM = 1e-9;

/**
 * The ratios beyond which no option of a set of pumps can be built, where the turns of one pump are always the same.
 *
 * @param passes     whose turns of one pump that pass lie together
 * @param A          turns of pump A for one of the motor, the fewest and the most
 * @param B          the same of pump B
 * @param pumpRatio  displacement of B over that of A
 * @returns B per A; all that the turns make where both vary, or where none was found to pass
 * @source our choice of method: halving between turns that pass and turns that do not
 * @example ratioSpan((a, b) => b <= 16 * a, { low: 1, high: 1 }, { low: 1 / 64, high: 64 }, 1)  // 1/64 to 16, and a thousand-millionth
 */
export function ratioSpan(passes: MayPass, A: RatioSpan, B: RatioSpan, pumpRatio: number): RatioSpan {
  const whole = { low: B.low / A.high, high: B.high / A.low };
  const found =
    A.low === A.high
      ? passing((ratio) => passes(A.low, A.low * ratio), whole)
      : B.low === B.high
        ? passing((ratio) => passes(B.low / ratio, B.low), whole)
        : whole;
  return { low: found.low * pumpRatio * (1 - ROOM), high: found.high * pumpRatio * (1 + ROOM) };
}

/** Where it passes: from one end to the other, or to the first place beyond which does not. */
function passing(passes: (ratio: number) => boolean, { low, high }: RatioSpan): RatioSpan {
  const at = (place: number): number => low * (high / low) ** (place / PLACES);
  const places = Array.from({ length: PLACES + 1 }, (_, place) => place).filter((place) => passes(at(place)));
  const [first, last] = [places[0], places.at(-1)];
  if (first === undefined || last === undefined) return { low, high };
  return {
    low: first === 0 ? low : closedIn(passes, at(first), at(first - 1)),
    high: last === PLACES ? high : closedIn(passes, at(last), at(last + 1)),
  };
}

/** Just beyond the last that passes. */
function closedIn(passes: (ratio: number) => boolean, passed: number, failed: number): number {
  let [inside, outside] = [passed, failed];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (inside + outside) / 2;
    if (passes(middle)) inside = middle;
    else outside = middle;
  }
  return outside;
}
