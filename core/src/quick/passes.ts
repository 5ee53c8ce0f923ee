import { blocks } from '../check.ts';
import { pumpPressure } from '../checks/pumpPressure.ts';
import { motorRange } from '../dial.ts';
import { driveKind } from '../drives/index.ts';
import { countedPull, pullOf, serviceFactorOf } from '../load/pull.ts';
import { STAGE_EFFICIENCY, torqueOfPump, torquesOf } from '../load/torque.ts';
import { type Build, type Plan, SIDES, type Teeth } from '../plan.ts';
import { type Fraction, float } from '../ratio.ts';

/** All options of a plan with the same pumps, by how far their teeth go. */
export interface OptionBounds {
  readonly plan: Plan;
  readonly pumps: Build['pumps'];
  /** Of every stage the largest driver and the smallest driven: whatever carries more with a steeper stage does so most here. */
  readonly steepest: readonly Teeth[];
}

/**
 * What a check across the stages says, asked with the turns of pump A and of pump B for one of the motor: true, it does not block; false, it
 * does; null, the option has to be laid out. Of one pump's turns, those that are not false with the same turns of the other lie together.
 */
export type Passes = (turnsOfA: number, turnsOfB: number) => boolean | null;

/** Positive floats of a dozen roundings that are farther apart than this share of themselves stand for numbers in the same order. */
const DOUBT = 1e-12;

const isUnder = (value: number, limit: number): boolean | null =>
  value < limit * (1 - DOUBT) ? true : value > limit * (1 + DOUBT) ? false : null;

/** By the id of every check that blocks and looks across the stages, but for the one of stock. */
export const PASSES: Readonly<Record<string, (bounds: OptionBounds) => Passes>> = {
  'option.pumpSpeed': speedPasses,
  'option.pumpPressure': pressurePasses,
  'option.motorTorque': torquePasses,
  'option.loopPull': pullPasses,
};

/** As `dialRange`: whether anything is left of the dial. */
function speedPasses({ plan, pumps }: OptionBounds): Passes {
  const { from, to } = motorRange(plan);
  const [least, most] = [float(from.share), float(to.share)];
  // shares of full speed at one turn for one of the motor
  const [A, B] = SIDES.map((side) => {
    const { speedFrom_rev_per_s: slowest, speedTo_rev_per_s: fastest } = pumps[side];
    const share = (speed_rev_per_s: Fraction): number => float(speed_rev_per_s.div(plan.motor.speed_rev_per_s));
    return { from: slowest.known ? share(slowest.value) : 0, to: fastest.known ? share(fastest.value) : Infinity };
  });
  return (turnsOfA, turnsOfB) => {
    const low = Math.max(least, (A?.from ?? 0) / turnsOfA, (B?.from ?? 0) / turnsOfB);
    const high = Math.min(most, (A?.to ?? 0) / turnsOfA, (B?.to ?? 0) / turnsOfB);
    return isUnder(low, high);
  };
}

/** It asks for nothing but the pumps. */
function pressurePasses({ plan, pumps, steepest }: OptionBounds): Passes {
  const blocked = blocks(pumpPressure, { plan, pumps, teeth: steepest, assignment: { origins: [], purchases: 0 } });
  return () => !blocked;
}

/** As `torquesOf`: what both ask of a stage that they share adds up, so that each side can be followed to the motor by itself. */
function torquePasses({ plan, pumps }: OptionBounds): Passes {
  const [A, B] = [torqueOfPump(plan, { pumps }, 'A'), torqueOfPump(plan, { pumps }, 'B')];
  const rated = plan.motor.ratedTorque_N_m;
  if (!A.known || !B.known || !rated.known) return () => true;
  const rated_N_m = float(rated.value);
  const a_N_m = A.value.value / STAGE_EFFICIENCY ** plan.sides.A.train.length;
  const b_N_m = B.value.value / STAGE_EFFICIENCY ** plan.sides.B.train.length;
  return (turnsOfA, turnsOfB) => isUnder(a_N_m * turnsOfA + b_N_m * turnsOfB, rated_N_m);
}

/** As if every loop had an offset link, which may be pulled least. */
function pullPasses({ plan, pumps, steepest }: OptionBounds): Passes {
  const factor = serviceFactorOf(plan);
  const never = torquesOf(plan, { pumps, teeth: steepest }).stages.every((one) => {
    if (factor === null || !one.torque.known) return true;
    const allowed = driveKind(one.stage.kind).allowedPull(one.stage.size, true);
    return countedPull(pullOf(one, one.torque.value), factor).value <= allowed.value;
  });
  return () => never || null;
}
