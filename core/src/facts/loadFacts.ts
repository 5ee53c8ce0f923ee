import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import { flowOf, type Running, settingOrFastest } from '../flow.ts';
import type { Say } from '../format.ts';
import { countedPower, powerIn, ratedPowerOf, type StageSpeeds, shareOfPower, stageSpeeds } from '../load/power.ts';
import { countedPull, pullOf, serviceFactorOf, shareOfPull } from '../load/pull.ts';
import { ratedShare, type StageTorque, type Torque, torquesOf } from '../load/torque.ts';
import type { PlannedOption } from '../option.ts';
import { type Plan, SIDES } from '../plan.ts';
import { type Input, inFloat, input, type Worked } from '../working.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';

/** Torques of pumps and motor, pull and power in every stage, each against what it may be; only what is known. */
export function loadFacts(plan: Plan, option: PlannedOption, say: Say): FactGroup {
  const { pumps, stages, motor } = torquesOf(plan, option);
  const running = settingOrFastest(flowOf(plan, option));
  return {
    id: 'load',
    title: en`Load`,
    facts: [
      ...motorFacts(plan, motor, say),
      ...SIDES.flatMap((side) => {
        const torque = pumps[side];
        return torque.known ? [fact(`pump${side}`, torque.value, say)] : [];
      }),
      ...stages.flatMap((stage) => stageFacts(plan, option, running, stage, say)),
    ],
  };
}

function motorFacts({ motor: { ratedTorque_N_m: rated } }: Plan, torque: Torque, say: Say): readonly Fact[] {
  if (!torque.known) return [];
  const asked = fact('motor', torque.value, say);
  if (!rated.known) return [asked];
  return [asked, fact('motorShare', ratedShare(torque.value, inFloat(input(en`rated torque of the motor`, rated.value, 'torque'))), say)];
}

/** A figure of one stage, which stands before its name. */
type Named = (id: string, what: string, worked: Input) => Fact;

function stageFacts(plan: Plan, option: PlannedOption, running: Running | null, one: StageTorque, say: Say): readonly Fact[] {
  const { stage, torque } = one;
  if (!torque.known) return [];
  const named: Named = (id, what, worked) => fact(`${stage.id}.${id}`, worked, say, { what: `${stage.name}: ${what}` });
  const pull = pullOf(one, torque.value);
  const plain = [named('torque', en`torque at the driven wheel`, torque.value), named('pull', en`pull`, pull)];
  const factor = serviceFactorOf(plan);
  if (factor === null) return plain;
  const { allowedPull, needsOffsetLink } = driveKind(stage.kind);
  const loop = option.stages.find(({ stage: same }) => same === stage)?.fit.loop ?? null;
  const speeds = running && stageSpeeds(plan, option.teeth, stage, running.motorSpeed);
  const counted = countedPull(pull, factor);
  const allowed = allowedPull(stage.size, loop !== null && needsOffsetLink(loop.pitches));
  return [
    ...plain,
    named('countedPull', en`pull with the service factor`, counted),
    named('allowedPull', en`pull allowed`, allowed),
    named('pullShare', en`share of the pull allowed`, shareOfPull(counted, allowed)),
    ...(speeds === null ? [] : powerFacts(one, speeds, countedPower(powerIn(stage, speeds, torque.value), factor), named)),
  ];
}

function powerFacts({ stage, teeth }: StageTorque, speeds: StageSpeeds, counted: Worked<number>, named: Named): readonly Fact[] {
  const asked = named('power', en`power with the service factor`, counted);
  const rated = ratedPowerOf(stage, teeth, speeds);
  if (rated === null) return [asked];
  return [
    asked,
    named('ratedPower', en`power it is rated for`, rated),
    named('powerShare', en`share of the rated power`, shareOfPower(counted, rated)),
  ];
}
