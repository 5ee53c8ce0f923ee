import { driveKind } from '../drives/index.ts';
import { en } from '../en.ts';
import type { Plan } from '../plan.ts';
import { formula, type Input, inFloat, input, type Worked, work } from '../working.ts';
import type { StageTorque } from './torque.ts';

export const loopPull = formula({
  letter: 'F',
  written: '2 · T / D',
  dimension: 'force',
  source: en`statics: the force acts at half the pitch diameter`,
  of: ({ T, D }: Record<'T' | 'D', number>) => (2 * T) / D,
});

const withService = formula({
  letter: 'P',
  written: 'F · f',
  dimension: 'force',
  source: en`asme-b29.1, supplementary information: the load counts as many times as the service factor says`,
  of: ({ F, f }: Record<'F' | 'f', number>) => F * f,
});

const shareOfAllowed = formula({
  letter: 's',
  written: 'P / L',
  dimension: 'share',
  source: en`definition`,
  of: ({ P, L }: Record<'P' | 'L', number>) => P / L,
});

/**
 * What the loop of a stage pulls.
 *
 * @param torque  at its driven wheel
 * @source statics: the force acts at half the pitch diameter
 * @example pullOf(E12 on Bench 1 of the demo, 23 driving 25 teeth of 08B, 1.57 N m).value  // 31 N
 */
export function pullOf({ stage, teeth }: StageTorque, torque: Input<number>): Worked<number> {
  const { pitchDiameter, words } = driveKind(stage.kind);
  return work(loopPull, en`${words.loop} pull in ${stage.name}`, { T: torque, D: pitchDiameter(stage.size, teeth.driven) });
}

/**
 * A pull as it counts against what the loop may pull.
 *
 * @param factor  the service factor, 1 or more
 * @source asme-b29.1, supplementary information
 * @example countedPull(31.04 N, 1.3).value  // 40.4 N
 */
export const countedPull = (pull: Worked<number>, factor: Input<number>): Worked<number> =>
  work(withService, en`${pull.what}, with the service factor`, { F: pull, f: factor });

/** What counts, as a share of what the loop may pull. */
export const shareOfPull = (counted: Worked<number>, allowed: Worked<number>): Worked<number> =>
  work(shareOfAllowed, en`share of the allowed pull`, { P: counted, L: allowed });

/** The service factor of a plan, 1 or more; null where it is not given, never 1. */
export const serviceFactorOf = ({ serviceFactor }: Plan): Input<number> | null =>
  serviceFactor.known ? inFloat(input(en`service factor`, serviceFactor.value, 'number')) : null;
