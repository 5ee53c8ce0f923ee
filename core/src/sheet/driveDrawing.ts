import type { PlannedOption, StageOption } from '../option.ts';
import { ENDS, type Plan } from '../plan.ts';
import { type Loop, loopRound, type Point } from './loop.ts';

/** Line styles tell the trains apart: A solid, B dashed, what both share thin. */
export type TrainName = 'A' | 'B' | 'shared';
/** Off: fitted now and coming off. */
export type WheelState = 'stays' | 'new' | 'off';

export interface DrawnWheel {
  readonly centre: Point;
  readonly pitchDiameter_m: number;
  readonly runningDiameter_m: number;
  readonly teeth: number;
  readonly state: WheelState;
  readonly train: TrainName;
}

/** One stage at its place: wheels, what they replace, the loop round them and the centres. */
export interface DrawnStage {
  readonly name: string;
  readonly train: TrainName;
  readonly ends: readonly [DrawnEnd, DrawnEnd];
  /** Null where the centre distance is not given; the wheels then stand a nominal gap apart. */
  readonly loop: Loop | null;
  /** The loop as fitted now, where it changes. */
  readonly oldLoop: Loop | null;
  readonly centre_m: number | null;
  readonly oldCentre_m: number | null;
}

export interface DrawnEnd {
  readonly wheel: DrawnWheel;
  /** What comes off here, at its old place; null where the wheel stays. */
  readonly off: DrawnWheel | null;
}

/** The drive as it is drawn, in metres: x to the right, y downwards, the motor shaft at the origin. */
export interface DriveDrawing {
  readonly stages: readonly DrawnStage[];
  /** The shaft at which the trains part, where it is drawn twice. */
  readonly sameShaft: readonly [Point, Point] | null;
}

/** Wheels of a stage without a centre distance stand this share of their mean running diameter apart (our choice). */
const NOMINAL_GAP = 0.5;
/** Between two parts of a drive there is this share of the wheels that face each other (our choice). */
const PART_GAP = 0.4;

/**
 * Lays the stages of a drive in a row along their shafts, from the motor on. The file has no positions of shafts: each driven shaft
 * stands to the right of its driver. Where both trains leave the motor shaft itself, A goes left; where they part at a later shaft,
 * that shaft is drawn a second time at the right, and A goes on from there.
 *
 * @param option  what is drawn
 * @param fitted  what is on the machine now, of the same plan
 * @returns geometry in metres; stages that turn no pump are left out, since the plan does not say which shaft they hang on
 * @throws RangeError  where an option belongs to another plan
 * @source plane geometry
 */
export function driveDrawing(plan: Plan, option: PlannedOption, fitted: PlannedOption): DriveDrawing {
  const { A, B } = { A: plan.sides.A.train, B: plan.sides.B.train };
  const shared = A.filter((stage) => B.includes(stage));
  const onlyA = A.filter((stage) => !B.includes(stage));
  const onlyB = B.filter((stage) => !A.includes(stage));
  const lay = (stages: readonly number[], from: Point, direction: 1 | -1): readonly DrawnStage[] => {
    let at = from;
    return stages.map((index) => {
      const stage = drawnStage(stageAt(option, index), stageAt(fitted, index), at, direction);
      at = stage.ends[1].wheel.centre;
      return stage;
    });
  };
  if (shared.length === 0) return { stages: [...lay(onlyA, MOTOR, -1).toReversed(), ...lay(onlyB, MOTOR, 1)], sameShaft: null };
  const both = lay(shared, MOTOR, 1);
  const parting = both.at(-1)?.ends[1].wheel.centre ?? MOTOR;
  if (onlyA.length === 0 || onlyB.length === 0)
    return { stages: [...both, ...lay(onlyA, parting, 1), ...lay(onlyB, parting, 1)], sameShaft: null };
  const first = [...both, ...lay(onlyB, parting, 1)];
  const again: Point = { x_m: rightOf_m(first, lay(onlyA, MOTOR, 1)), y_m: 0 };
  return { stages: [...first, ...lay(onlyA, again, 1)], sameShaft: [parting, again] };
}

const MOTOR: Point = { x_m: 0, y_m: 0 };

function stageAt(option: PlannedOption, index: number): StageOption {
  const stage = option.stages[index];
  if (stage === undefined) throw new RangeError(`driveDrawing: the option has no stage ${index}`);
  return stage;
}

/** Where the first shaft of a part stands, so that it is clear of the part to its left. */
function rightOf_m(left: readonly DrawnStage[], part: readonly DrawnStage[]): number {
  const end_m = Math.max(...left.flatMap(wheelsOf).map(({ centre, runningDiameter_m }) => centre.x_m + runningDiameter_m / 2));
  const reach_m = Math.max(...part.flatMap(wheelsOf).map(({ centre, runningDiameter_m }) => runningDiameter_m / 2 - centre.x_m));
  return end_m + reach_m * (1 + PART_GAP);
}

/** Every wheel of a stage, those coming off too. */
export const wheelsOf = ({ ends }: DrawnStage): readonly DrawnWheel[] =>
  ends.flatMap(({ wheel, off }) => (off === null ? [wheel] : [wheel, off]));

function drawnStage(option: StageOption, fitted: StageOption, driverAt: Point, direction: 1 | -1): DrawnStage {
  const { stage, teeth, fit } = option;
  const train: TrainName = stage.turns === 'A' || stage.turns === 'B' ? stage.turns : 'shared';
  const centre_m = fit.loop?.centre_m ?? null;
  const oldCentre_m = stage.presentCentre_m.known ? stage.presentCentre_m.value : (fitted.fit.loop?.centre_m ?? null);
  const nominal_m = ((fit.driver.runningDiameter_m + fit.driven.runningDiameter_m) / 2) * (1 + NOMINAL_GAP);
  const drivenAt = (distance_m: number): Point => ({ x_m: driverAt.x_m + direction * distance_m, y_m: driverAt.y_m });
  const place = { driver: driverAt, driven: drivenAt(centre_m ?? nominal_m) };
  const oldPlace = { driver: driverAt, driven: drivenAt(oldCentre_m ?? nominal_m) };
  const changes = ENDS.some((end) => stage[end].teeth !== teeth[end]);
  const wheel = (from: StageOption, end: 'driver' | 'driven', centre: Point, state: WheelState): DrawnWheel => {
    const { pitchDiameter_m, runningDiameter_m } = from.fit[end];
    return { centre, pitchDiameter_m, runningDiameter_m, teeth: from.teeth[end], state, train };
  };
  const drawnEnd = (end: 'driver' | 'driven'): DrawnEnd => {
    const isNew = stage[end].teeth !== teeth[end];
    return { wheel: wheel(option, end, place[end], isNew ? 'new' : 'stays'), off: isNew ? wheel(fitted, end, oldPlace[end], 'off') : null };
  };
  const loop = (from: StageOption, at: typeof place) =>
    loopRound(
      { centre: at.driver, diameter_m: from.fit.driver.pitchDiameter_m },
      { centre: at.driven, diameter_m: from.fit.driven.pitchDiameter_m },
    );
  return {
    name: stage.name,
    train,
    ends: [drawnEnd('driver'), drawnEnd('driven')],
    loop: centre_m === null ? null : loop(option, place),
    oldLoop: changes && oldCentre_m !== null ? loop(fitted, oldPlace) : null,
    centre_m,
    oldCentre_m: changes ? oldCentre_m : null,
  };
}
