import { known, NOT_GIVEN } from '../../../core/src/given.ts';
import { Fraction } from '../../../core/src/ratio.ts';
import type { Catch, CheckInput } from '../../../core/src/ratioCheck/model.ts';

export interface SomeCheck {
  readonly wantedByWeight: string;
  /** Off-ratio. */
  readonly limits: readonly [string, string] | null;
  readonly catches: readonly (readonly [a_g: number, b_g: number])[];
  /** g/cm³ of A and B. */
  readonly densities?: readonly [string, string];
  /** cc/rev of A and B. */
  readonly displacements?: readonly [string, string];
  /** Of the motor for one catch; pumps turn with it. */
  readonly turns?: string;
  /** g. */
  readonly step?: string;
  readonly readings?: 1 | 2;
}

const THOUSANDTH = new Fraction(1, 1000);
const CC_m3 = new Fraction(1, 1_000_000);

/** Fractions come from text, as everywhere. */
const exact = (text: string): Fraction => {
  const [n = '', d = '1'] = text.split('/');
  return new Fraction(n).div(new Fraction(d));
};

export const grams = (text: string): Fraction => exact(text).mul(THOUSANDTH);

/** A check with everything it does not name kept plain. */
export function checkOf({ wantedByWeight, limits, catches, densities, displacements, turns, step, readings }: SomeCheck): CheckInput {
  const [rhoA, rhoB] = (densities ?? ['1', '1']).map((text) => exact(text).mul(1000));
  const [DA, DB] = (displacements ?? ['10', '10']).map((text) => exact(text).mul(CC_m3));
  if (rhoA === undefined || rhoB === undefined || DA === undefined || DB === undefined) throw new RangeError('someCheck: two of each');
  const caught = catches.map(
    ([a, b]): Catch => ({
      sides: {
        A: { mass_kg: known(grams(String(a))), volume_m3: NOT_GIVEN },
        B: { mass_kg: known(grams(String(b))), volume_m3: NOT_GIVEN },
      },
      leftOut: null,
    }),
  );
  const [first, ...rest] = caught;
  if (first === undefined) throw new RangeError('someCheck: no catch');
  return {
    terms: {
      wantedBPerA: exact(wantedByWeight).mul(rhoA).div(rhoB),
      limits: limits && { low: exact(limits[0]), high: exact(limits[1]) },
      basis: 'weight',
      written: '',
      limitsWritten: null,
      density_kg_per_m3: { A: known(rhoA), B: known(rhoB) },
      densityBOverA: known(rhoB.div(rhoA)),
      displacement_m3_per_rev: { A: DA, B: DB },
      tolerance: { A: NOT_GIVEN, B: NOT_GIVEN },
      newDelivery: { A: NOT_GIVEN, B: NOT_GIVEN },
      pumpTurns: { A: new Fraction(1), B: new Fraction(1) },
      motorSpeed_rev_per_s: new Fraction(1),
    },
    run: { by: 'turns', motorTurns: exact(turns ?? '20') },
    scale: { step_kg: grams(step ?? '0.1'), readings: readings ?? 2, uncertainty_kg: NOT_GIVEN },
    catches: [first, ...rest],
    confidence: 0.95,
  };
}
