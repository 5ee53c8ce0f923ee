import type { Place } from './finding.ts';
import { type OffRatioLimits, offRatioOf } from './mixRatio.ts';
import { type Build, type Mix, type Plan, type Pump, SIDES, type SideName } from './plan.ts';
import { type Fraction, most, ONE, ZERO } from './ratio.ts';
import { slipShare } from './slip.ts';
import { rootSumSquareOf, sumOf } from './sums.ts';
import { type Lacking, tankExpansion } from './tankExpansion.ts';
import { madeBPerA } from './train.ts';
import { formula, type Input, input, type Worked, work } from './working.ts';

/** One thing that is not known exactly, as a share of off-ratio; slip acts one way only. */
export interface Contribution {
  /** Stable, as `pumpA`, `densityB`, `temperatureA`, `slipB`. */
  readonly id: string;
  readonly kind: 'pump' | 'delivery' | 'density' | 'temperature' | 'slip';
  readonly what: string;
  readonly side: SideName;
  readonly place: Place;
  readonly way: 'either' | 'B-lean' | 'B-rich';
  readonly share: Input<Fraction>;
}

/** The verdict by the worst case; both ends of the limits count as inside. */
export type Verdict = 'inside with margin' | 'inside, margin not known' | 'inside only nominally' | 'outside';

/** How far off a build may be, beside what its teeth and displacements say. */
export interface Budget {
  readonly contributions: readonly Contribution[];
  /** Contributions of which something is not given; slip is none of them. */
  readonly lacking: readonly Lacking[];
  /** Sides whose slip is neither estimated nor part of a measured delivery. */
  readonly slipNotEstimated: readonly SideName[];
  /** By teeth and displacements, and by the deliveries where the ratio counts them. */
  readonly offRatio: Worked<Fraction>;
  /** The same with every delivery that was measured: the middle of what is to be expected. */
  readonly expected: Worked<Fraction>;
  /** Of what is known, without slip: all of it the same way. */
  readonly worst: Worked<Fraction>;
  /** The same as it is likely to add up. */
  readonly likely: Worked<number>;
  /** Off-ratio at both ends of the worst case, slip included. */
  readonly from: Worked<Fraction>;
  readonly to: Worked<Fraction>;
  /** Null where the material has no limits. */
  readonly verdict: Verdict | null;
}

const ofDelivery = formula({
  letter: 'u',
  written: 'w / η',
  dimension: 'share',
  source: 'definition: an error over what it is an error of',
  of: ({ w, η }: Record<'w' | 'η', Fraction>) => w.div(η),
});

const ofDensity = formula({
  letter: 'u',
  written: 'v · w',
  dimension: 'share',
  source: 'conservation of mass: a liquid that is denser by a share fills its volume by that share less',
  of: ({ v, w }: Record<'v' | 'w', Fraction>) => v.mul(w),
});

const ofTemperature = formula({
  letter: 'u',
  written: 'γ · t',
  dimension: 'share',
  source: 'definition of volume expansion',
  of: ({ γ, t }: Record<'γ' | 't', Fraction>) => γ.mul(t),
});

const asDelivered = formula({
  letter: 'e',
  written: '(1 + n) · b / a - 1',
  dimension: 'share',
  source: 'definition of volumetric efficiency: a pump makes that share of its displacement',
  of: ({ n, a, b }: Record<'n' | 'a' | 'b', Fraction>) => ONE.add(n).mul(b).div(a).sub(ONE),
});

const leastOff = formula({
  letter: 'e₁',
  written: 'e - U',
  dimension: 'share',
  source: 'contributions are small and relative, so they add',
  of: ({ e, U }: Record<'e' | 'U', Fraction>) => e.sub(U),
});

const mostOff = formula({
  letter: 'e₂',
  written: 'e + U',
  dimension: 'share',
  source: 'contributions are small and relative, so they add',
  of: ({ e, U }: Record<'e' | 'U', Fraction>) => e.add(U),
});

/**
 * Off-ratio budget of a build: what may be off beside the teeth, the worst case (all the same way), the likely case (root of the sum of
 * squares, each ± taken with the same confidence), and the verdict by the worst case against the limits.
 *
 * A delivery is measured against the nominal displacement, so it holds the pump's tolerance and its slip already: its own uncertainty
 * takes the place of both, and where the ratio is counted without it, it moves the middle of the range. Densities count only where the ratio is by weight and rests on them; the temperature of a tank counts on
 * either basis. Slip widens only the worst case, from no leak to the most that is estimated, each side by itself.
 *
 * @returns exact but for the likely case
 * @source arithmetic for the worst case; gum 5.1.2 for the likely one, 5.2.2 note 1 for liquids that stand at one temperature
 * @example budgetOf(E12 on Bench 1 of the demo, 23 driving 25)  // worst ±1.68 %, likely ±0.79 %, −1.76 to +1.61 %, inside with margin
 */
