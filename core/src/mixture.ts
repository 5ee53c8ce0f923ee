import { en } from './en.ts';
import { type Given, known, NOT_GIVEN } from './given.ts';
import type { Mix } from './plan.ts';
import { type Fraction, ONE } from './ratio.ts';
import { formula, type Worked, work } from './working.ts';

const densityOfMix = formula({
  letter: 'ρ',
  written: '(a + b · r) / (1 + r)',
  dimension: 'density',
  source: en`conservation of mass and volume; resins mix with little change of volume: common practice, no source`,
  of: ({ a, b, r }: Record<'a' | 'b' | 'r', Fraction>) => a.add(b.mul(r)).div(ONE.add(r)),
});

/**
 * Density of A and B together in the ratio wanted, their volumes adding up.
 *
 * @returns kg per cubic metre; not given where one of theirs is not
 * @source conservation of mass and volume
 * @example mixtureDensity(1.1 and 0.8 g/cm3, 2 of A to 1 of B by volume).value  // 1000
 */
export function mixtureDensity({ density: { A, B }, wanted }: Mix): Given<Worked<Fraction>> {
  if (!A.known || !B.known) return NOT_GIVEN;
  return known(work(densityOfMix, en`density of the mix`, { a: A.value, b: B.value, r: wanted }));
}
