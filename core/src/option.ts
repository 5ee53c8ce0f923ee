import { findingsOf, type PairSubject } from './check.ts';
import { optionChecks, pairChecks } from './checks/index.ts';
import { type Finding, worstFirst } from './finding.ts';
import type { Say } from './format.ts';
import { liesInside, type OffRatioLimits, offRatio } from './mixRatio.ts';
import type { Build, Plan, Pump, SideName, Stage, Teeth } from './plan.ts';
import { type Assignment, assignPieces, type Origins } from './rack.ts';
import { type Fraction, float } from './ratio.ts';
import { fitOf } from './stageFit.ts';
import { madeBPerA } from './train.ts';
import { travel_m } from './travel.ts';
import { changesOf, type LaidStage, partCount, workOf } from './work.ts';

/** One stage of an option, laid out. */
export interface StageOption extends LaidStage {
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

export function layStage(stage: Stage, teeth: Teeth): LaidStage {
  const fit = fitOf(stage, teeth);
  return { stage, teeth, fit, travel_m: travel_m(stage, teeth, fit) };
}

/** Lays out an option and lets every check speak. */
export function planOption(plan: Plan, pumps: Readonly<Record<SideName, Pump>>, teeth: readonly Teeth[], say: Say): PlannedOption {
  const assignment = assignPieces(plan, teeth);
  const stages = plan.stages.map((stage, index) => stageOption(stage, teeth[index], assignment, index));
  const changes = changesOf(plan, pumps, stages);
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
    changed: partCount(changes),
    purchases: assignment.purchases,
    work_s: float(workOf(plan.minutes, changes).total.value),
    findings: worstFirst([...pairFindings, ...optionFindings]),
  };
}

function stageOption(stage: Stage, teeth: Teeth | undefined, assignment: Assignment, index: number): StageOption {
  const origins = assignment.origins[index];
  if (teeth === undefined || origins === undefined) throw new RangeError(`stageOption: stage ${index} has no teeth`);
  return { ...layStage(stage, teeth), origins };
}

/** Null where there are no limits. */
export const insideLimits = (e: Fraction, limits: OffRatioLimits | null): boolean | null =>
  limits === null ? null : liesInside(e, limits);

export const isBlocked = (option: PlannedOption): boolean => option.findings.some((finding) => finding.severity === 'blocks');
