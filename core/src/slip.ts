import { en } from './en.ts';
import type { Place } from './finding.ts';
import { flowOf } from './flow.ts';
import type { Say } from './format.ts';
import { type Given, known, NOT_GIVEN } from './given.ts';
import type { Build, Plan, SideName } from './plan.ts';
import { Fraction, least, ONE, ZERO } from './ratio.ts';
import { amountText } from './shown.ts';
import { formula, type Input, input, type Worked, work } from './working.ts';

/** Usual clearance between gears and housing [common practice, no source]. */
const USUAL_GAP_m = new Fraction('0.00001');

/** The clearance enters cubed and nobody measures it, so a slip is only ever a band: at half the usual gap, at the gap, at twice of it. */
const GAPS = {
  least: input(en`half of the usual gap`, USUAL_GAP_m.div('2'), 'length'),
  atGap: input(en`usual gap`, USUAL_GAP_m, 'length'),
  most: input(en`twice the usual gap`, USUAL_GAP_m.mul('2'), 'length'),
} as const;

export type SlipBand<Of> = Readonly<Record<keyof typeof GAPS, Of>>;

/** Laminar flow through a flat gap; what the moving gear drags along belongs to the displacement. */
export const gapFlow = formula({
  letter: 'q',
  written: 'w · h^3 · Δp / (12 · μ · L)',
  dimension: 'flow',
  source: en`plane-gap-flow, between walls at rest`,
  of: ({ w, h, Δp, μ, L }: Record<'w' | 'h' | 'Δp' | 'μ' | 'L', Fraction>) => w.mul(h).mul(h).mul(h).mul(Δp).div(μ.mul(L).mul('12')),
});

export const slipOfFlow = formula({
  letter: 'σ',
  written: 'min(q / Q, 1)',
  dimension: 'share',
  source: en`definition; a pump loses no more than it moves`,
  of: ({ q, Q }: Record<'q' | 'Q', Fraction>) => least(q.div(Q), ONE),
});

/** What keeps a slip from being estimated: the first field to fill in, and what is missing in words. */
export interface SlipMissing {
  readonly where: Place;
  readonly words: string;
}

/**
 * What a pump leaks back through its clearances, as a band of flows.
 *
 * @returns not given where the gap, the pressure or the viscosity is not, or where a measured delivery says it better
 * @source laminar flow through a flat gap, `gapFlow`; the gap itself is common practice, no source
 * @example 20 mm across and 3 mm along the leak, 10 bar, 1 Pa s  // 0.03 cc/min at 10 µm
 */
export function slipFlow(plan: Plan, { pumps }: Pick<Build, 'pumps'>, side: SideName): Given<SlipBand<Worked<Fraction>>> {
  const { gear, delivery } = pumps[side];
  const { pressure_Pa, viscosity_Pa_s } = plan.sides[side];
  if (delivery.known || !gear.known || !pressure_Pa.known || !viscosity_Pa_s.known) return NOT_GIVEN;
  const { gapWidth_m, gapLength_m } = gear.value;
  if (!gapWidth_m.known || !gapLength_m.known) return NOT_GIVEN;
  const put = {
    w: input(en`width of the gap of pump ${side}`, gapWidth_m.value, 'length'),
    Δp: input(en`pressure across pump ${side}`, pressure_Pa.value, 'pressure'),
    μ: input(en`viscosity of ${side} as run`, viscosity_Pa_s.value, 'viscosity'),
    L: input(en`length of the gap of pump ${side}`, gapLength_m.value, 'length'),
  };
  return known(overBand((h) => work(gapFlow, en`slip of pump ${side} at ${h.what}`, { ...put, h })));
}

/**
 * The same as shares of what the pump moves, at the setting for the flow wanted; where none is wanted at the least flow that the dial
 * allows, where a slip weighs most.
 *
 * @returns shares from 0 to 1; not given as `slipFlow`, or where that flow is none
 * @source as `slipFlow`
 * @example equal pumps at one speed and pressure, 800 and 200 mPa s  // B slips four times as much as A
 */
export function slipShare(plan: Plan, build: Build, side: SideName): Given<SlipBand<Worked<Fraction>>> {
  const slip = slipFlow(plan, build, side);
  const moved = slip.known ? movedFlow(plan, build, side) : null;
  if (!slip.known || moved === null) return NOT_GIVEN;
  return known(overBand((h, key) => work(slipOfFlow, en`slip share of pump ${side} at ${h.what}`, { q: slip.value[key], Q: moved })));
}

const LEAST_SHOWN = new Fraction('0.0001');

/** A share of slip as it is read: a band never begins at a nothing that is only rounded. */
export const slipText = (share: Fraction, say: Say): string =>
  share.compare(LEAST_SHOWN) < 0 ? en`under ${amountText(LEAST_SHOWN, 'share', say)}` : amountText(share, 'share', say);

/** What stands against an estimate of the slip; null where one is made. */
export function slipMissing(plan: Plan, build: Build, side: SideName): SlipMissing | null {
  const { gear, place } = build.pumps[side];
  const { pressure_Pa, viscosity_Pa_s, place: atSide } = plan.sides[side];
  const gap = (field: 'gapWidth' | 'gapLength'): Place => (gear.known ? [...gear.value.place, field] : [...place, 'gear']);
  const inputs: readonly (readonly [boolean, string, Place])[] = [
    [gear.known && gear.value.gapWidth_m.known, en`the width of its gap`, gap('gapWidth')],
    [gear.known && gear.value.gapLength_m.known, en`the length of its gap`, gap('gapLength')],
    [pressure_Pa.known, en`the pressure`, [...atSide, 'pressure']],
    [viscosity_Pa_s.known, en`the viscosity of ${side}`, [...plan.mix.place, side, 'viscosity']],
  ];
  const missing = inputs.filter(([given]) => !given);
  const [first] = missing;
  if (first !== undefined) return { where: first[2], words: missing.map(([, words]) => words).join(', ') };
  return movedFlow(plan, build, side) === null
    ? { where: [...plan.motor.place, 'usable'], words: en`a wanted flow or the least of the usable range` }
    : null;
}

/** Null where the dial may stand at nothing and no flow is wanted, or where nothing is left of the dial. */
function movedFlow(plan: Plan, build: Build, side: SideName): Worked<Fraction> | null {
  const { ends, setting } = flowOf(plan, build);
  const flow = (setting ?? ends?.from)?.flow[side];
  return flow === undefined || flow.value.equals(ZERO) ? null : flow;
}

function overBand<Of>(of: (h: Input<Fraction>, key: keyof typeof GAPS) => Of): SlipBand<Of> {
  return { least: of(GAPS.least, 'least'), atGap: of(GAPS.atGap, 'atGap'), most: of(GAPS.most, 'most') };
}
