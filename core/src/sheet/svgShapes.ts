import type { DrawnWheel, TrainName } from './driveDrawing.ts';
import { escaped } from './html.ts';
import type { Loop, Point } from './loop.ts';

/** Metres of the drive to units of the drawing. */
export interface Placing {
  readonly units_per_m: number;
  readonly x: number;
  readonly y: number;
}

/** Height of the texts in a drawing, in its units. */
export const TEXT_SIZE = 12;

const STROKE: Readonly<Record<TrainName, string>> = {
  A: 'stroke="#000" stroke-width="1.6"',
  B: 'stroke="#000" stroke-width="1.6" stroke-dasharray="7 4"',
  shared: 'stroke="#000" stroke-width=".8"',
};
const OFF = 'stroke="#000" stroke-opacity=".6" stroke-width="1.1" stroke-dasharray="1 3"';

/** Numbers in drawings are kept to a hundredth of a unit, 0.0025 mm on paper. */
export const units = (value: number): string => String(Math.round(value * 100) / 100);

const at = (point: Point, placing: Placing): string =>
  `${units(placing.x + point.x_m * placing.units_per_m)} ${units(placing.y + point.y_m * placing.units_per_m)}`;

export function loopShape({ arcs }: Loop, style: TrainName | 'off', placing: Placing): string {
  const [second, first] = arcs;
  const arc = (one: Loop['arcs'][number]) =>
    `A${units(one.radius_m * placing.units_per_m)} ${units(one.radius_m * placing.units_per_m)} 0 ${one.large ? 1 : 0} 1 ${at(one.to, placing)}`;
  const path = `M${at(first.to, placing)}L${at(second.from, placing)}${arc(second)}L${at(first.from, placing)}${arc(first)}Z`;
  return `<path fill="none" ${style === 'off' ? OFF : STROKE[style]} d="${path}"/>`;
}

/** A pitch circle with one mark a tooth; what comes off is a dotted circle. */
export function wheelShape(wheel: DrawnWheel, placing: Placing): string {
  const { centre, pitchDiameter_m, teeth, state } = wheel;
  const [cx, cy] = at(centre, placing).split(' ');
  const circle = `<circle cx="${cx}" cy="${cy}" r="${units((pitchDiameter_m / 2) * placing.units_per_m)}" fill="none"`;
  if (state === 'off') return `${circle} ${OFF}/>`;
  return `${circle} stroke="#000" stroke-width="3.4" pathLength="${teeth * 4}" stroke-dasharray=".9 3.1"/>`;
}

export const line = (x1: number, y1: number, x2: number, y2: number, dash = ''): string =>
  `<path fill="none" stroke="#000" stroke-width=".7"${dash === '' ? '' : ` stroke-dasharray="${dash}"`} d="M${units(x1)} ${units(y1)}L${units(x2)} ${units(y2)}"/>`;

export const shaftDot = (x: number, y: number): string => `<circle cx="${units(x)}" cy="${units(y)}" r="2.4" fill="#000"/>`;

/** A text about its middle, or from its beginning; pieces of it may be bold. */
export function text(
  pieces: readonly { readonly words: string; readonly bold: boolean }[],
  x: number,
  y: number,
  size: number,
  anchor: 'start' | 'middle',
): string {
  const spans = pieces.map(({ words, bold }) => (bold ? `<tspan font-weight="600">${escaped(words)}</tspan>` : escaped(words)));
  return `<text x="${units(x)}" y="${units(y)}" font-size="${units(size)}" text-anchor="${anchor}">${spans.join('')}</text>`;
}

export const plain = (words: string): readonly { readonly words: string; readonly bold: boolean }[] => [{ words, bold: false }];
