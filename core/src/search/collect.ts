import { type Cell, type CellReader, cellReader } from './cell.ts';
import { compareRatios, distinctRatios, isAlone, makes, optionCount, type Ratio } from './distinct.ts';
import { join, type Span } from './join.ts';
import type { Pace } from './pace.ts';
import type { Sides } from './sides.ts';
import type { Space } from './space.ts';
import { tiesOf } from './ties.ts';
import { holds, type Place, type Window, wellWithin, windowUpTo } from './window.ts';

/** What every run through the cells needs. */
export interface Run {
  readonly space: Space;
  readonly sides: Sides;
  readonly pace: Pace;
}

export interface Shell {
  /** every ratio up to `place` that was not in the shell before, best first */
  readonly ratios: readonly Ratio[];
  /** null: the end of the ranking */
  readonly place: Place | null;
}

/**
 * The ratios that rank up to `place`, without what the shell before had already covered.
 *
 * Where their cells outgrow the buffer only the first are kept, enough for `options` options before any rule across stages,
 * and the place moves nearer. Ratios of equal |e| are never parted.
 */
export function collectShell(run: Run, place: Place | null, before: Shell | null, options: number): Shell {
  const { space, sides, pace } = run;
  const { slack, inside, tuning } = space;
  const reader = cellReader(space, sides);
  const done = before && windowUpTo(before.place, inside);
  // heavy ratios right at the bound of what is done: floats alone would not keep their millions of cells out
  const edge = (before?.ratios ?? []).filter(({ cells, log }) => cells === null && done && !wellWithin(done, log, 3 * slack));
  const { logLow: low, logHigh: high } = windowUpTo(place, inside);
  const span: Span = { low, high };
  let shell: Shell = { ratios: [], place };
  let known = edge;
  let fresh: Cell[] = [];
  // the first look comes early: what is heavy shows long before the buffer is full, and from then on is not kept
  let room = tuning.buffer / 8;

  const gather = (): void => {
    pace.check();
    shell = { ratios: withCells(run, reader, shell, fresh, done), place: shell.place };
    fresh = [];
  };
  const narrow = (): void => {
    const { kept, enough } = firstTies(run, reader, shell.ratios, options);
    const last = kept.at(-1);
    if (last && (enough || kept.length < shell.ratios.length)) shell = { ratios: kept, place: last.place() };
    const window = windowUpTo(shell.place, inside);
    span.low = window.logLow;
    span.high = window.logHigh;
    known = [...edge, ...shell.ratios.filter(({ cells }) => cells === null)];
    for (const ratio of known) leaveOut(ratio, span, slack);
    room = tuning.buffer - cellsOf(shell.ratios);
  };
  const visit = (table: number, stream: number, log: number): boolean => {
    for (const ratio of known) if (makes(space, ratio, reader, table, stream, log)) return false;
    if (done && wellWithin(done, log, slack)) return false;
    fresh.push({ table, stream, log });
    if (fresh.length >= room) {
      gather();
      narrow();
    }
    return false;
  };
  join(space, sides, span, visit, pace.pass());
  gather();
  return shell;
}

/**
 * Narrows the span so that a heavy ratio at one end of it is not met again. Every other ratio is more than five slacks away where it
 * is alone, so that computed logarithms stay three apart; those of its own cells lie within two, and the join looks one beyond the span.
 */
function leaveOut({ alone, log }: Ratio, span: Span, slack: number): void {
  if (!alone) return;
  if (Math.abs(span.high - log) < 2 * slack) span.high = log - 3.9 * slack;
  if (Math.abs(span.low - log) < 2 * slack) span.low = log + 3.9 * slack;
}

/** The ratios of a shell with fresh cells added, best first; what lies beyond its place or is done already falls away. */
function withCells(run: Run, reader: CellReader, { ratios, place }: Shell, fresh: readonly Cell[], done: Window | null): readonly Ratio[] {
  const { space } = run;
  const window = windowUpTo(place, space.inside);
  const cells = ratios.flatMap((ratio) => ratio.cells ?? []).concat(fresh);
  const light = distinctRatios(space, reader, cells).filter(
    ({ log, y }) => holds(window, log, space.slack, y) && !(done && holds(done, log, space.slack, y)),
  );
  for (const ratio of light) {
    if (!isHeavy(space, reader, ratio)) continue;
    // every cell is an option at least, and that is many enough
    ratio.options = Math.max(ratio.options, ratio.cells?.length ?? 0);
    ratio.cells = null;
    ratio.alone = isAlone(space, ratio);
  }
  const heavy = ratios.filter((ratio) => ratio.cells === null);
  return [...heavy, ...light].sort((a, b) => compareRatios(space, a, b));
}

function isHeavy({ tuning }: Space, reader: CellReader, ratio: Ratio): boolean {
  const cells = ratio.cells ?? [];
  if (cells.length > tuning.buffer / 16) return true;
  // counting options takes longer than finding them, and a few ways are never very many options
  const ways = cells.reduce((sum, { table, stream }) => sum + reader.ways(table, stream), 0);
  return ways > tuning.buffer / 16 && optionCount(ratio, reader) > tuning.heavy;
}

const cellsOf = (ratios: readonly Ratio[]): number => ratios.reduce((n, { cells }) => n + (cells?.length ?? 0), 0);

/** The first ties that hold `options` options; fewer where their cells would fill half of the buffer, but one tie at least. */
function firstTies(
  { space }: Run,
  reader: CellReader,
  ratios: readonly Ratio[],
  options: number,
): { readonly kept: readonly Ratio[]; readonly enough: boolean } {
  const kept: Ratio[] = [];
  let held = 0;
  let cells = 0;
  for (const tie of tiesOf(space, ratios)) {
    cells += cellsOf(tie);
    if (held >= options || (kept.length > 0 && cells > space.tuning.buffer / 2)) break;
    held += tie.reduce((n, ratio) => n + optionCount(ratio, reader), 0);
    kept.push(...tie);
  }
  return { kept, enough: held >= options };
}
