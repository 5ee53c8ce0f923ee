import { blendFormula } from './blendFormula.ts';
import { en } from './en.ts';
import { type Given, known, NOT_GIVEN } from './given.ts';
import { type Fraction, ONE, ZERO } from './ratio.ts';
import { formula, type Input, input, numbered, type Worked, work } from './working.ts';

/** A liquid as its sheet describes it; every temperature in kelvin, everything exact. */
export interface Liquid {
  readonly density_kg_per_m3: Given<Fraction>;
  /** The temperature at which that density holds. */
  readonly densityAt_K: Given<Fraction>;
  readonly expansion_per_K: Given<Fraction>;
  readonly runAt_K: Given<Fraction>;
}

/** A liquid with its name, as sentences and workings call it, and how its expansion came about. */
export interface NamedLiquid {
  /** `A`, `the third part`. */
  readonly name: string;
  readonly liquid: Liquid;
  readonly expansion: Given<Input<Fraction>>;
}

const EXPANSION = en`definition of volume expansion, ρ(T) = ρ₀ / (1 + β (T − T₀))`;

export const densityAsRun = formula({
  letter: 'ρ',
  written: 'ρ₀ / (1 + β · (T - T₀))',
  dimension: 'density',
  source: EXPANSION,
  of: ({ 'ρ₀': stated_kg_per_m3, β, T, 'T₀': at_K }: Record<'ρ₀' | 'β' | 'T' | 'T₀', Fraction>) =>
    stated_kg_per_m3.div(volumeFactor(β, T.sub(at_K))),
});

export const expansionOfTwo = formula({
  letter: 'β',
  written: '(ρ₁ / ρ₂ - 1) / (T₂ - T₁)',
  dimension: 'expansion',
  source: en`${EXPANSION}, through both densities`,
  of: ({ 'ρ₁': one, 'ρ₂': two, 'T₁': oneAt, 'T₂': twoAt }: Record<'ρ₁' | 'ρ₂' | 'T₁' | 'T₂', Fraction>) => {
    const step_K = twoAt.sub(oneAt);
    if (step_K.equals(ZERO)) throw new RangeError('expansionOfTwo: both densities at one temperature');
    return one.div(two).sub(ONE).div(step_K);
  },
});

export const growthOf = formula({
  letter: 'g',
  written: '(1 + β · (T - T₀)) / (1 + β · (F - T₀))',
  dimension: 'number',
  source: en`${EXPANSION}, at both temperatures`,
  of: ({ β, T, F, 'T₀': origin_K }: Record<'β' | 'T' | 'F' | 'T₀', Fraction>) =>
    volumeFactor(β, T.sub(origin_K)).div(volumeFactor(β, F.sub(origin_K))),
});

/** A liquid whose expansion is as its sheet states it. */
export const stated = (name: string, liquid: Liquid): NamedLiquid => ({
  name,
  liquid,
  expansion: liquid.expansion_per_K.known ? known(input(en`expansion of ${name}`, liquid.expansion_per_K.value, 'expansion')) : NOT_GIVEN,
});

/**
 * Volume at one temperature of what fills one unit of volume at another; 1 where the expansion or a temperature is not given.
 *
 * @param one     its expansion is referred to the temperature of its density, else to `from_K`
 * @param from_K  where the sheet's volumes hold
 * @param at_K    where it is run
 * @returns volume at `at_K` per volume at `from_K`
 * @throws RangeError  where the expansion would leave no volume (see `keepsVolume`)
 * @source definition of volume expansion, V = V₀ (1 + β (T − T₀)), at both temperatures
 * @example volumeGrowth(liquid of 1160 kg/m3 at 298.15 K that expands by 0.00062, 298.15, 315.15).value  // 1.01054
 */
export function volumeGrowth({ name, liquid, expansion: β }: NamedLiquid, from_K: Given<Fraction>, at_K: Given<Fraction>): Input<Fraction> {
  if (!β.known || !from_K.known || !at_K.known)
    return input(en`growth of ${name} with temperature, not known and taken as none`, ONE, 'number');
  const F = input(en`temperature at which the sheet's volumes hold`, from_K.value, 'temperature');
  return work(growthOf, en`volume of ${name} as run over its volume where the sheet's volumes hold`, {
    β: β.value,
    T: input(en`temperature of ${name} as run`, at_K.value, 'temperature'),
    F,
    'T₀': liquid.densityAt_K.known ? input(en`temperature of the density of ${name}`, liquid.densityAt_K.value, 'temperature') : F,
  });
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
 * @param when  stands behind the name of the result, as `as run`
 * @returns kg per cubic metre, not given where no density is stated
 * @throws RangeError  where the expansion would leave no volume (see `keepsVolume`)
 * @source definition of volume expansion, ρ(T) = ρ₀ / (1 + β (T − T₀))
 * @example densityAt(liquid of 1160 kg/m3 at 298.15 K that expands by 0.00062, 315.15, 'as run')  // 1147.90
 */
export function densityAt({ name, liquid, expansion: β }: NamedLiquid, at_K: Given<Fraction>, when: string): Given<Input<Fraction>> {
  const { density_kg_per_m3: density, densityAt_K } = liquid;
  if (!density.known) return NOT_GIVEN;
  const asStated = input(en`density of ${name} as stated`, density.value, 'density');
  if (!densityAt_K.known || !β.known || !at_K.known) return known(asStated);
  return known(
    work(densityAsRun, en`density of ${name} ${when}`, {
      'ρ₀': asStated,
      β: β.value,
      T: input(en`temperature of ${name} ${when}`, at_K.value, 'temperature'),
      'T₀': input(en`temperature of the density of ${name}`, densityAt_K.value, 'temperature'),
    }),
  );
}

/**
 * Density of liquids mixed in one tank, their volumes adding up.
 *
 * @param what    the name of the result
 * @param shares  masses in any common unit, all above 0, with the density of each at one temperature
 * @returns kg per cubic metre
 * @source conservation of mass and volume; resins mix with little change of volume: common practice, no source
 * @example mixedDensity('density of the mixture', [[4, 1100], [1, 900]]).value  // 1053.19
 */
export function mixedDensity(what: string, shares: readonly (readonly [Input<Fraction>, Input<Fraction>])[]): Worked<Fraction> {
  const mixed = blendFormula({
    letter: 'ρ',
    weight: 'm',
    divisor: 'ρ',
    count: shares.length,
    counted: shares.map((_, index) => index),
    dimension: 'density',
    source: en`conservation of mass and volume; resins mix with little change of volume: common practice, no source`,
  });
  const put = shares.flatMap(([mass, density], index) => [[numbered('m', index), mass] as const, [numbered('ρ', index), density] as const]);
  return work(mixed, what, Object.fromEntries(put));
}
