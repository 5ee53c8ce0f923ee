import { type Fraction, ratioOf } from '../ratio.ts';
import { type Pace, paceOf } from './pace.ts';
import type { Hooks, Rules, SearchProblem } from './problem.ts';
import { logarithm } from './ratioLists.ts';
import { checkWindow, compareGaps, type Gap, gapBetween, type ReachWindow } from './reachGap.ts';
import { reachSpace } from './reachList.ts';
import { type Point, type Points, pointsOf } from './reachPoints.ts';
import { stepper } from './reachStep.ts';
import { type Served, sharePart, spanOf, uncoveredBy, wideFor } from './reachWithin.ts';

export interface SweptReach {
  /** @throws as `reachWithin`; Cancelled when asked to stop */
  readonly within: (window: ReachWindow, keep: number, hooks?: Hooks) => Served;
}

/** More steps than this are not taken for a tolerance. */
const MOST_STEPS = 2 ** 23;
/** In slacks: floats may take for one what lies nearer, and a gap is not looked for unless it is far wider. */
const MARGIN = 16;
/** Beside the ratios of so small numbers the widest gaps are looked for first. */
const SIMPLE = 8;
/** Where nothing is known of the widest gap: a part of the window, and then always a part of that. */
const FIRST_PART = 64;
const FINER = 4;

/**
 * Serves the targets of a window as `reachWithin` does, from ratios that are too many to list. Nothing is sampled.
 *
 * A step goes from a ratio that can be built to another at most `wide` above it; where there is none, the two neighbours are a gap wider
 * than that. So every such gap of the window is found, in about window / wide steps, whatever lies in between.
 * For the worst gap `wide` is the widest found so far, at first beside simple ratios, where the wide ones mostly are.
 *
 * @param problem as `listReach`
 * @returns null where not even products of some factors can be listed, or a factor has no buildable choice
 * @throws Cancelled when asked to stop
 * @source our choice of method
 * @example sweepReach(problem, { admit: () => 0 })?.within(window, 50).worst?.off  // 1/3
 */
export function sweepReach(problem: SearchProblem, rules: Rules, hooks: Hooks = {}): SweptReach | null {
  const space = reachSpace(problem);
  if (space === null) return null;
  let pace = paceOf(hooks);
  const points = pointsOf(space, rules.admit, pace, () => pace.check());
  if (points === null) return null;
  return {
    within: (window, keep, more = {}) => {
      checkWindow(window);
      pace = paceOf(more);
      return servedBy({ points, window, pace, margin: MARGIN * space.slack, unit: space.constant }, keep);
    },
  };
}

interface Sweep {
  readonly points: Points;
  readonly window: ReachWindow;
  readonly pace: Pace;
  readonly margin: number;
  /** what all ratios have in common: simple ones are counted in it */
  readonly unit: Fraction;
}

function servedBy(sweep: Sweep, keep: number): Served {
  const { window } = sweep;
  const { ends, within } = innerOf(sweep);
  const isWide = ({ off }: Gap): boolean => off.compare(window.tolerance) > 0;
  const wide = wideFor(window.tolerance) - sweep.margin;
  const inner = within && within.last.log - within.first.log;
  const tooFine = inner !== null && inner > MOST_STEPS * wide;
  const wider = within === null || tooFine ? [] : gapsOver(sweep, within, wide, false).filter(isWide);
  const widest = within && wider.length === 0 ? widestGaps(sweep, within) : wider;
  const all = [...ends, ...widest].sort(compareGaps);
  const told = [...ends.filter(isWide), ...wider].sort(compareGaps);
  const uncovered = told.reduce((sum, gap) => sum + uncoveredBy(gap, window), 0);
  return {
    worst: all[0] ?? null,
    widest: all.find(({ below, above }) => below !== null && above !== null) ?? null,
    gaps: told.slice(0, keep),
    moreGaps: tooFine ? null : Math.max(0, told.length - keep),
    covered: tooFine ? null : all.length === 0 ? 0 : sharePart(1 - uncovered / spanOf(window)),
  };
}

interface Within {
  readonly first: Point;
  readonly last: Point;
}

/** The first and the last ratio of the window, and the gaps that reach its ends. */
function innerOf({ points: { nearest }, window, margin }: Sweep): { readonly ends: readonly Gap[]; readonly within: Within | null } {
  const { low, high } = window;
  const [logLow, logHigh] = [logarithm(low), logarithm(high)];
  const first = nearest(logLow - margin, 1, (y) => y.compare(low) >= 0);
  const last = nearest(logHigh + margin, -1, (y) => y.compare(high) <= 0);
  const between = (below: Point | null, above: Point | null): readonly Gap[] => {
    const gap = gapBetween(below?.y ?? null, above?.y ?? null, window);
    return gap ? [gap] : [];
  };
  // without a ratio in the window its neighbours are each the first beyond the other end
  if (first === null || last === null || first.y.compare(last.y) > 0) return { ends: between(last, first), within: null };
  const lower = first.y.equals(low)
    ? []
    : between(
        nearest(logLow + margin, -1, (y) => y.compare(low) < 0),
        first,
      );
  const upper = last.y.equals(high)
    ? []
    : between(
        last,
        nearest(logHigh - margin, 1, (y) => y.compare(high) > 0),
      );
  return { ends: [...lower, ...upper], within: { first, last } };
}

/** All gaps wider than `wide`, and perhaps some that are hardly narrower; `rising`: only those no narrower than the widest before them. */
function gapsOver({ points, window, pace, margin }: Sweep, { first, last }: Within, wide: number, rising: boolean): readonly Gap[] {
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
function widestGaps(sweep: Sweep, within: Within): readonly Gap[] {
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
