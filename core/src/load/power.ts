import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import { END_WORDS, type ENDS, type Plan, type Stage, stageAt, type Teeth, teethAt } from '../plan.ts';
import { type Fraction, ONE } from '../ratio.ts';
import { formula, type Input, inFloat, input, type Worked, work } from '../working.ts';

const shaftSpeed = formula({
  letter: 'n',
  written: 'N · i',
  dimension: 'speed',
  source: en`kinematics of the drive`,
  of: ({ N, i }: Record<'N' | 'i', Fraction>) => N.mul(i),
});

export const shaftPower = formula({
  letter: 'P',
  written: '2 · π · T · n',
  dimension: 'power',
  source: en`definition of power at a shaft`,
  of: ({ T, n }: Record<'T' | 'n', number>) => 2 * Math.PI * T * n,
});

const withService = formula({
  letter: 'P',
  written: 'P₁ · f',
  dimension: 'power',
  source: en`asme-b29.1, supplementary information: the load counts as many times as the service factor says`,
  of: ({ 'P₁': power, f }: Record<'P₁' | 'f', number>) => power * f,
});

const shareOfRated = formula({
  letter: 's',
  written: 'P / H',
  dimension: 'share',
  source: en`definition`,
  of: ({ P, H }: Record<'P' | 'H', number>) => P / H,
});

/** Speeds of both wheels of a stage. */
export type StageSpeeds = Readonly<Record<(typeof ENDS)[number], Worked<Fraction>>>;

/**
 * How fast the wheels of a stage turn.
 *
 * @param teeth       of every stage of the plan, in its order
 * @param stage       one of the plan
 * @param motorSpeed  at the motor
 * @returns exact; null for a stage that turns no pump: a plan does not say what turns it
 * @throws RangeError  where a stage before it has no teeth
 * @source kinematics of the drive
 * @example stageSpeeds(plan, [20 to 40, 30 to 20], second stage, 90 rpm)  // driver 45 rpm, driven 67.5 rpm
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
    work(shaftSpeed, en`speed of ${stage.name} ${END_WORDS[end]}`, {
      N: motorSpeed,
      i: input(en`turns for one of the motor`, turns(stages), 'number'),
    });
  return { driver: speed('driver', before), driven: speed('driven', [...before, index]) };
}

/**
 * Speed of the loop of a stage.
 *
 * @source that of its drive kind
 * @example loopSpeedOf(stage of chain 40, { driver: 17, driven: 34 }, 1000 rpm at the driver).value  // 3.598 m/s = 708.3 ft/min
 */
export const loopSpeedOf = (stage: Stage, teeth: Teeth, speeds: StageSpeeds): Worked<number> =>
  driveKind(stage.kind).loopSpeed(stage.size, teeth.driver, inFloat(speeds.driver));

/**
 * The power in the loop of a stage.
 *
 * @param torque  at its driven wheel
 * @source definition of power at a shaft
 * @example powerIn(stage, 750 rpm at the driven wheel, 15.9155 N m).value  // 1250 W
 */
export const powerIn = (stage: Stage, speeds: StageSpeeds, torque: Input<number>): Worked<number> =>
  work(shaftPower, en`power in ${stage.name}`, { T: torque, n: inFloat(speeds.driven) });

/**
 * What the loop of a stage is rated for on its smaller wheel.
 *
 * @param speeds  above 0
 * @returns null where no rating is published for its size
 * @source that of its drive kind
 * @example ratedPowerOf(stage of chain 40, { driver: 17, driven: 34 }, 1000 rpm at the driver)?.value  // 4086 W = 5.48 hp
 */
export function ratedPowerOf(stage: Stage, teeth: Teeth, speeds: StageSpeeds): Worked<number> | null {
  const smaller = teeth.driver <= teeth.driven ? 'driver' : 'driven';
  return driveKind(stage.kind).ratedPower(stage.size, teeth[smaller], inFloat(speeds[smaller]));
}

/**
 * A power as it counts against the rating.
 *
 * @param factor  the service factor, 1 or more
 * @source asme-b29.1, supplementary information
 * @example countedPower(1250 W, 1.3).value  // 1625 W
 */
export const countedPower = (power: Worked<number>, factor: Input<number>): Worked<number> =>
  work(withService, en`${power.what}, with the service factor`, { 'P₁': power, f: factor });

/** What counts, as a share of what the loop is rated for. */
export const shareOfPower = (counted: Worked<number>, rated: Worked<number>): Worked<number> =>
  work(shareOfRated, en`share of the rated power`, { P: counted, H: rated });
