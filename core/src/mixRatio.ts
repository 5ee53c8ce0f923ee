import { type Given, known } from './given.ts';
import { type Fraction, ONE, whole, ZERO } from './ratio.ts';

/** A liquid as its sheet describes it; every temperature in kelvin, everything exact. */
export interface Liquid {
  readonly density_kg_per_m3: Given<Fraction>;
  /** The temperature at which that density holds. */
  readonly densityAt_K: Given<Fraction>;
  readonly expansion_per_K: Given<Fraction>;
  readonly runAt_K: Given<Fraction>;
}

/** How a data sheet defines its limits. */
export type LimitDefinition = '% of B per A' | '% of A per B' | 'points of B in the total' | 'parts of B';

/** Limits of off-ratio `e = (B per A made) / (B per A wanted) − 1`, both inclusive. */
export interface OffRatioLimits {
  readonly low: Fraction;
  readonly high: Fraction;
}

const HUNDRED = whole(100);

/**
 * A mix ratio by weight as one by volume.
 *
 * @param weightBPerA   mass of B per mass of A, above 0
 * @param densityBOverA  density of B over density of A, both as run, above 0
 * @returns volume of B per volume of A
 * @source arithmetic: weight ratio = volume ratio x density ratio
 * @example volumeFromWeight(20.6 / 100, 0.97 / 1.16)  // 0.24635
 */
export function volumeFromWeight(weightBPerA: Fraction, densityBOverA: Fraction): Fraction {
  return weightBPerA.div(densityBOverA);
}

/**
 * Density of a liquid at a temperature, from one stated density and its volume expansion.
 *
 * @param density_kg_per_m3  at `densityAt_K`, above 0
 * @param densityAt_K        kelvins
 * @param expansion_per_K    volume expansion referred to `densityAt_K`
 * @param at_K               kelvins
 * @returns kg per cubic metre
 * @throws RangeError        where the expansion would leave no volume (a resolved plan cannot get there)
 * @source definition of volume expansion, ρ(T) = ρ₀ / (1 + β (T − T₀))
 * @example densityAt_kg_per_m3(1160, 298.15, 0.00062, 315.15)  // 1147.90
 */
export function densityAt_kg_per_m3(
  density_kg_per_m3: Fraction,
  densityAt_K: Fraction,
  expansion_per_K: Fraction,
  at_K: Fraction,
): Fraction {
  return density_kg_per_m3.div(volumeFactor(expansion_per_K, at_K.sub(densityAt_K)));
}

/**
 * Volume expansion that two densities of one liquid stand for, referred to the first temperature.
 *
 * @param density_kg_per_m3  at `at_K`, above 0
 * @param second_kg_per_m3   at `secondAt_K`, above 0
 * @returns per kelvin
 * @throws RangeError  where both densities are stated at one temperature
 * @source the same definition, solved for β; the curve passes through both densities exactly
 * @example expansionFromTwo_per_K(998.2067, 293.15, 995.6488, 303.15)  // 0.000257
 */
export function expansionFromTwo_per_K(
  density_kg_per_m3: Fraction,
  at_K: Fraction,
  second_kg_per_m3: Fraction,
  secondAt_K: Fraction,
): Fraction {
  const step_K = secondAt_K.sub(at_K);
  if (step_K.equals(ZERO)) throw new RangeError('expansionFromTwo_per_K: both densities at one temperature');
  return density_kg_per_m3.div(second_kg_per_m3).sub(ONE).div(step_K);
}

/**
 * Volume at one temperature of what fills one unit of volume at another; 1 where the expansion or a temperature is not given.
 *
 * @param liquid  its expansion is referred to the temperature of its density, else to `from_K`
 * @returns volume at `at_K` per volume at `from_K`
 * @throws RangeError  where the expansion would leave no volume (see `keepsVolume`)
 * @source the same definition, V = V₀ (1 + β (T − T₀)), at both temperatures
 * @example volumeGrowth(liquid of 1160 kg/m3 at 298.15 K that expands by 0.00062, 298.15, 315.15)  // 1.01054
 */
export function volumeGrowth(liquid: Liquid, from_K: Given<Fraction>, at_K: Given<Fraction>): Fraction {
  if (!liquid.expansion_per_K.known || !from_K.known || !at_K.known) return ONE;
  const beta = liquid.expansion_per_K.value;
  const origin_K = liquid.densityAt_K.known ? liquid.densityAt_K.value : from_K.value;
  return volumeFactor(beta, at_K.value.sub(origin_K)).div(volumeFactor(beta, from_K.value.sub(origin_K)));
}

/**
 * Whether a liquid keeps a volume above zero where it is run and where the volumes of its sheet hold.
 *
 * @param holdsAt_K  kelvins
 * @source the same definition: the line of its volume must not reach 0
 * @example keepsVolume(liquid stated at 298.15 K, run at 268.15 K, that expands by 0.04, NOT_GIVEN)  // false
 */
