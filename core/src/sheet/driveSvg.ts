import { en } from '../en.ts';
import type { Say } from '../format.ts';
import type { DrawnStage, DriveDrawing } from './driveDrawing.ts';
import { DRAWING_WIDTH_mm, driveLayout, type Layout, WIDTH } from './driveLayout.ts';
import { driveSentence } from './driveSentence.ts';
import { dimensions, names, teeth } from './driveTexts.ts';
import { escaped } from './html.ts';
import { line, loopShape, plain, shaftDot, TEXT_SIZE, text, units, wheelShape } from './svgShapes.ts';
import { textWidth_em } from './textWidth.ts';

/** A shaft seen along its length is drawn dash-dotted. */
const AXIS = '9 3 2 3';

/**
 * The drive as a picture 98 mm wide and at most 46 mm high, to the largest usual scale at which it fits.
 *
 * @returns SVG text with its scale stated in it and a sentence as its accessible name; black lines only
 * @source our choice of scales: 1, 2, 2.5, 3, 4, 5, 6 and 8 with their powers of ten
 */
export function driveSvg(drawing: DriveDrawing, say: Say): string {
  const layout = driveLayout(drawing);
  const scaleText = `1 : ${String(layout.scale).replace('.', say.decimal)}`;
  const { stages } = drawing;
  const head =
    stages.length === 0
      ? en`Both pumps turn with the motor: no stage to draw.`
      : en`Scale ${scaleText}; A solid, B dashed, dotted comes off`;
  const name = escaped(driveSentence(drawing, scaleText, say));
  const size = `viewBox="0 0 ${WIDTH} ${units(layout.height)}" width="${DRAWING_WIDTH_mm}mm" height="${units(layout.height_mm)}mm"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" aria-label="${name}">`,
    text(plain(head), 0, TEXT_SIZE - 2, Math.min(TEXT_SIZE, WIDTH / textWidth_em(head)), 'start'),
    ...sameShaft(drawing, layout),
    ...shapes(stages, layout),
    ...names(stages, layout),
    ...teeth(layout),
    ...dimensions(stages, layout, say),
    '</svg>',
  ].join('');
}

/** A shaft that is drawn twice is tied to itself beneath the wheels. */
function sameShaft({ sameShaft: shaft }: DriveDrawing, { placing, foot }: Layout): readonly string[] {
  if (shaft === null) return [];
  const [first, again] = shaft.map(({ x_m }) => placing.x + x_m * placing.units_per_m);
  if (first === undefined || again === undefined) return [];
  return [line(first, placing.y, first, foot, AXIS), line(first, foot, again, foot, AXIS), line(again, foot, again, placing.y, AXIS)];
}

function shapes(stages: readonly DrawnStage[], { shafts, placing }: Layout): readonly string[] {
  const old = stages.flatMap(({ oldLoop, ends }) => [
    ...(oldLoop === null ? [] : [loopShape(oldLoop, 'off', placing)]),
    ...ends.flatMap(({ off }) => (off === null ? [] : [wheelShape(off, placing)])),
  ]);
  const present = stages.flatMap(({ loop, train, ends }) => [
    ...ends.map(({ wheel }) => wheelShape(wheel, placing)),
    ...(loop === null ? [] : [loopShape(loop, train, placing)]),
  ]);
  return [...old, ...present, ...shafts.map(({ x }) => shaftDot(x, placing.y))];
}
