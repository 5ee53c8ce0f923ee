import { type Given, known, NOT_GIVEN } from './given.ts';
import type { Mix } from './plan.ts';
import { type Fraction, ONE } from './ratio.ts';
import { formula, input, type Worked, work } from './working.ts';

const densityOfMix = formula({
  letter: 'ρ',
  written: '(a + b · r) / (1 + r)',
  dimension: 'density',
  source: 'conservation of mass and volume; resins mix with little change of volume: common practice, no source',
  of: ({ a, b, r }: Record<'a' | 'b' | 'r', Fraction>) => a.add(b.mul(r)).div(ONE.add(r)),
});

/** Density of A and B together in the ratio wanted, volumes adding up; not given where one of theirs is not. */
export function mixtureDensity({ density_kg_per_m3: { A, B }, wantedBPerA }: Mix): Given<Worked<Fraction>> {
  if (!A.known || !B.known) return NOT_GIVEN;
  return known(
    work(densityOfMix, 'density of the mix', {
      a: input('density of A as run', A.value, 'density'),
      b: input('density of B as run', B.value, 'density'),
      r: input('B per A by volume, wanted', wantedBPerA, 'number'),
    }),
  );
}
