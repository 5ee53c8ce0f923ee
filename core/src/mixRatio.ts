import { type Given, known, NOT_GIVEN } from './given.ts';
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
 * Density of a liquid at a temperature, from one stated density and its volume expansion.
 *
 * @param density_kg_per_m3  at `densityAt_K`, above 0
 * @param expansion_per_K    volume expansion referred to `densityAt_K`
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

/** Volume at `at_K` of what fills one unit of volume at `from_K`; 1 where the expansion or a temperature is not given. */
export function volumeGrowth(liquid: Liquid, from_K: Given<Fraction>, at_K: Given<Fraction>): Fraction {
  if (!liquid.expansion_per_K.known || !from_K.known || !at_K.known) return ONE;
  const beta = liquid.expansion_per_K.value;
  const origin_K = liquid.densityAt_K.known ? liquid.densityAt_K.value : from_K.value;
  return volumeFactor(beta, at_K.value.sub(origin_K)).div(volumeFactor(beta, from_K.value.sub(origin_K)));
}

function volumeFactor(expansion_per_K: Fraction, step_K: Fraction): Fraction {
  const factor = ONE.add(expansion_per_K.mul(step_K));
  if (factor.compare(ZERO) <= 0) throw new RangeError(`volumeFactor: expansion ${expansion_per_K} over ${step_K} K leaves no volume`);
  return factor;
}

/** Density at the given temperature; where the expansion or a temperature is not given, the stated density as it is. */
export function runningDensity_kg_per_m3(liquid: Liquid, at_K: Given<Fraction>): Given<Fraction> {
  if (!liquid.density_kg_per_m3.known) return NOT_GIVEN;
  return known(liquid.density_kg_per_m3.value.div(volumeGrowth(liquid, liquid.densityAt_K, at_K)));
}

/**
 * Density of two liquids mixed in one tank, their volumes adding up.
 *
 * @param shares  masses in any common unit, all above 0, with the density of each at one temperature
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
 * Limits as a data sheet defines them, in off-ratio.
 *
 * @param low, high  in per cent, points or parts, as the definition says; deviations carry their sign, parts of B are absolute
 * @param partsA, partsB  the target as the sheet counts it
 * @returns limits of B per A made / wanted − 1; the basis does not matter, it cancels
 * @source definitions of design; arithmetic
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
      return { low: ONE.div(ONE.add(high.div(HUNDRED))).sub(ONE), high: ONE.div(ONE.add(low.div(HUNDRED))).sub(ONE) };
    case 'points of B in the total':
      return { low: fromShare(low), high: fromShare(high) };
    case 'parts of B':
      return { low: low.div(partsB).sub(ONE), high: high.div(partsB).sub(ONE) };
  }
}

/** Off-ratio of a measured or built ratio against the wanted one, both as B per A: plus is B-rich. */
export function offRatio(madeBPerA: Fraction, wantedBPerA: Fraction): Fraction {
  return madeBPerA.div(wantedBPerA).sub(ONE);
}
