import { findingsOf, type PairSubject } from './check.ts';
import { optionChecks, pairChecks } from './checks/index.ts';
import type { StageFit } from './drives/driveKind.ts';
import { driveKind } from './drives/index.ts';
import { type Finding, worstFirst } from './finding.ts';
import type { Say } from './format.ts';
import { orNull } from './given.ts';
import { type OffRatioLimits, offRatio } from './mixRatio.ts';
import { type Build, ENDS, type Plan, type Pump, type SideName, type Stage, type Teeth } from './plan.ts';
import { type Assignment, assignPieces, type Origins } from './rack.ts';
import type { Fraction } from './ratio.ts';
import { fittedPumps, madeBPerA } from './train.ts';
import { isLeftAlone, isMoved, travel_m } from './travel.ts';

/** One stage of an option, laid out. */
export interface StageOption {
  readonly stage: Stage;
  readonly teeth: Teeth;
  readonly fit: StageFit;
  /** How far the shafts move apart (plus) or closer (minus); null where the centre now or to set is not given. */
  readonly travel_m: number | null;
  readonly origins: Origins;
}

/** One way to build the ratio, with all that follows from it. */
export interface PlannedOption extends Build {
  readonly stages: readonly StageOption[];
  /** Volume of B per volume of A, exact. */
  readonly bPerA: Fraction;
  readonly offRatio: Fraction;
  /** Null where the material has no limits. */
  readonly inside: boolean | null;
  /** Positions that change: wheels and pumps. */
  readonly changed: number;
  readonly purchases: number;
  readonly work_s: number;
  readonly findings: readonly Finding[];
}

export function fitOf(stage: Stage, teeth: Teeth): StageFit {
  return driveKind(stage.kind).fit(stage.size, teeth.driver, teeth.driven, {
    centre: orNull(stage.centre),
    takeUp_pitches: orNull(stage.takeUp_pitches),
    presentPitches: orNull(stage.presentPitches),
    offsetLinkAllowed: stage.offsetLinkAllowed,
  });
}

/** Lays out an option and lets every check speak. */
export function planOption(plan: Plan, pumps: Readonly<Record<SideName, Pump>>, teeth: readonly Teeth[], say: Say): PlannedOption {
  const assignment = assignPieces(plan, teeth);
  const stages = plan.stages.map((stage, index) => stageOption(stage, teeth[index], assignment, index));
  const made = madeBPerA(plan, pumps, teeth);
  const e = offRatio(made, plan.mix.wantedBPerA);
  const pairFindings = stages.flatMap(({ stage, teeth: pair, fit }) => {
    const subject: PairSubject = { plan, stage, teeth: pair, fit };
    return pairChecks.flatMap((check) => findingsOf(check, subject, say));
  });
  const optionFindings = optionChecks.flatMap((check) => findingsOf(check, { plan, pumps, teeth, assignment }, say));
  return {
    pumps,
    teeth,
    stages,
    bPerA: made,
    offRatio: e,
    inside: insideLimits(e, plan.mix.limits),
    changed: changedWheels(stages) + changedPumps(plan, pumps),
    purchases: assignment.purchases,
    work_s: work_s(plan, pumps, stages),
    findings: worstFirst([...pairFindings, ...optionFindings]),
  };
}

function stageOption(stage: Stage, teeth: Teeth | undefined, assignment: Assignment, index: number): StageOption {
  const origins = assignment.origins[index];
  if (teeth === undefined || origins === undefined) throw new RangeError(`stageOption: stage ${index} has no teeth`);
  const fit = fitOf(stage, teeth);
  return { stage, teeth, fit, travel_m: travel_m(stage, teeth, fit), origins };
}

/** Inclusive, compared exactly; null where there are no limits. */
export function insideLimits(e: Fraction, limits: OffRatioLimits | null): boolean | null {
  return limits === null ? null : limits.low.compare(e) <= 0 && e.compare(limits.high) <= 0;
}

export const isBlocked = (option: PlannedOption): boolean => option.findings.some((finding) => finding.severity === 'blocks');

const changedWheels = (stages: readonly StageOption[]): number =>
  stages.reduce((sum, { stage, teeth }) => sum + ENDS.filter((end) => stage[end].teeth !== teeth[end]).length, 0);

function changedPumps(plan: Plan, pumps: PlannedOption['pumps']): number {
  const fitted = fittedPumps(plan);
  return Number(pumps.A !== fitted.A) + Number(pumps.B !== fitted.B);
}

/** Time to fit: wheels, pumps, and for each stage that is touched a loop to lengthen or shorten and a centre to set. */
function work_s(plan: Plan, pumps: PlannedOption['pumps'], stages: readonly StageOption[]): number {
  const { minutes } = plan;
  const touched = stages.filter(({ stage, teeth, fit }) => !isLeftAlone(stage, teeth, fit));
  const loops = touched.filter(({ stage, fit }) => fit.loop !== null && fit.loop.pitches !== orNull(stage.presentPitches)).length;
  const centres = touched.filter(movesCentre).length;
  return (
    changedWheels(stages) * minutes.sprocket_s +
    changedPumps(plan, pumps) * minutes.pump_s +
    loops * minutes.chainLength_s +
    centres * minutes.centre_s
  );
}

/** Where the centre now is not given, a centre that can be set has to be. */
export function movesCentre({ stage, fit, travel_m: move_m }: StageOption): boolean {
  if (fit.loop === null) return false;
  return move_m === null ? stage.centre.known : isMoved(move_m);
}
