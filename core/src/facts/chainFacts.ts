import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import { flowOf, type Running, settingOrFastest } from '../flow.ts';
import { fixed, type Say } from '../format.ts';
import { loopSpeedOf, stageSpeeds } from '../load/power.ts';
import type { PlannedOption, StageOption } from '../option.ts';
import { END_WORDS, ENDS, type Plan, type Teeth } from '../plan.ts';
import type { Input } from '../working.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';

/** A rule is laid along so many pitches, to spread the error of reading it. */
export const MEASURED_PITCHES = 20;

/** Geometry and care of every stage: wheels, length, wrap, span, speed, slack and wear. None of it corrects the ratio. */
export function chainFacts(plan: Plan, option: PlannedOption, say: Say): FactGroup {
  const running = settingOrFastest(flowOf(plan, option));
  return { id: 'stages', title: en`Stages`, facts: option.stages.flatMap((stage) => stageFacts(plan, option.teeth, running, stage, say)) };
}

function stageFacts(plan: Plan, ofAll: readonly Teeth[], running: Running | null, of: StageOption, say: Say): readonly Fact[] {
  const { stage, teeth } = of;
  const kind = driveKind(stage.kind);
  const named: Named = (id, what, worked, note = '') => fact(`${stage.id}.${id}`, worked, say, { what: `${stage.name}: ${what}`, note });
  const wheels = ENDS.flatMap((end) => {
    const { pitchDiameter, outsideDiameter, runningDiameter, ripple } = kind.wheelWorkings(stage.size, teeth[end]);
    return [
      named(`${end}PitchDiameter`, en`pitch diameter of the ${END_WORDS[end]}`, pitchDiameter),
      named(`${end}OutsideDiameter`, en`outside diameter of the ${END_WORDS[end]}`, outsideDiameter),
      named(`${end}RunningDiameter`, en`diameter of the ${END_WORDS[end]} with the ${kind.words.loop} on`, runningDiameter),
      named(`${end}Ripple`, en`speed ripple of the ${END_WORDS[end]}`, ripple),
    ];
  });
  const { asNew, limit } = kind.wear(stage.size, MEASURED_PITCHES);
  return [
    ...(running === null ? [] : speedFacts(plan, ofAll, running, of, named)),
    ...loopFacts(of, named, say),
    ...wheels,
    named('asNew', en`${MEASURED_PITCHES} pitches when new`, asNew),
    named('worn', en`${MEASURED_PITCHES} pitches at most`, limit, en`worn out beyond; wear never changes the ratio`),
  ];
}

type Named = (id: string, what: string, worked: Input, note?: string) => Fact;

/** At the dial for the flow wanted, else at the fastest. */
function speedFacts(
  plan: Plan,
  ofAll: readonly Teeth[],
  { motorSpeed }: Running,
  { stage, teeth }: StageOption,
  named: Named,
): readonly Fact[] {
  const speeds = stageSpeeds(plan, ofAll, stage, motorSpeed);
  if (speeds === null) return [];
  const { loop } = driveKind(stage.kind).words;
  return [named('speed', en`speed of the ${loop}`, loopSpeedOf(stage, teeth, speeds))];
}

function loopFacts({ stage, teeth, fit }: StageOption, named: Named, say: Say): readonly Fact[] {
  if (fit.loop === null) return [];
  const kind = driveKind(stage.kind);
  const { length, wrap, span } = kind.loopWorkings(stage.size, teeth.driver, teeth.driven, fit.loop.centre_m);
  const slack = kind.slack(span);
  const degrees = en`${fixed((fit.loop.wrap_rad * 180) / Math.PI, 1, say)} degrees`;
  return [
    named('length', en`taut length at the centres to set`, length, en`${fit.loop.pitches} pitches go on`),
    named('wrap', en`wrap on the smaller wheel`, wrap, degrees),
    named('span', en`free span`, span),
    named('slackFrom', en`movement at mid-span, tightest`, slack.from.movement),
    named('slackTo', en`movement at mid-span, loosest`, slack.to.movement),
    named('spare', en`spare length the loosest stands for`, slack.to.spare, en`not a link to add`),
  ];
}