export function keepsVolume(liquid: Liquid, holdsAt_K: Given<Fraction>): boolean {
  const { expansion_per_K, densityAt_K, runAt_K } = liquid;
  const origin_K = densityAt_K.known ? densityAt_K : holdsAt_K;
  if (!expansion_per_K.known || !origin_K.known) return true;
  const beta = expansion_per_K.value;
  return [holdsAt_K, runAt_K].every((at_K) => !at_K.known || factor(beta, at_K.value.sub(origin_K.value)).compare(ZERO) > 0);
}

const factor = (expansion_per_K: Fraction, step_K: Fraction): Fraction => ONE.add(expansion_per_K.mul(step_K));

function volumeFactor(expansion_per_K: Fraction, step_K: Fraction): Fraction {
  const volume = factor(expansion_per_K, step_K);
  if (volume.compare(ZERO) <= 0) throw new RangeError(`volumeFactor: expansion ${expansion_per_K} over ${step_K} K leaves no volume`);
  return volume;
}

/**
 * Density at a temperature; where the expansion or a temperature is not given, the stated density as it is.
 *
 * @param at_K  kelvins
 * @returns kg per cubic metre, not given where no density is stated
 * @throws RangeError  where the expansion would leave no volume (see `keepsVolume`)
 * @source as `densityAt_kg_per_m3`
 * @example runningDensity_kg_per_m3(liquid of 1160 kg/m3 at 298.15 K that expands by 0.00062, 315.15)  // 1147.90
 */
export function runningDensity_kg_per_m3(liquid: Liquid, at_K: Given<Fraction>): Given<Fraction> {
  const { density_kg_per_m3: stated, densityAt_K, expansion_per_K } = liquid;
  if (!stated.known || !densityAt_K.known || !expansion_per_K.known || !at_K.known) return stated;
  return known(densityAt_kg_per_m3(stated.value, densityAt_K.value, expansion_per_K.value, at_K.value));
}

/**
 * Density of liquids mixed in one tank, their volumes adding up.
 *
 * @param shares  masses in any common unit, all above 0, with the density of each at one temperature
 * @returns kg per cubic metre
 * @source conservation of mass and volume; resins mix with little change of volume: common practice, no source
 * @example mixedDensity_kg_per_m3([[4, 1100], [1, 900]])  // 1053.19
 */
export function mixedDensity_kg_per_m3(shares: readonly (readonly [Fraction, Fraction])[]): Fraction {
  let mass = ZERO;
  let volume = ZERO;
  for (const [part, density_kg_per_m3] of shares) {
    mass = mass.add(part);
    volume = volume.add(part.div(density_kg_per_m3));
  }
  return mass.div(volume);
}

/**
 * Limits as a data sheet defines them, in off-ratio. The basis does not matter: it cancels.
 *
 * @param definition  how the sheet says it
 * @param low         in per cent, points or parts, as the definition says; deviations carry their sign, parts of B are absolute
 * @param high        as `low`; both must leave some A and some B
 * @param partsA      the target as the sheet counts it, above 0
 * @param partsB      as `partsA`
 * @returns limits of (B per A made) / (B per A wanted) − 1, low first
 * @source arithmetic on each definition
 * @example limitsOfOffRatio('points of B in the total', -5, 5, 1, 1)  // −2/11 .. 2/9
 */
export function limitsOfOffRatio(
  definition: LimitDefinition,
  low: Fraction,
  high: Fraction,
  partsA: Fraction,
  partsB: Fraction,
): OffRatioLimits {
  const shareOfB = partsB.div(partsA.add(partsB));
  const wanted = partsB.div(partsA);
  const fromShare = (points: Fraction) => {
    const share = shareOfB.add(points.div(HUNDRED));
    return share.div(ONE.sub(share)).div(wanted).sub(ONE);
  };
  switch (definition) {
    case '% of B per A':
      return { low: low.div(HUNDRED), high: high.div(HUNDRED) };
    case '% of A per B':
      // More A per B is less B per A, so the ends change places.
      return { low: ONE.div(ONE.add(high.div(HUNDRED))).sub(ONE), high: ONE.div(ONE.add(low.div(HUNDRED))).sub(ONE) };
    case 'points of B in the total':
      return { low: fromShare(low), high: fromShare(high) };
    case 'parts of B':
      return { low: low.div(partsB).sub(ONE), high: high.div(partsB).sub(ONE) };
  }
}

/**
 * Off-ratio of a measured or built ratio: plus is B-rich.
 *
 * @param madeBPerA    B per A, above 0
 * @param wantedBPerA  B per A on the same basis, above 0
 * @returns (B per A made) / (B per A wanted) − 1
 * @source definition
 * @example offRatio(2 / 5, 1 / 2)  // −1/5
 */
export function offRatio(madeBPerA: Fraction, wantedBPerA: Fraction): Fraction {
  return madeBPerA.div(wantedBPerA).sub(ONE);
}
