import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import { lengthText, type Say } from '../format.ts';
import { orNull } from '../given.ts';
import type { PlannedOption, StageOption } from '../option.ts';
import { END_WORDS, ENDS, type Plan, type SideName, type Stage } from '../plan.ts';
import { fittedPumps } from '../train.ts';
import { movesCentre } from '../work.ts';
import { pitchesToChange } from './changeRows.ts';
import { isTouched } from './changes.ts';
import { shortName } from './paperText.ts';

/** Steps in the order in which they are done, each with a box to tick; the machine's own lines close the list. */
export interface Steps {
  readonly lines: readonly string[];
  readonly own: readonly string[];
}

const SIDES = ['A', 'B'] as const satisfies readonly SideName[];

const RUN = en`Guard on, lockout off, tank valves open. Run slowly until both sides are free of air.`;
const PROVE = en`Ratio check as below. Inside: release for use.`;
/** Without limits nothing is inside. */
const PROVE_WITHOUT_LIMITS = en`Ratio check as below. Release only with limits from the data sheet.`;

/** @source common practice, no source; the wording is ours */
export function stepsOf(plan: Plan, option: PlannedOption, say: Say): Steps {
  const touched = option.stages.filter(isTouched);
  const pumps = pumpSteps(plan, option);
  const last = [RUN, plan.mix.limits === null ? PROVE_WITHOUT_LIMITS : PROVE];
  const nothing = touched.length === 0 && pumps.length === 0;
  return {
    lines: nothing ? last : [...opening(touched), ...fitting(touched, say), ...pumps, ...closing(touched), ...last],
    own: plan.checklist,
  };
}

function opening(touched: readonly StageOption[]): readonly string[] {
  const off = touched.map(({ stage }) => `${shortName(stage.name)} ${loopWord(stage)}`);
  return [
    en`Locked out, start tried. Tank valves shut, pressure off on both sides.`,
    off.length === 0 ? en`Guard off.` : en`Guard off. Slacken and take off: ${off.join(', ')}.`,
  ];
}

/** One step for each kind of work, each naming every stage it is done on. */
function fitting(touched: readonly StageOption[], say: Say): readonly string[] {
  const wheels = touched.flatMap(({ stage, teeth }) => {
    const ends = ENDS.filter((end) => stage[end].teeth !== teeth[end]).map((end) => en`${END_WORDS[end]} ${teeth[end]}\u00A0T`);
    return ends.length === 0 ? [] : [`${shortName(stage.name)} ${ends.join(', ')}`];
  });
  const loops = touched.flatMap(({ stage, fit }) =>
    fit.loop === null ? [] : [`${shortName(stage.name)} ${loopWord(stage)} ${lengthWords(stage, fit.loop.pitches)}`],
  );
  const centres = touched.flatMap((option) =>
    option.fit.loop !== null && movesCentre(option) ? [`${shortName(option.stage.name)} ${lengthText(option.fit.loop.centre_m, say)}`] : [],
  );
  const unknown = touched.filter(({ fit }) => fit.loop === null).map(({ stage }) => shortName(stage.name));
  return [
    ...(wheels.length === 0 ? [] : [en`Put on: ${wheels.join('; ')}. Keys in, set screws tight, faces in line with a straightedge.`]),
    ...(loops.length === 0 ? [] : [en`To length: ${loops.join('; ')}. Connecting links closed.`]),
    ...(centres.length === 0 ? [] : [en`Centres: ${centres.join('; ')}.`]),
    ...unknown.map((name) => en`${name}: fit, then note pitches ________ and centres ________`),
    ...(touched.length === 0 ? [] : [en`Set the slack and measure the wear as in the table.`]),
  ];
}

const loopWord = ({ kind }: Stage): string => driveKind(kind).words.loop;

const lengthWords = (stage: Stage, pitches: number): string =>
  en`to ${pitches} pitches (${pitchesToChange(orNull(stage.presentPitches), pitches)})`;

function pumpSteps(plan: Plan, option: PlannedOption): readonly string[] {
  const fitted = fittedPumps(plan);
  return SIDES.filter((side) => option.pumps[side] !== fitted[side]).map(
    (side) => en`Pump ${side}: ${shortName(option.pumps[side].name)} on. Seals, coupling and sense of rotation as its manual says.`,
  );
}

const closing = (touched: readonly StageOption[]): readonly string[] => [
  touched.length === 0 ? en`One full turn by hand: nothing binds.` : en`One full turn of every shaft by hand: nothing touches.`,
];
