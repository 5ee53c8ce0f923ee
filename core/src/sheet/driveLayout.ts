import { type DrawnStage, type DrawnWheel, type DriveDrawing, wheelsOf } from './driveDrawing.ts';
import { type Placing, TEXT_SIZE } from './svgShapes.ts';

// Drawn in quarters of a millimetre on paper: lines and texts have their size there, whatever the scale of the drive.
const UNITS_PER_mm = 4;
const UNITS_PER_m = 4000;
/** The box that a drawing keeps within. */
export const DRAWING_WIDTH_mm = 98;
export const DRAWING_HEIGHT_mm = 46;
export const WIDTH = DRAWING_WIDTH_mm * UNITS_PER_mm;
/** Distance of lines of text. */
export const TEXT_LINE = 13.5;
/** Room for the tooth marks at the edge. */
const EDGE = 3;
/** Usual scales: 1, 2, 2.5, 3, 4, 5, 6 and 8 with their powers of ten (our choice). */
const SCALES = [1, 10, 100, 1000].flatMap((power) => [1, 2, 2.5, 3, 4, 5, 6, 8].map((step) => step * power));

/** A shaft with the wheels that sit on it, from the motor on. */
export interface Shaft {
  readonly x: number;
  readonly wheels: readonly { readonly stage: DrawnStage; readonly wheel: DrawnWheel; readonly off: DrawnWheel | null }[];
}

/** Where the shafts stand, and the lines of text above and below them. */
export interface Layout {
  readonly shafts: readonly Shaft[];
  readonly placing: Placing;
  readonly names: number;
  /** Beneath the wheels. */
  readonly foot: number;
  readonly teeth: number;
  readonly dimensions: number;
  readonly height: number;
  readonly height_mm: number;
  /** The drive is so many times smaller on paper. */
  readonly scale: number;
}

/** Lays the drive out to the largest usual scale at which it keeps within its box. */
export function driveLayout(drawing: DriveDrawing): Layout {
  const layouts = SCALES.map((scale) => layOut(drawing, scale));
  const fitting = layouts.find(({ height_mm, scale }) => {
    const { left, right } = extent(drawing.stages, scale);
    return right - left <= WIDTH - 2 * EDGE && height_mm <= DRAWING_HEIGHT_mm;
  });
  if (fitting === undefined) throw new RangeError('driveLayout: no drive is larger than 8000 times its box');
  return fitting;
}

function extent(stages: readonly DrawnStage[], scale: number): { readonly left: number; readonly right: number } {
  const wheels = stages.flatMap(wheelsOf);
  const edges = (side: 1 | -1) =>
    wheels.map(({ centre, pitchDiameter_m }) => ((centre.x_m + (side * pitchDiameter_m) / 2) * UNITS_PER_m) / scale);
  return { left: Math.min(0, ...edges(-1)), right: Math.max(0, ...edges(1)) };
}

function layOut({ stages }: DriveDrawing, scale: number): Layout {
  const units_per_m = UNITS_PER_m / scale;
  const { left, right } = extent(stages, scale);
  const x = (WIDTH - right - left) / 2;
  const radius = Math.max(0, ...stages.flatMap(wheelsOf).map(({ pitchDiameter_m }) => (pitchDiameter_m / 2) * units_per_m));
  const shafts = shaftsOf(stages, x, units_per_m);
  const axis = 2 * TEXT_LINE + radius + EDGE;
  const foot = axis + radius + EDGE + 1;
  const teethLine = foot + TEXT_SIZE;
  const dimensionLine = teethLine + (Math.max(1, ...shafts.map(({ wheels }) => wheels.length)) - 1) * TEXT_LINE + 9;
  const height = stages.length === 0 ? TEXT_LINE : dimensionLine + 2 * TEXT_LINE + 4;
  return {
    shafts,
    placing: { units_per_m, x, y: axis },
    names: TEXT_LINE + TEXT_SIZE - 2,
    foot,
    teeth: teethLine,
    dimensions: dimensionLine,
    height,
    height_mm: height / UNITS_PER_mm,
    scale,
  };
}

function shaftsOf(stages: readonly DrawnStage[], x: number, units_per_m: number): readonly Shaft[] {
  const places = stages.flatMap((stage) =>
    stage.ends.map(({ wheel, off }) => ({ stage, wheel, off, x: x + wheel.centre.x_m * units_per_m })),
  );
  const xs = [...new Set(places.map((place) => place.x))].sort((a, b) => a - b);
  return xs.map((shaft) => ({ x: shaft, wheels: places.filter((place) => place.x === shaft) }));
}
