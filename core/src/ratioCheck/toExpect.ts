import { type CatchAmount, expectedCatch } from '../expectedCatch.ts';
import { type Given, known, NOT_GIVEN } from '../given.ts';
import type { Plan } from '../plan.ts';
import { type Fraction, whole } from '../ratio.ts';
import { fittedPumps, fittedTeeth } from '../train.ts';
import { catchesWorthMaking } from './before.ts';
import type { BySide, CatchRun, Scale } from './model.ts';

/** What to expect before the first catch. */
export interface ToExpect {
  readonly sides: BySide<CatchAmount>;
  /** What the limits allow of B beside that A; null where the material has none. */
  readonly limitsOnB: { readonly low: CatchAmount; readonly high: CatchAmount } | null;
}

/**
 * What each side gives in one catch, and what the limits allow of B.
 *
 * @param plan  the machine with what is on it
 * @returns null while nobody said how long a catch runs
 * @source `expectedCatch`, for as many turns as the catch has
 * @example toExpect(Bench 1 with U40, { by: 'turns', motorTurns: 20 })  // A 244.3 g, B 102.1 g
 */
export function toExpect(plan: Plan, run: CatchRun): ToExpect | null {
  if (run === null) return null;
  const turns = run.by === 'turns' ? run.motorTurns : run.time_s.mul(run.motor_rev_per_s);
  const one = expectedCatch(plan, fittedPumps(plan), fittedTeeth(plan));
  const times = turns.div(whole(one.motorTurns));
  const enlarged = ({ volume_m3, mass_kg }: CatchAmount): CatchAmount => ({
    volume_m3: volume_m3.mul(times),
    mass_kg: mass_kg.known ? known(mass_kg.value.mul(times)) : NOT_GIVEN,
  });
  const { sides, limitsOnB } = one;
  return {
    sides: { A: enlarged(sides.A), B: enlarged(sides.B) },
    limitsOnB: limitsOnB && { low: enlarged(limitsOnB.low), high: enlarged(limitsOnB.high) },
  };
}

/**
 * How many catches are worth making of what is to be expected.
 *
 * @returns undefined where nothing tells: no limits, or a weight that is not known; null where not even ten would do
 * @source `catchesWorthMaking`
 */
export function catchesToMake(
  plan: Plan,
  { sides }: ToExpect,
  { scale, confidence, repeatability }: { readonly scale: Scale; readonly confidence: number; readonly repeatability: number | null },
): number | null | undefined {
  const { limits } = plan.mix;
  const amount = massesOf(sides);
  return limits === null || amount === null ? undefined : catchesWorthMaking(amount, limits, { scale, confidence, repeatability });
}

function massesOf({ A, B }: BySide<{ readonly mass_kg: Given<Fraction> }>): BySide<Fraction> | null {
  return A.mass_kg.known && B.mass_kg.known ? { A: A.mass_kg.value, B: B.mass_kg.value } : null;
}
