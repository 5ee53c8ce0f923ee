import { type Given, known, NOT_GIVEN } from './given.ts';
import type { Plan, Pump, SideName, Teeth } from './plan.ts';
import { type Fraction, ONE, whole } from './ratio.ts';
import { delivered_m3_per_rev, trainTurns } from './train.ts';

/** What one side delivers into a cup; the mass only where the density as run is given. */
export interface CatchAmount {
  readonly volume_m3: Fraction;
  readonly mass_kg: Given<Fraction>;
}

/** The expected catch of one side, with the turns its pump makes for it. */
export interface SideCatch extends CatchAmount {
  readonly pumpTurns: Fraction;
}

export interface ExpectedCatch {
  readonly motorTurns: number;
  readonly sides: Readonly<Record<SideName, SideCatch>>;
  /** Least and most of B that the limits allow to just this catch of A; null where the material has no limits. */
  readonly limitsOnB: { readonly low: CatchAmount; readonly high: CatchAmount } | null;
}

/**
 * What both sides deliver unmixed for the plan's count of motor turns, and what the limits allow of B for that A. Exact.
 *
 * @param pumps  the pump of each side
 * @param teeth  of every stage of the plan, in its order
 * @returns volumes at run temperature; masses with the densities as run
 * @throws RangeError  where a stage has no teeth
 * @source definitions: volume = displacement x delivery x turns, mass = density x volume; B allowed = B wanted for that A x (1 + limit)
 * @example 12 and 6 cc/rev, 23 driving 25 teeth, 20 turns, 1.1479 and 0.97 g/cc  // A 275.5 g, B 107.1 g
 */
export function expectedCatch(plan: Plan, pumps: Readonly<Record<SideName, Pump>>, teeth: readonly Teeth[]): ExpectedCatch {
  const turns = whole(plan.catchTurns);
  const amount = (side: SideName, volume_m3: Fraction): CatchAmount => ({ volume_m3, mass_kg: mass_kg(plan, side, volume_m3) });
  const caught = (side: SideName): SideCatch => {
    const pumpTurns = turns.mul(trainTurns(plan, side, teeth));
    return { pumpTurns, ...amount(side, pumpTurns.mul(delivered_m3_per_rev(pumps[side]))) };
  };
  const A = caught('A');
  const { limits, wantedBPerA } = plan.mix;
  const allowed = (limit: Fraction): CatchAmount => amount('B', A.volume_m3.mul(wantedBPerA).mul(ONE.add(limit)));
  return {
    motorTurns: plan.catchTurns,
    sides: { A, B: caught('B') },
    limitsOnB: limits === null ? null : { low: allowed(limits.low), high: allowed(limits.high) },
  };
}

function mass_kg(plan: Plan, side: SideName, volume_m3: Fraction): Given<Fraction> {
  const density_kg_per_m3 = plan.mix.density_kg_per_m3[side];
  return density_kg_per_m3.known ? known(volume_m3.mul(density_kg_per_m3.value)) : NOT_GIVEN;
}
