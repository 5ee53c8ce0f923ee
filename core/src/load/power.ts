import { driveKind } from '../drives/index.ts';
import type { ENDS, Plan, Stage, Teeth } from '../plan.ts';
import { type Fraction, ONE } from '../ratio.ts';
import { formula, type Input, inFloat, input, type Worked, work } from '../working.ts';
import { stageAt, teethAt } from './torque.ts';

const shaftSpeed = formula({
  letter: 'n',
  written: 'N · i',
  dimension: 'speed',
  source: 'kinematics of the drive',
  of: ({ N, i }: Record<'N' | 'i', Fraction>) => N.mul(i),
});

export const shaftPower = formula({
  letter: 'P',
  written: '2 · π · T · n',
  dimension: 'power',
  source: 'definition of power at a shaft',
  of: ({ T, n }: Record<'T' | 'n', number>) => 2 * Math.PI * T * n,
});

const withService = formula({
  letter: 'P',
  written: 'P₁ · f',
  dimension: 'power',
  source: 'asme-b29.1, supplementary information: the load counts as many times as the service factor says',
  of: ({ 'P₁': power, f }: Record<'P₁' | 'f', number>) => power * f,
});

const shareOfRated = formula({
  letter: 's',
  written: 'P / H',
  dimension: 'share',
  source: 'definition',
  of: ({ P, H }: Record<'P' | 'H', number>) => P / H,
});

/** Speeds of both wheels of a stage. */
export type StageSpeeds = Readonly<Record<(typeof ENDS)[number], Worked<Fraction>>>;

/**
 * How fast the wheels of a stage turn.
 *
 * @param motorSpeed  at the motor
 * @returns null for a stage that turns no pump: a plan does not say what turns it
 */
export function stageSpeeds(plan: Plan, teeth: readonly Teeth[], stage: Stage, motorSpeed: Input<Fraction>): StageSpeeds | null {
  const index = plan.stages.indexOf(stage);
  const train = [plan.sides.A.train, plan.sides.B.train].find((one) => one.includes(index));
  if (train === undefined) return null;
  const before = train.slice(0, train.indexOf(index));
  const turns = (stages: readonly number[]) =>
    stages.reduce((product, one) => {
      const { driver, driven } = teethAt(teeth, one);
      return product.mul(driveKind(stageAt(plan, one).kind).turns(driver, driven));
    }, ONE);
  const speed = (end: (typeof ENDS)[number], stages: readonly number[]) =>
    work(shaftSpeed, `speed of ${stage.name} ${end}`, {
      N: motorSpeed,
      i: input('turns for one of the motor', turns(stages), 'number'),
    });
  return { driver: speed('driver', before), driven: speed('driven', [...before, index]) };
}

/** Speed of the loop of a stage. */
export const loopSpeedOf = (stage: Stage, teeth: Teeth, speeds: StageSpeeds): Worked<number> =>
  driveKind(stage.kind).loopSpeed(stage.size, teeth.driver, inFloat(speeds.driver));

/** The power in the loop of a stage, from the torque at its driven wheel. */
export const powerIn = (stage: Stage, speeds: StageSpeeds, torque: Input<number>): Worked<number> =>
  work(shaftPower, `power in ${stage.name}`, { T: torque, n: inFloat(speeds.driven) });

/** What the loop is rated for on its smaller wheel, at a speed above 0; null where no rating is published for its size. */
export function ratedPowerOf(stage: Stage, teeth: Teeth, speeds: StageSpeeds): Worked<number> | null {
  const smaller = teeth.driver <= teeth.driven ? 'driver' : 'driven';
  return driveKind(stage.kind).ratedPower(stage.size, teeth[smaller], inFloat(speeds[smaller]));
}

export const countedPower = (power: Worked<number>, factor: Input<number>): Worked<number> =>
  work(withService, `${power.what}, with the service factor`, { 'P₁': power, f: factor });

export const shareOfPower = (counted: Worked<number>, rated: Worked<number>): Worked<number> =>
  work(shareOfRated, 'share of the rated power', { P: counted, H: rated });
