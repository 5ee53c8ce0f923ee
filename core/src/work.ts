import type { StageFit } from './drives/driveKind.ts';
import { en } from './en.ts';
import { orNull } from './given.ts';
import { ENDS, type Minutes, type Plan, type Pump, type SideName, type Stage, type Teeth } from './plan.ts';
import { type Fraction, whole } from './ratio.ts';
import { fittedPumps } from './train.ts';
import { isLeftAlone, isMoved } from './travel.ts';
import { formula, input, type Worked, work } from './working.ts';

/** What is counted as work, each kind with minutes of its own. */
export const WORK_KINDS = ['sprocket', 'chainLength', 'centre', 'pump'] as const;
export type WorkKind = (typeof WORK_KINDS)[number];

/** How often each kind of work has to be done. */
export type Changes = Readonly<Record<WorkKind, number>>;

/** A stage with the wheels an option puts on it. */
export interface LaidStage {
  readonly stage: Stage;
  readonly teeth: Teeth;
  readonly fit: StageFit;
  /** How far the shafts move apart (plus) or closer (minus); null where the centre now or to set is not given. */
  readonly travel_m: number | null;
}

/** Time of each kind and of all together. */
export interface Work {
  readonly kinds: Readonly<Record<WorkKind, Worked<Fraction>>>;
  readonly total: Worked<Fraction>;
}

const timeOfKind = formula({
  letter: 't',
  written: 'n · m',
  dimension: 'time',
  source: en`our choice: every change of one kind takes the same time`,
  of: ({ n, m }: Record<'n' | 'm', Fraction>) => n.mul(m),
});

const timeOfAll = formula({
  letter: 't',
  written: 's + l + c + p',
  dimension: 'time',
  source: en`our choice: one person does one change after another`,
  of: ({ s, l, c, p }: Record<'s' | 'l' | 'c' | 'p', Fraction>) => s.add(l).add(c).add(p),
});

const COUNTED: Readonly<Record<WorkKind, string>> = {
  sprocket: en`sprockets`,
  chainLength: en`chain lengths`,
  centre: en`centre settings`,
  pump: en`pumps`,
};

const ONE_OF: Readonly<Record<WorkKind, string>> = {
  sprocket: en`a sprocket`,
  chainLength: en`a chain length`,
  centre: en`a centre setting`,
  pump: en`a pump`,
};

/**
 * Time a change takes, kind by kind and in all.
 *
 * @param minutes  of one change of each kind
 * @param changes  how often each is done, whole numbers, 0 or more
 * @returns seconds, exact, each with its working
 * @source our choice: counts times the minutes the shop states
 * @example workOf({ sprocket: 12 min, chainLength: 10 min, centre: 3 min, pump: 90 min }, { sprocket: 2, chainLength: 1, centre: 1, pump: 0 }).total.value  // 2220 s
 */
export function workOf(minutes: Minutes, changes: Changes): Work {
  const each: Readonly<Record<WorkKind, Fraction>> = {
    sprocket: minutes.sprocket_s,
    chainLength: minutes.chainLength_s,
    centre: minutes.centre_s,
    pump: minutes.pump_s,
  };
  const timeOf = (kind: WorkKind) =>
    work(timeOfKind, COUNTED[kind], {
      n: input(en`${COUNTED[kind]} to change`, whole(changes[kind]), 'number'),
      m: input(en`time for ${ONE_OF[kind]}`, each[kind], 'time'),
    });
  const kinds = { sprocket: timeOf('sprocket'), chainLength: timeOf('chainLength'), centre: timeOf('centre'), pump: timeOf('pump') };
  const { sprocket: s, chainLength: l, centre: c, pump: p } = kinds;
  return { kinds, total: work(timeOfAll, en`work`, { s, l, c, p }) };
}

/** Wheels of a stage that are not the ones fitted. */
export const changedWheelCount = (stage: Stage, teeth: Teeth): number => ENDS.filter((end) => stage[end].teeth !== teeth[end]).length;

/** What is done at one stage: wheels, and where the stage is touched a loop to lengthen or shorten and a centre to set. */
export function stageChanges(laid: LaidStage): Changes {
  const { stage, teeth, fit } = laid;
  const otherLoop = fit.loop !== null && !isLeftAlone(stage, teeth, fit) && fit.loop.pitches !== orNull(stage.presentPitches);
  return {
    sprocket: changedWheelCount(stage, teeth),
    chainLength: Number(otherLoop),
    centre: Number(movesCentre(laid)),
    pump: 0,
  };
}

/** Where the centre now is not given, a centre that can be set has to be. */
export function movesCentre({ stage, fit, travel_m }: Omit<LaidStage, 'teeth'>): boolean {
  if (fit.loop === null) return false;
  return travel_m === null ? stage.centre.known : isMoved(travel_m);
}

export function pumpChanges(plan: Plan, pumps: Readonly<Record<SideName, Pump>>): Changes {
  const fitted = fittedPumps(plan);
  return { sprocket: 0, chainLength: 0, centre: 0, pump: Number(pumps.A !== fitted.A) + Number(pumps.B !== fitted.B) };
}

/** All that is done for an option: stages and pumps add up, which the search relies on. */
export function changesOf(plan: Plan, pumps: Readonly<Record<SideName, Pump>>, stages: readonly LaidStage[]): Changes {
  return [pumpChanges(plan, pumps), ...stages.map(stageChanges)].reduce((sum, more) => ({
    sprocket: sum.sprocket + more.sprocket,
    chainLength: sum.chainLength + more.chainLength,
    centre: sum.centre + more.centre,
    pump: sum.pump + more.pump,
  }));
}

/** Parts that change: wheels and pumps; a chain length takes time, but is no part. */
export const partCount = ({ sprocket, pump }: Changes): number => sprocket + pump;
