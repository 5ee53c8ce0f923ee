import { findOptions, type Hooks, type Option, type Rules, type SearchProblem } from '../../core/src/search/index.ts';
import { anything } from '../core/search/racks.ts';
import { everyOption } from '../core/search/slowTwin.ts';
import type { Form } from './form.ts';
import { type Instance, instance, KEEP, ordinary, problemOf } from './instances.ts';
import { nestedLoops, rawCount } from './nestedLoops.ts';
import type { Baseline, Row } from './report.ts';
import { type Series, seriesRun } from './series.ts';
import { median, timed } from './timing.ts';

/** What the loops walk for their rate until a longer run of theirs has ended: a short run is all filling and sorting. */
const RATED = instance(30, 3);
/** Loops that end sooner are run so often and the median taken. */
const SHORT_MS = 200;
const SHORT_TIMES = 7;
/** Listing every option of more combinations takes the memory of the process. */
const MOST_FOR_TWIN = 10_000;

export interface Beside {
  readonly rows: readonly Row[];
  readonly than: Row;
}

export interface Bench {
  readonly form: Form;
  readonly run: (series: Series) => Row;
  /** One search of each series after another, so that what else the machine does falls on all of them. */
  readonly inTurn: (list: readonly Series[]) => readonly Row[];
  /** Some series, and ordinary targets of an instance in turn with them. */
  readonly beside: (series: readonly Series[], one: Instance) => Beside;
  /** Ordinary targets, nothing refused, the best hundred: run once for each instance. */
  readonly ordinary: (one: Instance) => Row;
  readonly loops: (problem: SearchProblem) => { readonly baseline: Baseline; readonly options: readonly Option[] | null };
  readonly twin: (problem: SearchProblem) => Baseline;
}

export const best = (problem: SearchProblem, rules: Rules, hooks: Hooks) => findOptions(problem, rules, KEEP, hooks);
export const free = (): Rules => anything;

export function createBench(form: Form): Bench {
  const done = new Map<string, Row>();
  let loopRate_ms: number | null = null;
  let longest = 0;
  let twinRate_ms: number | null = null;

  function inTurn(list: readonly Series[]): readonly Row[] {
    const runs = list.map((series) => seriesRun(form, series));
    for (const one of runs) one.warmUp();
    const most = Math.max(...list.map(({ problems }) => problems.length));
    for (let i = 0; i < most; i++) for (const one of runs) one.step(i);
    return runs.map((one) => one.row());
  }

  function beside(series: readonly Series[], one: Instance): Beside {
    const [than, ...rows] = inTurn([ordinarySeries(one, form), ...series]);
    if (than === undefined) throw new Error('no ordinary targets');
    return { rows, than };
  }

  function loops(problem: SearchProblem) {
    if (loopRate_ms === null) {
      const small = problemOf(RATED, problem.wanted);
      loopRate_ms = rateOf(small, () => nestedLoops(small, anything, KEEP));
      longest = rawCount(small);
    }
    const raw = rawCount(problem);
    if (raw * loopRate_ms > form.loops_ms) return { baseline: { ms: raw * loopRate_ms, how: 'rate' } as const, options: null };
    const times = raw * loopRate_ms < SHORT_MS ? SHORT_TIMES : 1;
    const runs = Array.from({ length: times }, () => timed(() => nestedLoops(problem, anything, KEEP)));
    const ms = median(runs.map((one) => one.ms));
    // the longest run that ended says the rate best
    if (raw > longest) [longest, loopRate_ms] = [raw, ms / raw];
    return { baseline: { ms, how: 'ran' } as const, options: runs[0]?.value ?? null };
  }

  function twin(problem: SearchProblem): Baseline {
    const raw = rawCount(problem);
    if (raw <= MOST_FOR_TWIN) return { ms: timed(() => everyOption(problem, anything)).ms, how: 'ran' };
    twinRate_ms ??= rateOf(problemOf(instance(20, 1, 4), problem.wanted), (small) => everyOption(small, anything));
    return { ms: twinRate_ms * raw, how: 'rate' };
  }

  function ordinaryRow(one: Instance): Row {
    const known = done.get(one.name);
    if (known) return known;
    const series = seriesRun(form, ordinarySeries(one, form));
    const found = series.whole();
    done.set(one.name, found);
    return found;
  }

  return { form, run: (series) => seriesRun(form, series).whole(), inTurn, beside, ordinary: ordinaryRow, loops, twin };
}

export const ordinarySeries = (one: Instance, { targets }: Form): Series => ({
  name: one.name,
  problems: ordinary(targets).map((wanted) => problemOf(one, wanted)),
  rulesOf: free,
  search: best,
});

/** Time per combination, of a second run. */
function rateOf(problem: SearchProblem, search: (problem: SearchProblem) => unknown): number {
  search(problem);
  return timed(() => search(problem)).ms / rawCount(problem);
}
