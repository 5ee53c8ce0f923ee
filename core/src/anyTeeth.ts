import { blocks } from './check.ts';
import { pumpPressure } from './checks/pumpPressure.ts';
import { dialRange } from './dial.ts';
import { driveKind } from './drives/index.ts';
import { countedPull, pullOf, serviceFactorOf } from './load/pull.ts';
import { torquesOf } from './load/torque.ts';
import type { Build, Plan, Teeth } from './plan.ts';
import { float } from './ratio.ts';

/** One set of pumps, and between which teeth every stage stays. */
export interface TeethBounds {
  readonly plan: Plan;
  readonly pumps: Build['pumps'];
  /** Of every stage the largest driver and the smallest driven: each pump turns fastest, and every load is largest. */
  readonly steepest: readonly Teeth[];
  /** The smallest driver and the largest driven. */
  readonly flattest: readonly Teeth[];
}

/**
 * Whether a check across the stages blocks every option with a set of pumps, whatever its teeth; by the id of the check. No more than a
 * bound: what is not blocked here may still be in every option.
 *
 * Roundings keep their order, so that no option can lie beyond a figure of either end.
 *
 * @source the checks themselves, asked at that end which is the better for them
 */
export const BLOCKS_ANY_TEETH: Readonly<Record<string, (bounds: TeethBounds) => boolean>> = {
  'option.pumpSpeed': ({ plan, pumps, steepest, flattest }) =>
    dialRange(plan, { pumps, teeth: steepest }).from.share.compare(dialRange(plan, { pumps, teeth: flattest }).to.share) > 0,
  'option.pumpPressure': ({ plan, pumps, flattest }) =>
    blocks(pumpPressure, { plan, pumps, teeth: flattest, assignment: { origins: [], purchases: 0 } }),
  'option.motorTorque': ({ plan, pumps, flattest }) => {
    const rated = plan.motor.ratedTorque_N_m;
    const { motor } = torquesOf(plan, { pumps, teeth: flattest });
    return rated.known && motor.known && motor.value.value > float(rated.value);
  },
  // as if no loop had an offset link, which may be pulled less
  'option.loopPull': ({ plan, pumps, flattest }) => {
    const factor = serviceFactorOf(plan);
    return torquesOf(plan, { pumps, teeth: flattest }).stages.some((one) => {
      if (factor === null || !one.torque.known) return false;
      const allowed = driveKind(one.stage.kind).allowedPull(one.stage.size, false);
      return countedPull(pullOf(one, one.torque.value), factor).value > allowed.value;
    });
  },
};
