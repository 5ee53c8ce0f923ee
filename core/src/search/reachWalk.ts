import { type Fraction, ratioOf } from '../ratio.ts';
import type { Pace } from './pace.ts';
import { logarithm } from './ratioLists.ts';
import { type Gap, gapBetween, type ReachWindow } from './reachGap.ts';
import type { Point, Points } from './reachPoints.ts';
import { stepper } from './reachStep.ts';

/** Beside the ratios of so small numbers the widest gaps are looked for first. */
const SIMPLE = 8;
/** Where nothing is known of the widest gap: a part of the window, and then always a part of that. */
const FIRST_PART = 64;
const FINER = 4;

/** A window that is walked through, from one ratio that can be built to another. */
export interface Sweep {
  readonly points: Points;
  readonly window: ReachWindow;
  readonly pace: Pace;
  readonly margin: number;
  /** what all ratios have in common: simple ones are counted in it */
  readonly unit: Fraction;
}

/** The first and the last ratio of a window. */
export interface Within {
  readonly first: Point;
  readonly last: Point;
}

/** All gaps wider than `wide`, and perhaps some that are hardly narrower; `rising`: only those no narrower than the widest before them. */
export function gapsOver({ points, window, pace, margin }: Sweep, { first, last }: Within, wide: number, rising: boolean): readonly Gap[] {
  const gaps: Gap[] = [];
  const step = stepper(points, (first.log + last.log) / 2);
  const pass = pace.pass();
  let reach = wide;
  let at = first.log;
  let steps = 0;
  while (last.log - at > reach) {
    steps += 1;
    if (steps % 1024 === 0) pass((at - first.log) / (last.log - first.log));
    const next = step(at + reach / 2, at + reach) ?? points.nearest(at + reach, -1)?.log ?? at;
    if (next > at + margin) {
      at = next;
      continue;
    }
    const below = points.nearest(at + margin, -1);
    const above = points.nearest(at + margin, 1);
    const gap = gapBetween(below?.y ?? null, above?.y ?? null, window);
    if (gap === null || above === null || below === null) break;
    gaps.push(gap);
    at = above.log;
    if (rising) reach = Math.max(reach, above.log - below.log - margin);
  }
  pass(1);
  return gaps;
}

/** The widest gap, perhaps with some that are narrower; none where there is but one ratio. */
export function widestGaps(sweep: Sweep, within: Within): readonly Gap[] {
  const inner = within.last.log - within.first.log;
  const known = besideSimple(sweep, within) - sweep.margin;
  for (let wide = known > 0 ? known : inner / FIRST_PART; wide > 4 * sweep.margin; wide /= FINER) {
    const gaps = gapsOver(sweep, within, wide, true);
    if (gaps.length > 0) return gaps;
  }
  return [];
}

/** How wide the widest gap beside a simple ratio is; 0 where none was found. Only a beginning: nothing rests on where it lies. */
function besideSimple({ points: { nearest }, margin, unit }: Sweep, { first, last }: Within): number {
  let widest = 0;
  for (let p = 1; p <= SIMPLE; p++) {
    for (let q = 1; q <= SIMPLE; q++) {
      const log = logarithm(unit.mul(ratioOf(p, q)));
      if (!(log >= first.log - margin && log <= last.log + margin)) continue;
      const at = nearest(log + margin, -1);
      if (at === null) continue;
      const [below, above] = [nearest(at.log - margin, -1), nearest(at.log + margin, 1)];
      if (below && below.log >= first.log) widest = Math.max(widest, at.log - below.log);
      if (above && above.log <= last.log && at.log >= first.log) widest = Math.max(widest, above.log - at.log);
    }
  }
  return widest;
}
