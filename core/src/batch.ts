import { en } from './en.ts';
import { type Given, known, NOT_GIVEN } from './given.ts';
import type { Batch, Build, Plan, SideName } from './plan.ts';
import { type Fraction, ONE } from './ratio.ts';
import { madeBPerA } from './train.ts';
import { formula, type Input, input, type Worked, work } from './working.ts';

type Measure = 'mass' | 'volume';

/** Parts of an amount, or what belongs to one side, by mass or by volume alike: X the amount, x B per A on its basis. */
const shares = (dimension: Measure) => {
  const source = en`arithmetic`;
  return {
    aOfMix: formula({
      letter: 'A',
      written: 'X / (1 + x)',
      dimension,
      source: en`arithmetic; by volume, volumes adding up`,
      of: ({ X, x }: Record<'X' | 'x', Fraction>) => X.div(ONE.add(x)),
    }),
    bOfMix: formula({
      letter: 'B',
      written: 'X · x / (1 + x)',
      dimension,
      source: en`arithmetic; by volume, volumes adding up`,
      of: ({ X, x }: Record<'X' | 'x', Fraction>) => X.mul(x).div(ONE.add(x)),
    }),
    bForA: formula({ letter: 'B', written: 'X · x', dimension, source, of: ({ X, x }: Record<'X' | 'x', Fraction>) => X.mul(x) }),
    aForB: formula({ letter: 'A', written: 'X / x', dimension, source, of: ({ X, x }: Record<'X' | 'x', Fraction>) => X.div(x) }),
  };
};
const SHARES = { mass: shares('mass'), volume: shares('volume') } as const;

const madeByWeight = formula({
  letter: 'x',
  written: 'r · k',
  dimension: 'number',
  source: en`arithmetic: weight ratio = volume ratio x density ratio`,
  of: ({ r, k }: Record<'r' | 'k', Fraction>) => r.mul(k),
});

const massOf = formula({
  letter: 'm',
  written: 'ρ · V',
  dimension: 'mass',
  source: en`definition of density`,
  of: ({ ρ, V }: Record<'ρ' | 'V', Fraction>) => ρ.mul(V),
});

const volumeOf = formula({
  letter: 'V',
  written: 'm / ρ',
  dimension: 'volume',
  source: en`definition of density`,
  of: ({ m, ρ }: Record<'m' | 'ρ', Fraction>) => m.div(ρ),
});

/** What a batch takes of one side, the volume as run. */
export type BatchSide = Readonly<Record<Measure, Given<Input<Fraction>>>>;

/**
 * What the batch of a plan takes of A and of B, in the ratio that a build makes.
 *
 * @returns masses and volumes as run, each where the densities it needs are given; not given where no batch is asked for
 * @source arithmetic
 * @example 10 kg of A, 2 of B per 100 of A by weight as made, B of 1.15 g/cm3  // B: 200 g, 173.9 cc
 */
export function batchOf(plan: Plan, build: Build): Given<Readonly<Record<SideName, BatchSide>>> {
  if (!plan.batch.known) return NOT_GIVEN;
  const batch = plan.batch.value;
  const { amount } = batch;
  const measure = amount.kind;
  const bPerA = madeOn(measure, plan, build);
  const X = amount.kind === 'mass' ? input(en`batch`, amount.mass_kg, 'mass') : input(en`batch`, amount.volume_m3, 'volume');
  const side = (name: SideName) => bothMeasures(plan, name, measure, shareOf(batch, name, X, bPerA));
  return known({ A: side('A'), B: side('B') });
}

/** B per A as made: by mass only where the densities are given. */
function madeOn(measure: Measure, plan: Plan, { pumps, teeth }: Build): Given<Input<Fraction>> {
  const r = input(en`B per A by volume, as made`, madeBPerA(plan, pumps, teeth), 'number');
  if (measure === 'volume') return known(r);
  const { densityBOverA } = plan.mix;
  if (!densityBOverA.known) return NOT_GIVEN;
  return known(
    work(madeByWeight, en`B per A by weight, as made`, { r, k: input(en`density of B over that of A`, densityBOverA.value, 'number') }),
  );
}

/** What belongs to a side in an amount of the mix or of one side. */
function shareOf({ of, amount }: Batch, side: SideName, X: Input<Fraction>, bPerA: Given<Input<Fraction>>): Given<Input<Fraction>> {
  const what = en`${side} for the batch`;
  if (of === side) return known({ ...X, what });
  if (!bPerA.known) return NOT_GIVEN;
  const { aOfMix, bOfMix, bForA, aForB } = SHARES[amount.kind];
  const A = of === 'mix' ? aOfMix : aForB;
  const B = of === 'mix' ? bOfMix : bForA;
  return known(work(side === 'A' ? A : B, what, { X, x: bPerA.value }));
}

/** An amount as it follows from the batch, and by its density the other way. */
function bothMeasures(plan: Plan, side: SideName, measure: Measure, amount: Given<Input<Fraction>>): BatchSide {
  const density = plan.mix.density[side];
  const other = amount.known && density.known ? known(converted(side, measure, amount.value, density.value)) : NOT_GIVEN;
  return measure === 'mass' ? { mass: amount, volume: other } : { volume: amount, mass: other };
}

function converted(side: SideName, measure: Measure, amount: Input<Fraction>, ρ: Input<Fraction>): Worked<Fraction> {
  const what = measure === 'mass' ? en`${side} for the batch, by volume` : en`${side} for the batch, by mass`;
  return measure === 'mass' ? work(volumeOf, what, { m: amount, ρ }) : work(massOf, what, { ρ, V: amount });
}
