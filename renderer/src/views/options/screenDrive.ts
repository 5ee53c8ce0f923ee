import { en } from '../../../../core/src/en.ts';
import { lengthText, type Say } from '../../../../core/src/index.ts';
import { type DrawnStage, type DriveDrawing, wheelsOf } from '../../../../core/src/sheet/driveDrawing.ts';
import type { Loop, Point } from '../../../../core/src/sheet/loop.ts';
import { spread } from '../../../../core/src/sheet/spread.ts';
import { textWidth_em } from '../../../../core/src/sheet/textWidth.ts';

/** A line of text with its middle; `isNew` where it names a part that goes on. */
export interface Label {
  readonly words: string;
  readonly isNew: boolean;
  readonly x: number;
  readonly y: number;
}

/** A drive laid out for a screen, in pixels. */
export interface ScreenDrive {
  readonly px: (point: Point) => { readonly x: number; readonly y: number };
  readonly px_per_m: number;
  /** So many times smaller than the drive, on a screen of 96 dots to the inch. */
  readonly scale: number;
  readonly height: number;
  readonly labels: readonly Label[];
  readonly dimensions: readonly { readonly from: number; readonly to: number; readonly y: number }[];
}

const DOTS_PER_m = 96 / 0.0254;
const TALLEST = 200;
const EDGE = 4;
const TEXT = 12;
const LINE = 16;
const SCALES = [1, 10, 100, 1000].flatMap((power) => [1, 2, 2.5, 3, 4, 5, 6, 8].map((step) => step * power));

/** Lays a drive out to the largest usual scale that fits a width; texts keep their size whatever the scale. */
export function screenDrive(drawing: DriveDrawing, width: number, say: Say): ScreenDrive {
  const { stages } = drawing;
  const wheels = stages.flatMap(wheelsOf);
  const left_m = Math.min(0, ...wheels.map(({ centre, runningDiameter_m }) => centre.x_m - runningDiameter_m / 2));
  const right_m = Math.max(0, ...wheels.map(({ centre, runningDiameter_m }) => centre.x_m + runningDiameter_m / 2));
  const radius_m = Math.max(0, ...wheels.map(({ runningDiameter_m }) => runningDiameter_m / 2));
  const fits = (scale: number) => {
    const px_per_m = DOTS_PER_m / scale;
    return (right_m - left_m) * px_per_m <= width - 2 * EDGE && 2 * radius_m * px_per_m <= TALLEST;
  };
  const scale = SCALES.find(fits) ?? 8000;
  const px_per_m = DOTS_PER_m / scale;
  const x0 = (width - (right_m + left_m) * px_per_m) / 2;
  const y0 = LINE + EDGE + radius_m * px_per_m;
  const px = ({ x_m, y_m }: Point) => ({ x: x0 + x_m * px_per_m, y: y0 + y_m * px_per_m });
  const foot = y0 + radius_m * px_per_m + EDGE;
  const shafts = shaftsOf(stages, (point) => px(point).x);
  const most = Math.max(1, ...shafts.map(({ lines }) => lines.length));
  const dimension = foot + most * LINE + 10;
  return {
    px,
    px_per_m,
    scale,
    height: stages.length === 0 ? LINE : dimension + LINE + EDGE,
    labels: [
      ...row(
        width,
        stages.map((stage) => ({ at: midway(stage, px), lines: [plain(nameOf(stage))] })),
        TEXT,
      ),
      ...row(width, shafts, foot + TEXT),
      ...row(
        width,
        stages.map((stage) => ({ at: midway(stage, px), lines: [plain(centreOf(stage, say))] })),
        dimension + TEXT + 2,
      ),
    ],
    dimensions: stages.map(({ ends: [driver, driven] }) => ({
      from: px(driver.wheel.centre).x,
      to: px(driven.wheel.centre).x,
      y: dimension,
    })),
  };
}

type Words = { readonly words: string; readonly isNew: boolean };
type Column = { readonly at: number; readonly lines: readonly Words[] };

const plain = (words: string): Words => ({ words, isNew: false });
const midway = ({ ends: [driver, driven] }: DrawnStage, px: ScreenDrive['px']): number =>
  (px(driver.wheel.centre).x + px(driven.wheel.centre).x) / 2;
const nameOf = ({ name, train }: DrawnStage): string => (train === 'shared' ? en`${name}, to A and B` : en`${name}, to ${train}`);
const centreOf = ({ centre_m, oldCentre_m }: DrawnStage, say: Say): string => {
  if (centre_m === null) return en`centre not given`;
  return `${lengthText(centre_m, say)}${oldCentre_m === null ? '' : en`, was ${lengthText(oldCentre_m, say)}`}`;
};

/** Every shaft with the teeth of the wheels on it, one line each. */
function shaftsOf(stages: readonly DrawnStage[], x: (point: Point) => number): readonly Column[] {
  const wheels = stages.flatMap(({ name, ends }) => ends.map((end) => ({ name, ...end, at: x(end.wheel.centre) })));
  return [...new Set(wheels.map(({ at }) => at))]
    .sort((a, b) => a - b)
    .map((at) => {
      const here = wheels.filter((wheel) => wheel.at === at);
      return {
        at,
        lines: here.map(({ name, wheel, off }) => ({
          words: `${here.length > 1 ? `${name} ` : ''}${wheel.teeth} T${off === null ? '' : en`, was ${off.teeth}`}`,
          isNew: wheel.state === 'new',
        })),
      };
    });
}

/** Columns of text side by side, pushed apart where they would meet. */
function row(width: number, columns: readonly Column[], y: number): readonly Label[] {
  const widths = columns.map(({ lines }) => (Math.max(...lines.map(({ words }) => textWidth_em(words))) * 0.85 + 0.6) * TEXT);
  const middles = spread(
    columns.map(({ at }, index) => ({ at, width: widths[index] ?? 0 })),
    0,
    width,
  );
  return columns.flatMap(({ lines }, index) => lines.map((words, below) => ({ ...words, x: middles[index] ?? 0, y: y + below * LINE })));
}

/** The course of a loop as a path. */
export function loopPath({ arcs: [second, first] }: Loop, { px, px_per_m }: ScreenDrive): string {
  const point = (at: Point) => `${px(at).x.toFixed(2)} ${px(at).y.toFixed(2)}`;
  const arc = ({ radius_m, large, to }: Loop['arcs'][number]) => {
    const radius = (radius_m * px_per_m).toFixed(2);
    return `A${radius} ${radius} 0 ${large ? 1 : 0} 1 ${point(to)}`;
  };
  return `M${point(first.to)}L${point(second.from)}${arc(second)}L${point(first.from)}${arc(first)}Z`;
}
