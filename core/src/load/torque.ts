import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import { type Build, type Plan, type SideName, type Stage, stageAt, type Teeth, teethAt } from '../plan.ts';
import { formula, type Input, inFloat, input, type Worked, work } from '../working.ts';
import { type Derived, lacking } from './missing.ts';

/** Share of the work that a stage passes on (common practice, no source). */
export const STAGE_EFFICIENCY = 0.98;

export const pumpTorque = formula({
  letter: 'T',
  written: 'Δp · D / (2 · π · η)',
  dimension: 'torque',
  source: en`hydraulics-textbooks: the work of a turn is pressure times displacement, over the mechanical efficiency`,
  of: ({ Δp, D, η }: Record<'Δp' | 'D' | 'η', number>) => (Δp * D) / (2 * Math.PI * η),
});

const throughStage = formula({
  letter: 'T',
  written: 'T₂ · i / η',
  dimension: 'torque',
  source: en`energy; 0.98 a stage is common practice, no source`,
  of: ({ 'T₂': driven, i, η }: Record<'T₂' | 'i' | 'η', number>) => (driven * i) / η,
});

const bothTorques = formula({
  letter: 'T',
  written: 'a + b',
  dimension: 'torque',
  source: en`statics`,
  of: ({ a, b }: Record<'a' | 'b', number>) => a + b,
});

const shareOfRated = formula({
  letter: 's',
  written: 'T / R',
  dimension: 'share',
  source: en`definition`,
  of: ({ T, R }: Record<'T' | 'R', number>) => T / R,
});

/** A torque, or the inputs that it lacks. */
export type Torque = Derived<Worked<number>>;

/** A stage that turns a pump or both, with the torque at its driven wheel. */
export interface StageTorque {
  readonly stage: Stage;
  readonly teeth: Teeth;
  readonly torque: Torque;
}

/** The load of a build, from the pumps to the motor. */
export interface Torques {
  readonly pumps: Readonly<Record<SideName, Torque>>;
  /** In the order of the plan; a stage that turns no pump carries nothing that is known. */
  readonly stages: readonly StageTorque[];
  readonly motor: Torque;
}

/**
 * Torque that the pumps ask for, at every stage and at the motor. What else the motor may turn is not in a plan.
 *
 * @returns each as far as its inputs are given
 * @throws RangeError  where a stage that turns a pump has no teeth
 * @source T = Δp·D/(2π·η) at each pump; a stage passes on 0.98 of the work (common practice, no source)
 * @example 12 cc at 28 bar and 0.88, beside it 6 cc at 14 bar and 0.85 behind 23 to 25 teeth  // 6.08, 1.57, at the motor 7.55 N m
 */
export function torquesOf(plan: Plan, build: Build): Torques {
  const pumps = { A: torqueOfPump(plan, build, 'A'), B: torqueOfPump(plan, build, 'B') };
  const atStage = new Map<number, Torque>();
  const upTo = (torque: Torque, train: readonly number[]): Torque =>
    train.reduceRight<Torque>((downstream, index) => {
      atStage.set(index, downstream);
      return through(plan, build, index, downstream);
    }, torque);
  // The stages of both trains up to the fork carry both pumps, the others one.
  const [A, B] = [plan.sides.A.train, plan.sides.B.train];
  const apart = A.findIndex((stage, index) => stage !== B[index]);
  const fork = apart < 0 ? A.length : apart;
  const atFork = together(upTo(pumps.A, A.slice(fork)), upTo(pumps.B, B.slice(fork)));
  const motor = upTo(atFork, A.slice(0, fork));
  return {
    pumps,
    stages: plan.stages.flatMap((stage, index) => {
      const torque = atStage.get(index);
      return torque === undefined ? [] : [{ stage, teeth: teethAt(build.teeth, index), torque }];
    }),
    motor: motor.known ? { known: true, value: { ...motor.value, what: en`torque at the motor` } } : motor,
  };
}

/**
 * A torque at the motor as a share of what it is rated for.
 *
 * @param rated_N_m  above 0
 * @source definition
 * @example ratedShare(7.55 N m, 45 N m).value  // 16.8 %
 */
export const ratedShare = (torque: Worked<number>, rated_N_m: Input<number>): Worked<number> =>
  work(shareOfRated, en`share of the rated torque`, { T: torque, R: rated_N_m });

/** Torque at the shaft of a pump, by its pressure and displacement. */
export function torqueOfPump({ sides }: Plan, { pumps }: Pick<Build, 'pumps'>, side: SideName): Torque {
  const { pressure_Pa, mechanicalEfficiency, place } = sides[side];
  if (!pressure_Pa.known || !mechanicalEfficiency.known) {
    const fields = [...(pressure_Pa.known ? [] : ['pressure']), ...(mechanicalEfficiency.known ? [] : ['mechanicalEfficiency'])];
    return { known: false, missing: lacking(place, fields, side) };
  }
  const torque = work(pumpTorque, en`torque of pump ${side}`, {
    Δp: inFloat(input(en`pressure of ${side}`, pressure_Pa.value, 'pressure')),
    D: inFloat(input(en`displacement of pump ${side}`, pumps[side].displacement_m3_per_rev, 'displacement')),
    η: inFloat(input(en`mechanical efficiency of ${side}`, mechanicalEfficiency.value, 'share')),
  });
  return { known: true, value: torque };
}

/** What a stage asks of the shaft that turns it. */
function through(plan: Plan, build: Build, index: number, downstream: Torque): Torque {
  if (!downstream.known) return downstream;
  const { kind, name } = stageAt(plan, index);
  const { driver, driven } = teethAt(build.teeth, index);
  const torque = work(throughStage, en`torque at the driver of ${name}`, {
    'T₂': downstream.value,
    i: inFloat(input(en`turns of the driven for one of the driver`, driveKind(kind).turns(driver, driven), 'number')),
    η: input(en`efficiency of a stage`, STAGE_EFFICIENCY, 'share'),
  });
  return { known: true, value: torque };
}

function together(a: Torque, b: Torque): Torque {
  if (a.known && b.known) return { known: true, value: work(bothTorques, en`torque of both pumps`, { a: a.value, b: b.value }) };
  return { known: false, missing: [a, b].flatMap((torque) => (torque.known ? [] : torque.missing)) };
}
