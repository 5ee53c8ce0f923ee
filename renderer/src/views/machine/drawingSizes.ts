import type { ShaftLink } from '../../../../core/src/file/driveTree.ts';
import type { End } from './machineForm.ts';

// Lengths of the drawing in px. A column holds a shaft and the chain to the next; boxes sit on the edges of the shafts.
export const COLUMN = 192;
export const ROW = 104;
export const SHAFT_WIDTH = 84;
export const SHAFT_HALF = 28;
export const TOP = 56;
export const LEFT = 2;
export const BOX = { width: 46, height: 36 };
export const RING = 4;
export const PUMP_WIDTH = 36;
export const PUMP_ROOM = 92;
export const CHAIN_HALF = 9;
export const MOST_LETTERS = 16;

export const xOf = (column: number) => LEFT + column * COLUMN;
export const yOf = (row: number) => TOP + row * ROW;
/** Left edge of the box of a slot. */
export const boxX = (link: ShaftLink, end: End) =>
  (end === 'driver' ? xOf(link.from.column) + SHAFT_WIDTH : xOf(link.to.column)) - BOX.width / 2;
