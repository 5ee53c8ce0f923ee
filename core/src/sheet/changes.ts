import { driveKind } from '../drives/index.ts';
import { en, plural } from '../en.ts';
import { lengthText, quantity, type Say } from '../format.ts';
import type { PlannedOption, StageOption } from '../option.ts';
import { ENDS, type Plan, type Pump, type SideName } from '../plan.ts';
import { fittedPumps } from '../train.ts';
import { isLeftAlone } from '../travel.ts';
import { type ChangeRow, centreRow, loopRow, pumpRow, wheelRow } from './changeRows.ts';
import { displacementText, shortName, whomItTurns } from './paperText.ts';

/** A stage that changes, or the pumps: wheels, loop and centres, or both sides. */
export interface ChangeGroup {
  readonly title: string;
  readonly detail: string;
  readonly rows: readonly ChangeRow[];
}

export interface Changes {
  readonly summary: string;
  readonly groups: readonly ChangeGroup[];
  /** What is left alone, one line each. */
  readonly stays: readonly string[];
}

const SIDES = ['A', 'B'] as const satisfies readonly SideName[];
export function changesOf(plan: Plan, option: PlannedOption, say: Say): Changes {
  const touched = option.stages.filter(isTouched);
  const fitted = fittedPumps(plan);
  const newPumps = SIDES.filter((side) => option.pumps[side] !== fitted[side]);
  const { changed } = option;
  const work = quantity(option.work_s, 'time', 'min', 0, say);
  return {
    summary: changed === 0 ? en`nothing changes` : plural(changed)`${changed} part, about ${work}|${changed} parts, about ${work}`,
    groups: [
      ...touched.map((stage) => stageGroup(plan, stage, say)),
      ...(newPumps.length === 0
        ? []
        : [{ title: en`Pumps`, detail: '', rows: newPumps.map((side) => pumpRow(side, fitted[side], option.pumps[side], say)) }]),
    ],
    stays: [
      ...option.stages.filter((stage) => !isTouched(stage)).map((stage) => stageStays(stage, say)),
      ...pumpsStay(
        SIDES.filter((side) => !newPumps.includes(side)),
        fitted,
        say,
      ),
    ],
  };
}

/** The opposite of left alone: something on this stage is for the hands to do. */
export const isTouched = ({ stage, teeth, fit }: StageOption): boolean => !isLeftAlone(stage, teeth, fit);

function stageGroup(plan: Plan, option: StageOption, say: Say): ChangeGroup {
  const { stage } = option;
  return {
    title: stage.name,
    detail: `${whomItTurns(stage)}, ${driveKind(stage.kind).words.loop} ${stage.size}`,
    rows: [...ENDS.map((end) => wheelRow(plan, option, end, say)), loopRow(option), ...centreRow(option, say)],
  };
}

function stageStays({ stage, teeth, fit }: StageOption, say: Say): string {
  const { loop } = driveKind(stage.kind).words;
  const words = [
    en`${teeth.driver} to ${teeth.driven} T`,
    ...(fit.loop === null ? [] : [en`${loop} ${stage.size} of ${fit.loop.pitches} pitches`]),
    ...(stage.presentCentre_m.known ? [en`centres ${lengthText(stage.presentCentre_m.value, say)}`] : []),
  ];
  return en`${shortName(stage.name)} stays: ${words.join(', ')}.`;
}

function pumpsStay(sides: readonly SideName[], pumps: Readonly<Record<SideName, Pump>>, say: Say): readonly string[] {
  if (sides.length === 0) return [];
  const words = sides.map(
    (side) => `${side} ${shortName(pumps[side].name)}, ${displacementText(pumps[side].displacement_m3_per_rev, say)}`,
  );
  const list = words.join('; ');
  return [plural(sides.length)`Pump stays: ${list}.|Pumps stay: ${list}.`];
}
