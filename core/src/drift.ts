import { en } from './en.ts';
import { type Given, known, NOT_GIVEN } from './given.ts';
import { madeOffRatio } from './madeRatio.ts';
import { liesInside } from './mixRatio.ts';
import { type Build, type Plan, SIDES, type SideName } from './plan.ts';
import { type Fraction, ONE, whole, ZERO } from './ratio.ts';
import { slipShare } from './slip.ts';
import { type Lacking, tankExpansion } from './tankExpansion.ts';
import { formula, type Input, input, type Worked, work } from './working.ts';

/** What changes its temperature: one tank alone, or both by as many kelvins. */
const HEATED = ['A', 'B', 'both'] as const;
export type Heated = (typeof HEATED)[number];

export interface DriftPoint {
  /** From the temperature it is run at, in kelvins. */
  readonly step: Input<Fraction>;
  readonly offRatio: Worked<Fraction>;
}

/** The step from the temperature it is run at by which the off-ratio stands exactly at a limit. */
export interface Leaving {
  readonly step: Worked<Fraction>;
  /** The temperature itself; not given where that it is run at is not. */
  readonly at_K: Given<Fraction>;
}

/** How the off-ratio moves with one tank, or both. */
export interface DriftLine {
  readonly heated: Heated;
  /** From the coldest to the hottest. */
  readonly points: readonly DriftPoint[];
  /** Where a build that is inside leaves the limits; null where it never does, where there are none, and for both tanks together. */
  readonly leaves: { readonly low: Leaving | null; readonly high: Leaving | null };
}

export interface Drift {
  readonly offRatio: Input<Fraction>;
  /** Those that can be told. */
  readonly lines: readonly DriftLine[];
  /** What it would take to tell the others. */
  readonly lacking: readonly Lacking[];
}

const aAlone = formula({
  letter: 'eₜ',
  written: '(1 + e) · (1 + γ · t) - 1',
  dimension: 'share',
  source: en`conservation of mass: A that has grown is pumped thinner, so the mix is richer in B`,
  of: ({ e, γ, t }: Record<'e' | 'γ' | 't', Fraction>) =>
    ONE.add(e)
      .mul(ONE.add(γ.mul(t)))
      .sub(ONE),
});

const bAlone = formula({
  letter: 'eₜ',
  written: '(1 + e) / (1 + γ · t) - 1',
  dimension: 'share',
  source: en`conservation of mass: B that has grown is pumped thinner, so the mix is leaner in B`,
  of: ({ e, γ, t }: Record<'e' | 'γ' | 't', Fraction>) =>
    ONE.add(e)
      .div(ONE.add(γ.mul(t)))
      .sub(ONE),
});

const bothTogether = formula({
  letter: 'eₜ',
  written: '(1 + e) · (1 + α · t) / (1 + β · t) - 1',
  dimension: 'share',
  source: en`conservation of mass, both tanks`,
  of: ({ e, α, β, t }: Record<'e' | 'α' | 'β' | 't', Fraction>) =>
    ONE.add(e)
      .mul(ONE.add(α.mul(t)))
      .div(ONE.add(β.mul(t)))
      .sub(ONE),
});

const aReaches = formula({
  letter: 't',
  written: '((1 + g) / (1 + e) - 1) / γ',
  dimension: 'temperatureDifference',
  source: en`the off-ratio with A alone heated, solved for its step`,
  of: ({ g, e, γ }: Record<'g' | 'e' | 'γ', Fraction>) => ONE.add(g).div(ONE.add(e)).sub(ONE).div(γ),
});

const bReaches = formula({
  letter: 't',
  written: '((1 + e) / (1 + g) - 1) / γ',
  dimension: 'temperatureDifference',
  source: en`the off-ratio with B alone heated, solved for its step`,
  of: ({ g, e, γ }: Record<'g' | 'e' | 'γ', Fraction>) => ONE.add(e).div(ONE.add(g)).sub(ONE).div(γ),
});

const perTenPercent = formula({
  letter: 'd',
  written: 'σ / 10',
  dimension: 'share',
  source: en`laminar slip grows with the pressure and with 1 over the viscosity; a small step counts as straight`,
  of: ({ σ }: Record<'σ', Fraction>) => σ.div(whole(10)),
});

