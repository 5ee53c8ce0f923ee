import { en } from './en.ts';
import type { Place } from './finding.ts';
import { type Build, type Mix, type Plan, type Pump, SIDES, type SideName } from './plan.ts';
import { type Fraction, most, ZERO } from './ratio.ts';
import { slipShare } from './slip.ts';
import { type Lacking, tankExpansion } from './tankExpansion.ts';
import { formula, type Input, input, work } from './working.ts';

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

const ofDelivery = formula({
  letter: 'u',
  written: 'w / η',
  dimension: 'share',
  source: en`definition: an error over what it is an error of`,
  of: ({ w, η }: Record<'w' | 'η', Fraction>) => w.div(η),
});

const ofDensity = formula({
  letter: 'u',
  written: 'v · w',
  dimension: 'share',
  source: en`conservation of mass: a liquid that is denser by a share fills its volume by that share less`,
  of: ({ v, w }: Record<'v' | 'w', Fraction>) => v.mul(w),
});

const ofTemperature = formula({
  letter: 'u',
  written: 'γ · t',
  dimension: 'share',
  source: en`definition of volume expansion`,
  of: ({ γ, t }: Record<'γ' | 't', Fraction>) => γ.mul(t),
});

/** What one cause adds, or what would have to be given to tell. */
export interface Part {
  readonly contributions: readonly Contribution[];
  readonly lacking: readonly Lacking[];
}

const NONE: Part = { contributions: [], lacking: [] };
const eitherWay = (contribution: Omit<Contribution, 'way'>): Part => ({ contributions: [{ ...contribution, way: 'either' }], lacking: [] });
const lackingPart = (...lacking: readonly Lacking[]): Part => ({ contributions: [], lacking });

/**
 * The tolerance of a pump; where its delivery was measured, the uncertainty of that.
 *
 * @source the tolerance as given; an uncertainty over the delivery it is one of
 * @example pumpPart('B', pump measured at 80 ± 0.4 %).contributions[0].share.value  // ± 0.5 %
 */
export function pumpPart(side: SideName, { place, tolerance, delivery }: Pump): Part {
  if (!delivery.known) {
    const what = en`the tolerance of pump ${side}`;
    const where = [...place, 'tolerance'];
    if (!tolerance.known) return lackingPart({ what, place: where });
    return eitherWay({ id: `pump${side}`, kind: 'pump', what, side, place: where, share: input(what, tolerance.value, 'share') });
  }
  const what = en`the uncertainty of the delivery of pump ${side}`;
  const where = [...place, 'measuredDelivery', 'uncertainty'];
  const { share: η, uncertainty: w } = delivery.value;
  if (!w.known) return lackingPart({ what, place: where });
  const share = work(ofDelivery, what, {
    w: input(en`the delivery of pump ${side} is measured to ±`, w.value, 'share'),
    η: input(en`delivery of pump ${side} as measured`, η, 'share'),
  });
  return eitherWay({ id: `pump${side}`, kind: 'delivery', what, side, place: where, share });
}

/** Where densities are missing, the sheet's own two ratios stand in for all of them. */
const restsOnDensities = ({ sheet, liquids }: Mix): boolean =>
  sheet.basis === 'weight' && SIDES.every((side) => liquids[side].every(({ liquid }) => liquid.density_kg_per_m3.known));

/**
 * The density of each liquid of a tank, by its share of the volume.
 *
 * @returns none where the ratio does not rest on densities
 * @source conservation of mass
 * @example densityParts(mix by weight, 'B')  // known to ± 0.4 %, alone in its tank: ± 0.4 %
 */
export function densityParts(mix: Mix, side: SideName): readonly Part[] {
  if (!restsOnDensities(mix)) return [];
  return mix.liquids[side].map(({ name, place, volumeShare, densityUncertainty }, index) => {
    const what = en`the density uncertainty of ${name}`;
    const where = [...place, 'densityUncertainty'];
    // By weight the shares of a premixed tank are always told.
    if (!densityUncertainty.known || !volumeShare.known) return lackingPart({ what, place: where });
    const share = work(ofDensity, en`the density of ${name}`, {
      v: input(en`share of ${name} in the volume of its tank`, volumeShare.value, 'share'),
      w: input(en`density of ${name} is known to ±`, densityUncertainty.value, 'share'),
    });
    const id = `density${side}${index === 0 ? '' : index + 1}`;
    return eitherWay({ id, kind: 'density', what: share.what, side, place: where, share });
  });
}

/**
 * The temperature of a tank. All that is in it stands at one temperature, so it errs together: one contribution a tank.
 *
 * @returns nothing for a liquid that does not expand, or whose temperature is exact; what it lacks beside a contribution that it has
 * @source definition of volume expansion
 * @example temperaturePart(mix, 'A')  // ± 2 K of 0.0005 per K: ± 0.1 %
 */
export function temperaturePart(mix: Mix, side: SideName): Part {
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
    ...(runsAt ? [] : [{ what: en`the temperature ${side} is run at`, place: [...mix.place, side, 'runAt'] }]),
    ...(first !== undefined ? [] : liquids.slice(0, 1).map(({ place }) => uncertaintyOf(side, place))),
    ...(γ.known ? [] : γ.lacking),
  ];
  if (first === undefined || !γ.known) return lackingPart(...lacking);
  const what = en`the temperature of ${side}`;
  const share = work(ofTemperature, what, {
    γ: γ.value,
    t: input(en`temperature of ${side} is known to ±`, t_K, 'temperatureDifference'),
  });
  const { contributions } = eitherWay({ id: `temperature${side}`, kind: 'temperature', what, side, place: first.place, share });
  return { contributions, lacking };
}

const uncertaintyOf = (side: SideName, place: Place): Lacking => ({
  what: en`the temperature uncertainty of ${side}`,
  place: [...place, 'temperatureUncertainty'],
});

/** Slip of a side; it lacks something where it is neither estimated nor part of a measured delivery. */
export interface Slip {
  readonly side: SideName;
  readonly contribution: Contribution | null;
  readonly isLacking: boolean;
}

/**
 * What a pump may leak back: what A loses makes the mix B-rich, what B loses B-lean.
 *
 * @returns the most that is estimated; none where a measured delivery holds it already
 * @source as `slipShare`
 * @example slipOf(plan, build, 'A').contribution  // from nothing to 1.2 % B-rich
 */
export function slipOf(plan: Plan, build: Build, side: SideName): Slip {
  const pump = build.pumps[side];
  if (pump.delivery.known) return { side, contribution: null, isLacking: false };
  const leak = slipShare(plan, build, side);
  if (!leak.known) return { side, contribution: null, isLacking: true };
  const what = en`the slip of pump ${side}`;
  const way = side === 'A' ? 'B-rich' : 'B-lean';
  const place = pump.gear.known ? pump.gear.value.place : pump.place;
  return { side, isLacking: false, contribution: { id: `slip${side}`, kind: 'slip', what, side, place, way, share: leak.value.most } };
}
