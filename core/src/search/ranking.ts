import { type Fraction, ONE, ratioOf, whole } from '../ratio.ts';
import { collectShell, type Run, type Shell } from './collect.ts';
import type { Ratio } from './distinct.ts';
import { ordersOf } from './sides.ts';
import type { Space } from './space.ts';
import { tiesOf } from './ties.ts';
import { nearer, type Place } from './window.ts';

/** A shell is aimed at this many cells, and narrowed to this many options, for each option wanted: rules across stages refuse some. */
const CELLS_PER_OPTION = 2;
/**
 * For a single option two cells would too often be none; and the more a pass over the stream takes, the more cells may as well be
 * gathered on it, rather than have to pass again: equal ratios come in clusters, with nothing in between.
 */
const FEWEST_CELLS = 12;
const STREAM_PER_CELL = 4096;
const MOST_CELLS = 1024;
const OPTIONS_PER_OPTION = 4;
const MORE_EACH_TIME = 4;
const WIDEN = whole(4);

/**
 * All ratios in the order of the ranking, ties together, up to and including `last` (null: to the end).
 * They are found shell by shell: a window around the wanted ratio, then a wider one without what was in the first, until nothing is left.
 *
 * @param options how many options the caller hopes to see, > 0; any number gives the same ratios
 * @param widen   how many times wider the next window is, > 1; any number gives the same ratios
 */
export function* tiesInOrder(run: Run, options: number, last: Place | null, widen: Fraction = WIDEN): Generator<readonly Ratio[]> {
  const { space } = run;
  let reach = space.tuning.firstReach ?? reachByDensity(run, options);
  let shell: Shell | null = null;
  let hoped = options * OPTIONS_PER_OPTION;
  for (;;) {
    const place = nearer(placeAt(reach, space), last);
    shell = collectShell(run, place, shell, hoped);
    yield* tiesOf(space, shell.ratios);
    // rules that refuse all of one shell may refuse very many: few shells get through them
    hoped *= MORE_EACH_TIME;
    // a narrowed shell left some of its window: the next one takes up from there
    if (shell.place !== place) continue;
    if (place === last) return;
    reach = wider(reach, widen);
  }
}

/** null reaches everything. */
type Reach = Fraction | null;

function wider(reach: Reach, widen: Fraction): Reach {
  const next = reach?.mul(widen) ?? null;
  return next && next.compare(ONE) < 0 ? next : null;
}

function placeAt(reach: Reach, { problem }: Space): Place | null {
  if (reach === null) return null;
  const { limits } = problem;
  return { inside: limits === null || reach.compare(limits.high) < 0 || reach.compare(limits.low.neg()) < 0, off: reach };
}

function reachByDensity({ space, sides: { table, outer, inner, alike } }: Run, options: number): Reach {
  const stream = (outer.log.length * inner.log.length) / ordersOf(alike);
  const cells = table.log.length * stream;
  const span = space.factors.reduce((sum, { log }) => sum + (log.at(-1) ?? 0) - (log[0] ?? 0), 0);
  const aim = Math.max(FEWEST_CELLS, CELLS_PER_OPTION * options, Math.min(MOST_CELLS, stream / STREAM_PER_CELL));
  // if all cells lay evenly over their span, the window of width 2 * reach would hold as many as are aimed at
  const reach = (aim * span) / (2 * cells);
  return cells <= 4 * aim || reach >= 1 ? null : reachNear(reach);
}

/** A short fraction a little above a float: how far to look is our choice, so it need not be exact. */
export function reachNear(reach: number): Fraction {
  const scale = 2n ** BigInt(Math.ceil(-Math.log2(reach)) + 4);
  return ratioOf(BigInt(Math.ceil(reach * Number(scale))), scale);
}
