import { paceOf } from './pace.ts';
import type { Hooks, Rules, SearchProblem } from './problem.ts';
import { logarithm } from './ratioLists.ts';
import { checkWindow, compareGaps, type Gap, gapBetween, type ReachWindow } from './reachGap.ts';
import { reachSpace } from './reachList.ts';
import { type Point, pointsOf } from './reachPoints.ts';
import { gapsOver, type Sweep, type Within, widestGaps } from './reachWalk.ts';
import { type Served, sharePart, spanOf, uncoveredBy, wideFor } from './reachWithin.ts';

export interface SweptReach {
  /** @throws as `reachWithin`; Cancelled when asked to stop */
  readonly within: (window: ReachWindow, keep: number, hooks?: Hooks) => Served;
}

/** More steps than this are not taken for a tolerance. */
const MOST_STEPS = 2 ** 23;
/** In slacks: floats may take for one what lies nearer, and a gap is not looked for unless it is far wider. */
const MARGIN = 16;
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
  const points = pointsOf(space, rules, pace, () => pace.check());
  if (points === null) return null;
  return {
    within: (window, keep, more = {}) => {
      checkWindow(window);
      pace = paceOf(more);
      return servedBy({ points, window, pace, margin: MARGIN * space.slack, unit: space.constant }, keep);
    },
  };
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
