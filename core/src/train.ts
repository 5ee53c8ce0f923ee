import { driveKind } from './drives/index.ts';
import type { Plan, Pump, SideName, Teeth } from './plan.ts';
import { type Fraction, ONE } from './ratio.ts';

/** Turns of a pump for one turn of the motor, exact. */
export function trainTurns(plan: Plan, side: SideName, teeth: readonly Teeth[]): Fraction {
  return plan.sides[side].train.reduce((turns, index) => {
    const stage = plan.stages[index];
    const pair = teeth[index];
    if (stage === undefined || pair === undefined) throw new RangeError(`trainTurns: stage ${index} has no teeth`);
    return turns.mul(driveKind(stage.kind).turns(pair.driver, pair.driven));
  }, ONE);
}

/**
 * Volume of B per volume of A that a drive delivers, from displacements, teeth and the deliveries that were measured.
 *
 * @returns exact; 1 over the `R = D_A n_A / (D_B n_B)` of the ratio A to B
 * @source kinematics: pump displacement times shaft speed, both from one motor
 */
export function madeBPerA(plan: Plan, pumps: Readonly<Record<SideName, Pump>>, teeth: readonly Teeth[]): Fraction {
  return pumpRatio(pumps).mul(sprocketRatio(plan, teeth));
}

/** What a pump delivers in one turn: its displacement, times the delivery where that was measured. */
export const delivered_m3_per_rev = ({ displacement_m3_per_rev, delivery }: Pump): Fraction =>
  delivery.known ? displacement_m3_per_rev.mul(delivery.value.share) : displacement_m3_per_rev;

/** What the pumps put in: what B delivers in one turn over what A delivers. */
export const pumpRatio = (pumps: Readonly<Record<SideName, Pump>>): Fraction =>
  delivered_m3_per_rev(pumps.B).div(delivered_m3_per_rev(pumps.A));

/** What the teeth put in: turns of pump B for one turn of pump A; stages that both share cancel. */
export const sprocketRatio = (plan: Plan, teeth: readonly Teeth[]): Fraction =>
  trainTurns(plan, 'B', teeth).div(trainTurns(plan, 'A', teeth));

/** The teeth as fitted now, stage by stage. */
export const fittedTeeth = (plan: Plan): readonly Teeth[] =>
  plan.stages.map(({ driver, driven }) => ({ driver: driver.teeth, driven: driven.teeth }));

/** The pumps as fitted now. */
export function fittedPumps(plan: Plan): Readonly<Record<SideName, Pump>> {
  const fitted = (side: SideName) => plan.sides[side].pumps[plan.sides[side].fitted] ?? plan.sides[side].pumps[0];
  return { A: fitted('A'), B: fitted('B') };
}
