import { known, NOT_GIVEN } from '../given.ts';
import { type Fraction, whole } from '../ratio.ts';
import type { BySide, Catch, CheckInput, CheckTerms, Scale } from './model.ts';

/** The catches that count, all on one basis. */
export interface Amounts {
  /** Whether they were weighed; otherwise they were measured by volume. */
  readonly weighed: boolean;
  /** kg or m³ of each catch that counts, in their order. */
  readonly of: BySide<readonly Fraction[]>;
  /** Number of each among all catches, from 1. */
  readonly numbers: readonly number[];
  /** B per A wanted on that basis. */
  readonly wanted: Fraction;
}

/** The basis on which catches are judged: weighed wherever all that count were weighed on both sides. */
const weighedAll = (catches: readonly Catch[]): boolean => catches.every(({ sides: { A, B } }) => A.mass_kg.known && B.mass_kg.known);

/**
 * What was caught, ready to be counted.
 *
 * @throws RangeError  where no catch counts, where a catch lacks a side, or where catches were weighed and no densities tell what was
 *   wanted by weight (`readCheck` refuses all three before)
 * @source definition: wanted by weight = wanted by volume × density of B over density of A
 */
export function amountsOf({ terms, catches }: CheckInput): Amounts {
  const counted = catches.flatMap((one, index) => (one.leftOut === null ? [{ ...one, number: index + 1 }] : []));
  if (counted.length === 0) throw new RangeError('amountsOf: no catch counts');
  const weighed = weighedAll(counted);
  const amount = (side: 'A' | 'B') =>
    counted.map(({ sides, number }) => {
      const of = weighed ? sides[side].mass_kg : sides[side].volume_m3;
      if (!of.known) throw new RangeError(`amountsOf: side ${side} of catch ${number} is neither weighed nor measured as the others are`);
      return of.value;
    });
  return {
    weighed,
    of: { A: amount('A'), B: amount('B') },
    numbers: counted.map(({ number }) => number),
    wanted: wantedOn(terms, weighed),
  };
}

/** B per A wanted, on the basis on which it was caught. */
export function wantedOn({ wantedBPerA, densityBOverA }: CheckTerms, weighed: boolean): Fraction {
  if (!weighed) return wantedBPerA;
  if (!densityBOverA.known) throw new RangeError('wantedOn: the densities that weighing needs are not given');
  return wantedBPerA.mul(densityBOverA.value);
}

/** Half a step for each reading, all the same way: the most by which a net weight may differ from what the scale would have shown. */
export const mostByStep_kg = ({ step_kg, readings }: Scale): Fraction => step_kg.mul(whole(readings)).div(whole(2));

/** Volume of what was weighed, where its density is given. */
export const volumeOf = (terms: CheckTerms, side: 'A' | 'B', mass_kg: Fraction) => {
  const density = terms.density_kg_per_m3[side];
  return density.known ? known(mass_kg.div(density.value)) : NOT_GIVEN;
};
