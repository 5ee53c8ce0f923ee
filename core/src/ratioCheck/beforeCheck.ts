import { type CatchAmount, type ExpectedCatch, expectedCatch, type SideCatch } from '../expectedCatch.ts';
import { known, orNull } from '../given.ts';
import type { Plan } from '../plan.ts';
import { type Fraction, float } from '../ratio.ts';
import { fittedPumps, fittedTeeth } from '../train.ts';
import { wantedOn } from './amounts.ts';
import { catchesWorthMaking, type SmallestCatch, smallestCatch } from './before.ts';
import { type KeptCheck, pooledRepeatability } from './history.ts';
import type { Scale } from './model.ts';
import { termsOf } from './terms.ts';

/** What is known of a ratio check before the first catch. */
export interface BeforeCheck {
  /** Of one catch. */
  readonly motorTurns: Fraction;
  readonly expected: Pick<ExpectedCatch, 'sides' | 'limitsOnB'>;
  /** Null where densities or limits are not given, or the target lies on a limit. */
  readonly smallest: SmallestCatch | null;
  /** Whole turns of the motor that give at least the smallest catch on both sides; null beside it. */
  readonly leastTurns: number | null;
  /** From catch to catch, as earlier checks showed it; null where none did. */
  readonly repeatability: number | null;
  /** Null where densities or limits are not given, or where not even ten would do. */
  readonly catchesWorthMaking: number | null;
}

/**
 * What to catch, how little of it is worth catching, and how often.
 *
 * @param plan     the machine with what is to be proved on it
 * @param earlier  kept checks of the same material through the same pumps
 * @source `expectedCatch`, `smallestCatch`, `catchesWorthMaking`, `pooledRepeatability`
 */
export function beforeCheck(
  plan: Plan,
  earlier: readonly KeptCheck[],
  { motorTurns, scale, confidence }: { readonly motorTurns: Fraction; readonly scale: Scale; readonly confidence: number },
): BeforeCheck {
  const [pumps, teeth] = [fittedPumps(plan), fittedTeeth(plan)];
  const ofOneTurn = expectedCatch({ ...plan, catchTurns: 1 }, pumps, teeth);
  const times = (amount: CatchAmount): CatchAmount => ({
    volume_m3: amount.volume_m3.mul(motorTurns),
    mass_kg: amount.mass_kg.known ? known(amount.mass_kg.value.mul(motorTurns)) : amount.mass_kg,
  });
  const side = (of: SideCatch): SideCatch => ({ ...times(of), pumpTurns: of.pumpTurns.mul(motorTurns) });
  const { sides, limitsOnB } = ofOneTurn;
  const expected = {
    sides: { A: side(sides.A), B: side(sides.B) },
    limitsOnB: limitsOnB && { low: times(limitsOnB.low), high: times(limitsOnB.high) },
  };
  const [a, b] = [orNull(sides.A.mass_kg), orNull(sides.B.mass_kg)];
  const repeatability = pooledRepeatability(earlier);
  const { limits } = plan.mix;
  if (limits === null || a === null || b === null || !plan.mix.densityBOverA.known)
    return { motorTurns, expected, smallest: null, leastTurns: null, repeatability, catchesWorthMaking: null };
  const smallest = smallestCatch(wantedOn(termsOf(plan, { pumps, teeth }), true), limits, scale);
  const turnsFor = (least: Fraction, ofOne: Fraction) => float(least.div(ofOne).ceil());
  return {
    motorTurns,
    expected,
    smallest,
    leastTurns: smallest && Math.max(turnsFor(smallest.A.value, a), turnsFor(smallest.B.value, b)),
    repeatability,
    catchesWorthMaking: catchesWorthMaking({ A: a.mul(motorTurns), B: b.mul(motorTurns) }, limits, { scale, confidence, repeatability }),
  };
}
