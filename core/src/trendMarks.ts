import type { TrendValue } from './ratioCheck/history.ts';
import { escaped } from './sheet/html.ts';

// The marks of a trend chart; places are in millimetres of the drawing.

export const DOT_mm = 0.95;
/** Closer together days would not be read. */
const DAY_ROOM_mm = 17;

/** Numbers in drawings are kept to a hundredth. */
export const mm = (value: number): string => String(Math.round(100 * value) / 100);

export const label = (x: number, y: number, words: string, anchor: 'start' | 'middle' | 'end', more = ''): string =>
  `<text x="${mm(x)}" y="${mm(y)}" text-anchor="${anchor}" stroke="none" ${more}>${escaped(words)}</text>`;

/** Where a mark stands in the drawing. */
export interface At {
  readonly x: number;
  readonly y: number;
}

/** From the rim of one mark to the rim of the next, so that a hollow one stays hollow. */
export function joined(from: At, to: At): string {
  const far = Math.hypot(to.x - from.x, to.y - from.y);
  const [dx, dy] = [((to.x - from.x) * DOT_mm) / far, ((to.y - from.y) * DOT_mm) / far];
  return `<path d="M${mm(from.x + dx)} ${mm(from.y + dy)}L${mm(to.x - dx)} ${mm(to.y - dy)}" stroke-width=".15"/>`;
}

type Pair = readonly [number, number];

export function mark(
  { interval, stable }: TrendValue,
  [x, y]: Pair,
  isRinged: boolean,
  level_mm: (share: number) => number,
  [top, foot]: Pair,
): string {
  const whisker = (end: number) => {
    const inside = Math.min(foot, Math.max(top, end));
    // no cap where it goes on beyond the drawing
    const cap = inside === end ? `M${mm(x - 0.7)} ${mm(end)}h1.4` : '';
    return Math.abs(inside - y) <= DOT_mm
      ? ''
      : `<path d="M${mm(x)} ${mm(y + Math.sign(inside - y) * DOT_mm)}V${mm(inside)}${cap}" stroke-width=".25"/>`;
  };
  const ends = interval === null ? '' : whisker(level_mm(interval.to)) + whisker(level_mm(interval.from));
  const ring = isRinged ? `<circle cx="${mm(x)}" cy="${mm(y)}" r="${2 * DOT_mm}" fill="none" stroke-width=".3"/>` : '';
  return `${ends}${ring}<circle cx="${mm(x)}" cy="${mm(y)}" r="${DOT_mm}" stroke-width=".3"${stable ? '' : ' fill="none"'}/>`;
}

/** The newest day, and as many before it as find room. */
export function days(points: readonly (At & { readonly value: TrendValue })[], height_mm: number): readonly string[] {
  let free_mm = Number.POSITIVE_INFINITY;
  return points.toReversed().flatMap(({ x, value: { date } }) => {
    if (free_mm - x < DAY_ROOM_mm) return [];
    free_mm = x;
    return [label(x, height_mm - 0.7, date, 'middle')];
  });
}