export function budgetOf(plan: Plan, build: Build): Budget {
  const parts = SIDES.flatMap((side) => [ofPump(side, build.pumps[side]), ...densitiesOf(plan.mix, side), temperatureOf(plan.mix, side)]);
  const slips = SIDES.map((side) => slipOf(plan, build, side));
  const either = parts.flatMap(({ contributions }) => contributions);
  const slip = slips.flatMap((one) => (one.contribution === null ? [] : [one.contribution]));
  const lacking = parts.flatMap((part) => part.lacking);
  const offRatio = builtOffRatio(plan, build);
  const e = expectedOf(offRatio, build);
  const end = (way: 'B-lean' | 'B-rich') => {
    const oneWay = slip.filter((one) => one.way === way);
    return sum(`worst case to ${way}`, [...either, ...oneWay]);
  };
  const from = work(leastOff, 'off-ratio, most B-lean', { e, U: end('B-lean') });
  const to = work(mostOff, 'off-ratio, most B-rich', { e, U: end('B-rich') });
  return {
    contributions: [...either, ...slip],
    lacking,
    slipNotEstimated: slips.flatMap((one) => (one.isLacking ? [one.side] : [])),
    offRatio,
    expected: e,
    worst: sum('worst case', either),
    likely: rootSumSquareOf({
      ...SUMS,
      what: 'likely',
      letter: 'u',
      source: 'gum 5.1.2, equation 10',
      terms: either.map(({ share }) => share),
    }),
    from,
    to,
    verdict: verdictOf(offRatio.value, from.value, to.value, plan.mix.limits, lacking.length > 0),
  };
}

/** The off-ratio of a build before anything that is not known exactly. */
export const builtOffRatio = (plan: Plan, { pumps, teeth }: Build): Worked<Fraction> =>
  work(offRatioOf, 'off-ratio', {
    m: input('B per A made, by volume', madeBPerA(plan, pumps, teeth), 'number'),
    w: plan.mix.wanted,
  });

/** A delivery that the ratio does not count yet moves what is to be expected. */
function expectedOf(n: Worked<Fraction>, { pumps }: Build): Worked<Fraction> {
  const uncounted = ({ delivery, asMeasured }: Pump): Fraction => (delivery.known && !asMeasured ? delivery.value.share : ONE);
  const [a, b] = [uncounted(pumps.A), uncounted(pumps.B)];
  if (a.equals(ONE) && b.equals(ONE)) return n;
  const delivery = (side: SideName, share: Fraction) => input(`delivery of pump ${side} that the ratio leaves out`, share, 'share');
  return work(asDelivered, 'off-ratio with the deliveries as measured', { n, a: delivery('A', a), b: delivery('B', b) });
}

const SUMS = { of: 'u', dimension: 'share' } as const;
const sum = (what: string, contributions: readonly Contribution[]): Worked<Fraction> =>
  sumOf({ ...SUMS, what, letter: 'U', source: 'arithmetic: all the same way', terms: contributions.map(({ share }) => share) });

/** Both limits count as inside; compared exactly. */
export const liesInside = (e: Fraction, limits: OffRatioLimits): boolean => limits.low.compare(e) <= 0 && e.compare(limits.high) <= 0;

function verdictOf(e: Fraction, from: Fraction, to: Fraction, limits: OffRatioLimits | null, isLacking: boolean): Verdict | null {
  if (limits === null) return null;
  if (!liesInside(e, limits)) return 'outside';
  if (!liesInside(from, limits) || !liesInside(to, limits)) return 'inside only nominally';
  return isLacking ? 'inside, margin not known' : 'inside with margin';
}

interface Part {
  readonly contributions: readonly Contribution[];
  readonly lacking: readonly Lacking[];
}

const NONE: Part = { contributions: [], lacking: [] };
const given = (contribution: Omit<Contribution, 'way'>): Part => ({ contributions: [{ ...contribution, way: 'either' }], lacking: [] });
const notGiven = (...lacking: readonly Lacking[]): Part => ({ contributions: [], lacking });

