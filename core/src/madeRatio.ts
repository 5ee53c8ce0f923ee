import { en } from './en.ts';
import { offRatio, offRatioOf, perHundredA } from './mixRatio.ts';
import type { Build, Plan } from './plan.ts';
import type { Fraction } from './ratio.ts';
import { deliveredOf, ofBoth, ofPumps, ofWheels, turnsOf } from './train.ts';
import { type Worked, work } from './working.ts';

/** The ratio that is made, B per A by volume, as the product of what pumps and wheels put in. */
export interface MadeRatio {
  readonly pumps: Worked<Fraction>;
  readonly wheels: Worked<Fraction>;
  readonly made: Worked<Fraction>;
}

/**
 * The ratio that a build makes, with how it came about, down to displacements and teeth.
 *
 * @source kinematics: pump displacement times shaft speed, both from one motor
 * @example madeRatio(Bench 1 of the demo, 21 driving 30 teeth).made.value  // 7/20
 */
export function madeRatio(plan: Plan, { pumps, teeth }: Build): MadeRatio {
  const ofBothPumps = work(ofPumps, en`pumps, B over A`, { a: deliveredOf(pumps.A, 'A'), b: deliveredOf(pumps.B, 'B') });
  const ofAllWheels = work(ofWheels, en`wheels, turns of B for one of A`, { a: turnsOf(plan, 'A', teeth), b: turnsOf(plan, 'B', teeth) });
  const made = work(ofBoth, en`B per A by volume, made`, { p: ofBothPumps, t: ofAllWheels });
  return { pumps: ofBothPumps, wheels: ofAllWheels, made };
}

/**
 * Off-ratio of a build by its teeth and displacements, and by the deliveries that the ratio counts.
 *
 * @source definition of off-ratio
 * @example madeOffRatio(E12 on Bench 1 of the demo, 23 driving 25 teeth).value  // −0.08 %
 */
export const madeOffRatio = (plan: Plan, build: Build): Worked<Fraction> =>
  work(offRatioOf, en`off-ratio`, { m: madeRatio(plan, build).made, w: plan.mix.wanted });

/**
 * Parts of B for 100 parts of A on the sheet's own basis: all conversions between bases are constant factors, so they scale together.
 *
 * @param bPerA  made by volume as run, above 0
 * @source definition of off-ratio, which is the same on every basis
 * @example asSheetCounts(E12 on Bench 1 of the demo, 23/50)  // 38.87
 */
export function asSheetCounts({ mix: { sheet, wantedBPerA } }: Plan, bPerA: Fraction): Fraction {
  return perHundredA.of({ a: sheet.partsA, b: sheet.partsB, e: offRatio(bPerA, wantedBPerA) });
}
