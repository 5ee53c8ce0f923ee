import { driveKind } from '../drives/index.ts';
import { flowOf } from '../flow.ts';
import type { Say } from '../format.ts';
import { countedPower, powerIn, ratedPowerOf, shareOfPower, stageSpeeds } from '../load/power.ts';
import { countedPull, pullOf, serviceFactorOf, shareOfPull } from '../load/pull.ts';
import { ratedShare, type StageTorque, torquesOf } from '../load/torque.ts';
import type { PlannedOption } from '../option.ts';
import { type Plan, SIDES } from '../plan.ts';
import { inFloat, input } from '../working.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';

/** Torques of pumps and motor, pull and power in every stage, each against what it may be; only what is known. */
export function loadFacts(plan: Plan, option: PlannedOption, say: Say): FactGroup {
  const { pumps, stages, motor } = torquesOf(plan, option);
  const { ratedTorque_N_m: rated } = plan.motor;
  const ofMotor = motor.known
    ? [
        fact('motor', motor.value, say),
        ...(rated.known
          ? [fact('motorShare', ratedShare(motor.value, inFloat(input('rated torque of the motor', rated.value, 'torque'))), say)]
          : []),
      ]
    : [];
  const ofPumps = SIDES.flatMap((side) => {
    const torque = pumps[side];
    return torque.known ? [fact(`pump${side}`, torque.value, say)] : [];
  });
  return { id: 'load', title: 'Load', facts: [...ofMotor, ...ofPumps, ...stages.flatMap((stage) => stageLoad(plan, option, stage, say))] };
}

function stageLoad(plan: Plan, option: PlannedOption, one: StageTorque, say: Say): readonly Fact[] {
  const { stage, teeth, torque } = one;
  if (!torque.known) return [];
  const { allowedPull, needsOffsetLink } = driveKind(stage.kind);
  const loop = option.stages.find(({ stage: same }) => same === stage)?.fit.loop ?? null;
  const pull = pullOf(one, torque.value);
  const factor = serviceFactorOf(plan);
  const named = (id: string, what: string, worked: Parameters<typeof fact>[1]) =>
    fact(`${stage.id}.${id}`, worked, say, { what: `${stage.name}: ${what}` });
  const plain = [named('torque', 'torque at the driven wheel', torque.value), named('pull', 'pull', pull)];
  if (factor === null) return plain;
  const counted = countedPull(pull, factor);
  const allowed = allowedPull(stage.size, loop !== null && needsOffsetLink(loop.pitches));
  const { setting, ends } = flowOf(plan, option);
  const running = setting ?? ends?.to;
  const speeds = running === undefined ? null : stageSpeeds(plan, option.teeth, stage, running.motorSpeed);
  const power = speeds === null ? null : countedPower(powerIn(stage, speeds, torque.value), factor);
  const ratedPower = speeds === null ? null : ratedPowerOf(stage, teeth, speeds);
  return [
    ...plain,
    named('countedPull', 'pull with the service factor', counted),
    named('allowedPull', 'pull allowed', allowed),
    named('pullShare', 'share of the pull allowed', shareOfPull(counted, allowed)),
    ...(power === null ? [] : [named('power', 'power with the service factor', power)]),
    ...(power === null || ratedPower === null
      ? []
      : [
          named('ratedPower', 'power it is rated for', ratedPower),
          named('powerShare', 'share of the rated power', shareOfPower(power, ratedPower)),
        ]),
  ];
}