function ofPump(side: SideName, { place, tolerance, delivery }: Pump): Part {
  if (!delivery.known) {
    const what = `the tolerance of pump ${side}`;
    const where = [...place, 'tolerance'];
    if (!tolerance.known) return notGiven({ what, place: where });
    return given({ id: `pump${side}`, kind: 'pump', what, side, place: where, share: input(what, tolerance.value, 'share') });
  }
  const what = `the uncertainty of the delivery of pump ${side}`;
  const where = [...place, 'measuredDelivery', 'uncertainty'];
  const { share: η, uncertainty: w } = delivery.value;
  if (!w.known) return notGiven({ what, place: where });
  const share = work(ofDelivery, what, {
    w: input(`the delivery of pump ${side} is measured to ±`, w.value, 'share'),
    η: input(`delivery of pump ${side} as measured`, η, 'share'),
  });
  return given({ id: `pump${side}`, kind: 'delivery', what, side, place: where, share });
}

/** Where densities are missing, the sheet's own two ratios stand in for all of them. */
const restsOnDensities = ({ sheet, liquids }: Mix): boolean =>
  sheet.basis === 'weight' && SIDES.every((side) => liquids[side].every(({ liquid }) => liquid.density_kg_per_m3.known));

function densitiesOf(mix: Mix, side: SideName): readonly Part[] {
  if (!restsOnDensities(mix)) return [];
  return mix.liquids[side].map(({ name, place, volumeShare, densityUncertainty }, index) => {
    const what = `the density uncertainty of ${name}`;
    const where = [...place, 'densityUncertainty'];
    // By weight the shares of a premixed tank are always told.
    if (!densityUncertainty.known || !volumeShare.known) return notGiven({ what, place: where });
    const share = work(ofDensity, `the density of ${name}`, {
      v: input(`share of ${name} in the volume of its tank`, volumeShare.value, 'share'),
      w: input(`density of ${name} is known to ±`, densityUncertainty.value, 'share'),
    });
    const id = `density${side}${index === 0 ? '' : index + 1}`;
    return given({ id, kind: 'density', what: share.what, side, place: where, share });
  });
}

/** All that is in a tank stands at one temperature, so it errs together: one contribution a tank. */
function temperatureOf(mix: Mix, side: SideName): Part {
  const liquids = mix.liquids[side];
  const stated = liquids.flatMap(({ place, temperatureUncertainty_K: t }) =>
    t.known ? [{ place: [...place, 'temperatureUncertainty'], value: t.value }] : [],
  );
  const t_K = stated.reduce((largest, { value }) => most(largest, value), ZERO);
  const runsAt = mix.runAt_K[side].known;
  const γ = tankExpansion(mix, side);
  const matters = !(γ.known && γ.value.value.equals(ZERO)) && !(stated.length > 0 && runsAt && t_K.equals(ZERO));
  const [first] = stated;
  if (!matters) return NONE;
  const lacking = [
    ...(runsAt ? [] : [{ what: `the temperature ${side} is run at`, place: [...mix.place, side, 'runAt'] }]),
    ...(first !== undefined ? [] : liquids.slice(0, 1).map(({ place }) => uncertaintyOf(side, place))),
    ...(γ.known ? [] : γ.lacking),
  ];
  if (first === undefined || !γ.known) return notGiven(...lacking);
  const what = `the temperature of ${side}`;
  const share = work(ofTemperature, what, {
    γ: γ.value,
    t: input(`temperature of ${side} is known to ±`, t_K, 'temperatureDifference'),
  });
  const { contributions } = given({ id: `temperature${side}`, kind: 'temperature', what, side, place: first.place, share });
  return { contributions, lacking };
}

const uncertaintyOf = (side: SideName, place: Place): Lacking => ({
  what: `the temperature uncertainty of ${side}`,
  place: [...place, 'temperatureUncertainty'],
});

interface Slip {
  readonly side: SideName;
  readonly contribution: Contribution | null;
  readonly isLacking: boolean;
}

/** What A loses makes the mix B-rich, what B loses B-lean. */
function slipOf(plan: Plan, build: Build, side: SideName): Slip {
  const pump = build.pumps[side];
  if (pump.delivery.known) return { side, contribution: null, isLacking: false };
  const leak = slipShare(plan, build, side);
  if (!leak.known) return { side, contribution: null, isLacking: true };
  const what = `the slip of pump ${side}`;
  const way = side === 'A' ? 'B-rich' : 'B-lean';
  const place = pump.gear.known ? pump.gear.value.place : pump.place;
  return { side, isLacking: false, contribution: { id: `slip${side}`, kind: 'slip', what, side, place, way, share: leak.value.most } };
}
