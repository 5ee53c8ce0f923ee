import { en } from './en.ts';
import type { Place } from './finding.ts';
import { fixed, type Say } from './format.ts';
import { type Build, type Plan, SIDES } from './plan.ts';
import { type Fraction, most, ONE, whole, ZERO } from './ratio.ts';
import { trainTurns } from './train.ts';
import { formula, type Input, input, work } from './working.ts';

/** One end of what the dial may be set to, as a share of full speed, and who asks for it. */
export interface DialEnd {
  readonly share: Fraction;
  readonly whose: string;
  readonly where: Place;
}

export interface DialRange {
  readonly from: DialEnd;
  readonly to: DialEnd;
}

/** The usable range of the motor; all of the dial where it is not given. */
export function motorRange({ motor }: Plan): DialRange {
  const { from, to } = motor.usable.known ? motor.usable.value : { from: ZERO, to: ONE };
  const end = (share: Fraction): DialEnd => ({ share, whose: en`the motor`, where: motor.place });
  return { from: end(from), to: end(to) };
}

/** What the speed limits of the pumps leave of that range; nothing is left where `from` lies above `to`. */
export function dialRange(plan: Plan, { pumps, teeth }: Build): DialRange {
  let { from, to } = motorRange(plan);
  for (const side of SIDES) {
    const { speedFrom_rev_per_s, speedTo_rev_per_s, place } = pumps[side];
    const full_rev_per_s = plan.motor.speed_rev_per_s.mul(trainTurns(plan, side, teeth));
    const end = (speed_rev_per_s: Fraction, field: string): DialEnd => ({
      share: speed_rev_per_s.div(full_rev_per_s),
      whose: en`pump ${side}`,
      where: [...place, field],
    });
    if (speedFrom_rev_per_s.known) from = higher(from, end(speedFrom_rev_per_s.value, 'speedFrom'));
    if (speedTo_rev_per_s.known) to = lower(to, end(speedTo_rev_per_s.value, 'speedTo'));
  }
  return { from, to };
}

const higher = (a: DialEnd, b: DialEnd): DialEnd => (b.share.compare(a.share) > 0 ? b : a);
const lower = (a: DialEnd, b: DialEnd): DialEnd => (b.share.compare(a.share) < 0 ? b : a);

/** What a setting at the nearest step is called. */
export const DIAL = en`dial`;

const nearestStep = formula({
  letter: 's',
  written: 'round(w / d) · d',
  dimension: 'share',
  source: en`our choice: the nearest step of the dial, halves away from zero`,
  of: ({ w, d }: Record<'w' | 'd', Fraction>) => w.div(d).add('1/2').floor().mul(d),
});

/**
 * Where the dial is set for a wanted share of full speed: the nearest step of the dial inside the range.
 *
 * @param wanted  share of full speed, above 0
 * @param range   not empty
 * @returns the setting as a share; where the range has no step, or the dial none, the nearest end or the wanted share itself
 * @source our choice: halves away from zero, kept inside the usable range
 * @example dialSetting(63.417 %, 20 to 100 %, 0.5 %)  // 63.5 %
 */
export function dialSetting(wanted: Input<Fraction>, { from, to }: DialRange, step: Fraction | null): Input<Fraction> {
  if (wanted.value.compare(from.share) < 0)
    return input(en`dial at the least that ${from.whose} allows`, inside(from, to, step, 'up'), 'share');
  if (wanted.value.compare(to.share) > 0)
    return input(en`dial at the most that ${to.whose} allows`, inside(from, to, step, 'down'), 'share');
  if (step === null) return { ...wanted, what: en`dial, to no step` };
  const nearest = work(nearestStep, DIAL, { w: wanted, d: input(en`step of the dial`, step, 'share') });
  if (nearest.value.compare(from.share) < 0 || nearest.value.equals(ZERO))
    return input(en`dial at its first step in the range`, inside(from, to, step, 'up'), 'share');
  if (nearest.value.compare(to.share) > 0) return input(en`dial at its last step in the range`, inside(from, to, step, 'down'), 'share');
  return nearest;
}

/** The first or last step inside a range; the end itself where no step lies inside. Nothing flows at 0, so that is no setting. */
function inside(from: DialEnd, to: DialEnd, step: Fraction | null, way: 'up' | 'down'): Fraction {
  const end = way === 'up' && from.share.compare(ZERO) > 0 ? from.share : to.share;
  if (step === null) return end;
  const on = way === 'up' ? most(from.share.div(step).ceil(), ONE).mul(step) : to.share.div(step).floor().mul(step);
  return on.compare(ZERO) > 0 && on.compare(from.share) >= 0 && on.compare(to.share) <= 0 ? on : end;
}

/** Places of per cent in which a dial may be set. */
const PLACES = [1, 2, 3, 4] as const;

/**
 * A setting of the dial in per cent, with as many places as its step asks for; one place where it falls on no step.
 *
 * @param share  of full speed
 * @source our choice
 * @example dialText(new Fraction('0.6325'), { decimal: '.', system: 'metric' })  // '63.25 %'
 */
export function dialText(share: Fraction, say: Say): string {
  const percent = percentOf(share);
  const places = PLACES.find((count) => percent.mul(whole(10 ** count)).d === 1n) ?? 1;
  return `${fixed(percent, places, say)}\u00A0%`;
}

/** A share as people set it, in per cent. */
export const percentOf = (share: Fraction): Fraction => share.mul(whole(100));
