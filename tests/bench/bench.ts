import { findOptions, type Hooks, type Option, type Rules, type SearchProblem } from '../../core/src/search/index.ts';
import { anything } from '../core/search/racks.ts';
import { everyOption } from '../core/search/slowTwin.ts';
import { type Form, stoppedNote } from './form.ts';
import { type Instance, instance, KEEP, ordinary, problemOf } from './instances.ts';
import { nestedLoops, rawCount } from './nestedLoops.ts';
import type { Baseline, Row } from './report.ts';
import { heldNow_MB, median, timed, timedWithin, used_MB } from './timing.ts';

/** Some searches of one kind, each on a problem of its own made before the clock starts. */
export interface Series {
  readonly name: string;
  readonly problems: readonly SearchProblem[];
  readonly rulesOf: (problem: SearchProblem) => Rules;
  readonly search: (problem: SearchProblem, rules: Rules, hooks: Hooks) => unknown;
}

/** Searches of the kind run before the clock starts, so that the compiler has seen them: at least so many, small ones for so long. */
const WARM_UP = 3;
const WARM_UP_MS = 300;
/** What the loops walk for their rate until a longer run of theirs has ended: a short run is all filling and sorting. */
const RATED = instance(30, 3);
/** Searches of a series that are made however long they take, and whose memory is weighed. */
const FEWEST = 3;
/** Loops that end sooner are run so often and the median taken. */
const SHORT_MS = 200;
const SHORT_TIMES = 7;
/** Listing every option of more combinations takes the memory of the process. */
const MOST_FOR_TWIN = 10_000;

export interface Bench {
  readonly form: Form;
  readonly run: (series: Series) => Row;
  /** Ordinary targets, nothing refused, the best hundred: run once for each instance. */
  readonly ordinary: (one: Instance) => Row;
  readonly loops: (problem: SearchProblem) => { readonly baseline: Baseline; readonly options: readonly Option[] | null };
  readonly twin: (problem: SearchProblem) => Baseline;
}

export const best = (problem: SearchProblem, rules: Rules, hooks: Hooks) => findOptions(problem, rules, KEEP, hooks);
export const free = (): Rules => anything;
const UNMEASURED = { loops: null, twin: null, memory_MB: null } as const;

export function createBench(form: Form): Bench {
  const done = new Map<string, Row>();
  let loopRate_ms: number | null = null;
  let longest = 0;
  let twinRate_ms: number | null = null;

  function run({ name, problems, rulesOf, search }: Series): Row {
    const raw = problems[0] ? rawCount(problems[0]) : null;
    const nothing = { name, raw, median_ms: null, max_ms: null, ...UNMEASURED, note: stoppedNote(form) };
    const once = (problem: SearchProblem): number | null => {
      const rules = rulesOf(problem);
      return timedWithin(form.search_ms, (hooks) => search(problem, rules, hooks))?.ms ?? null;
    };
    const from_ms = performance.now();
    const spent_ms = () => performance.now() - from_ms;
    for (let i = 0; spent_ms() < (i < WARM_UP ? form.series_ms : WARM_UP_MS); i++) {
      const problem = problems[i % problems.length];
      if (problem === undefined || once(anew(problem)) === null) return nothing;
    }
    const times_ms: number[] = [];
    const held_MB: number[] = [];
    const end_ms = performance.now() + form.series_ms;
    for (const problem of problems) {
      if (times_ms.length >= FEWEST && performance.now() > end_ms) break;
      const weighs = times_ms.length < FEWEST;
      const before_MB = weighs ? used_MB() : 0;
      const ms = once(problem);
      if (ms === null) return nothing;
      times_ms.push(ms);
      if (weighs) held_MB.push(heldNow_MB() - before_MB);
    }
    const note = times_ms.length < problems.length ? `${times_ms.length} of ${problems.length} searches` : '';
    const most_ms = Math.max(...times_ms);
    return { name, raw, median_ms: median(times_ms), max_ms: most_ms, loops: null, twin: null, memory_MB: Math.max(...held_MB), note };
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
    const problems = ordinary(form.targets).map((wanted) => problemOf(one, wanted));
    const found = run({ name: one.name, problems, rulesOf: free, search: best });
    done.set(one.name, found);
    return found;
  }

  return { form, run, ordinary: ordinaryRow, loops, twin };
}

/** Time per combination, of a second run. */
function rateOf(problem: SearchProblem, search: (problem: SearchProblem) => unknown): number {
  search(problem);
  return timed(() => search(problem)).ms / rawCount(problem);
}

/** A copy that shares no list with the problem. */
function anew(problem: SearchProblem): SearchProblem {
  return {
    ...problem,
    stages: problem.stages.map((stage) => ({ ...stage, pairs: stage.pairs.map((pair) => ({ ...pair })) })),
    pumps: problem.pumps.map((pump) => ({ ...pump })),
  };
}