/** As far as the drift is looked at, either way. */
export const FURTHEST_K = 10;

/**
 * How the off-ratio of a build moves with the temperature of its tanks, exactly as the liquids grow.
 *
 * @returns points for every kelvin up to 10 on either side of the temperatures it is run at; a tank whose expansion is not given has none
 * @source definition of volume expansion and conservation of mass
 * @example driftOf(E12 on Bench 1 of the demo, 23 driving 25)  // A 10 K hotter: −0.08 % becomes +0.54 %
 */
export function driftOf(plan: Plan, build: Build): Drift {
  const e = madeOffRatio(plan, build);
  const grown = { A: tankExpansion(plan.mix, 'A'), B: tankExpansion(plan.mix, 'B') };
  const lines = HEATED.flatMap((heated): readonly DriftLine[] => {
    if (heated !== 'both') return grown[heated].known ? [aloneLine(plan, heated, e, grown[heated].value)] : [];
    return grown.A.known && grown.B.known ? [togetherLine(e, grown.A.value, grown.B.value)] : [];
  });
  const lacking = SIDES.flatMap((side) => {
    const γ = grown[side];
    return γ.known ? [] : γ.lacking;
  });
  return { offRatio: e, lines, lacking };
}

const ALONE = { A: [aAlone, aReaches], B: [bAlone, bReaches] } as const;

function aloneLine({ mix }: Plan, side: SideName, e: Input<Fraction>, γ: Input<Fraction>): DriftLine {
  const [moved, reached] = ALONE[side];
  const points = steps([γ]).map((t) => ({ step: t, offRatio: work(moved, en`off-ratio, ${side} alone ${wayOf(t)}`, { e, γ, t }) }));
  const { limits, limitsWorked } = mix;
  if (limits === null || limitsWorked === null || !liesInside(e.value, limits) || γ.value.equals(ZERO))
    return { heated: side, points, leaves: NOWHERE };
  const leaving = (end: 'low' | 'high'): Leaving => {
    const step = work(reached, end === 'low' ? en`step of ${side} to the low limit` : en`step of ${side} to the high limit`, {
      g: limitsWorked[end],
      e,
      γ,
    });
    const runAt_K = mix.runAt_K[side];
    return { step, at_K: runAt_K.known ? known(runAt_K.value.add(step.value)) : NOT_GIVEN };
  };
  return { heated: side, points, leaves: { low: leaving('low'), high: leaving('high') } };
}

function togetherLine(e: Input<Fraction>, α: Input<Fraction>, β: Input<Fraction>): DriftLine {
  const points = steps([α, β]).map((t) => ({
    step: t,
    offRatio: work(bothTogether, en`off-ratio, both tanks ${wayOf(t)}`, { e, α, β, t }),
  }));
  return { heated: 'both', points, leaves: NOWHERE };
}

const NOWHERE = { low: null, high: null } as const;

/** So that what is hotter and what is colder do not share a name. */
const wayOf = ({ value }: Input<Fraction>): string => (value.equals(ZERO) ? en`as run` : value.s > 0n ? en`hotter` : en`colder`);

/** Whole kelvins either way, as far as the liquids keep a volume. */
function steps(growths: readonly Input<Fraction>[]): readonly Input<Fraction>[] {
  return Array.from({ length: 2 * FURTHEST_K + 1 }, (_, index) => whole(index - FURTHEST_K))
    .filter((step_K) => growths.every(({ value }) => ONE.add(value.mul(step_K)).compare(ZERO) > 0))
    .map((step_K) => input(en`step of temperature`, step_K, 'temperatureDifference'));
}

/**
 * How far the off-ratio moves where the pressure of a side rises, or its viscosity falls, by a tenth.
 *
 * @returns a share without sign, by the most that is estimated; not given where no slip is
 * @source laminar slip is proportional to pressure over viscosity
 * @example slipDrift(plan, build, 'A')  // a slip of 1.2 % moves it by 0.12 % to B-rich
 */
export function slipDrift(plan: Plan, build: Build, side: SideName): Given<Worked<Fraction>> {
  const leak = slipShare(plan, build, side);
  if (!leak.known) return NOT_GIVEN;
  return known(work(perTenPercent, en`slip of ${side} for a tenth more pressure or less viscosity`, { σ: leak.value.most }));
}
