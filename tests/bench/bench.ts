import { exactText, type Fraction } from '../../core/src/ratio.ts';
import { findOptions, type Hooks, type Option, type Rules, type SearchProblem } from '../../core/src/search/index.ts';
import { anything } from '../core/search/racks.ts';
import { everyOption } from '../core/search/slowTwin.ts';
import { type Instance, instance, KEEP, ordinary, problemOf } from './instances.ts';
import { nestedLoops, rawCount } from './nestedLoops.ts';
import type { Baseline, Row } from './report.ts';
import { heldNow_MB, median, timed, timedWithin, used_MB } from './timing.ts';

/** How much is run. */
export interface Form {
  readonly name: 'quick' | 'full';
  /** ordinary targets */
  readonly targets: number;
  /** a single search that takes longer is stopped, and its line says so */
  readonly search_ms: number;
  /** nested loops that should take longer are not run: their rate is multiplied */
  readonly loops_ms: number;
}
export const FULL: Form = { name: 'full', targets: 15, search_ms: 60_000, loops_ms: 90_000 };
export const QUICK: Form = { name: 'quick', targets: 5, search_ms: 2_000, loops_ms: 1_000 };

/** Some searches of one kind, each on a problem of its own made before the clock starts. */
export interface Series {
  readonly name: string;
  readonly problems: readonly SearchProblem[];
  readonly rulesOf: (problem: SearchProblem) => Rules;
  readonly search: (problem: SearchProblem, rules: Rules, hooks: Hooks) => unknown;
}

/** Searches run before the clock starts, so that the compiler has seen them. */
const WARM_UP = 3;

export interface Bench {
  readonly form: Form;
  readonly run: (series: Series) => Row;
  /** Ordinary targets, nothing refused, the best hundred: run once for each instance. */
  readonly ordinary: (one: Instance) => Row;
  readonly loops: (problem: SearchProblem, rules?: Rules) => { readonly baseline: Baseline; readonly options: readonly Option[] | null };
  readonly twin: (problem: SearchProblem) => Baseline;
}

export const best = (problem: SearchProblem, rules: Rules, hooks: Hooks) => findOptions(problem, rules, KEEP, hooks);
export const free = (): Rules => anything;
export const unmeasured = { loops: null, twin: null, memory_MB: null } as const;

export function createBench(form: Form): Bench {
  const done = new Map<string, Row>();
  let loopRate_ms: number | null = null;
  let twinRate_ms: number | null = null;

  function run({ name, problems, rulesOf, search }: Series): Row {
    const raw = problems[0] ? rawCount(problems[0]) : null;
    const times_ms: number[] = [];
    let memory_MB = 0;
    const searches = [
      ...problems.slice(0, WARM_UP).map((problem) => ({ problem, counts: false })),
      ...problems.map((problem) => ({ problem, counts: true })),
    ];
    for (const [i, { problem, counts }] of searches.entries()) {
      const weighed = i === searches.length - 1;
      const before_MB = weighed ? used_MB() : 0;
      // what the warm-up searched is laid out anew: a search must find nothing ready
      const fresh = counts ? problem : anew(problem);
      const rules = rulesOf(fresh);
      const one = timedWithin(form.search_ms, (hooks) => search(fresh, rules, hooks));
      if (one === null)
        return { name, raw, median_ms: null, max_ms: null, ...unmeasured, note: `stopped after ${form.search_ms / 1000} s` };
      if (counts) times_ms.push(one.ms);
      if (weighed) memory_MB = heldNow_MB() - before_MB;
    }
    return { name, raw, median_ms: median(times_ms), max_ms: Math.max(...times_ms), loops: null, twin: null, memory_MB, note: '' };
  }

  function loops(problem: SearchProblem, rules: Rules = anything) {
    loopRate_ms ??= rateOf(problemOf(instance(20, 3), problem.wanted), (small) => nestedLoops(small, anything, KEEP));
    const raw = rawCount(problem);
    if (raw * loopRate_ms > form.loops_ms) return { baseline: { ms: raw * loopRate_ms, how: 'rate' } as const, options: null };
    const { ms, value } = timed(() => nestedLoops(problem, rules, KEEP));
    // the longest run that ended says the rate best
    if (raw > 1e9) loopRate_ms = ms / raw;
    return { baseline: { ms, how: 'ran' } as const, options: value };
  }

  function twin(problem: SearchProblem): Baseline {
    twinRate_ms ??= rateOf(problemOf(instance(20, 1, 4), problem.wanted), (small) => everyOption(small, anything));
    return { ms: twinRate_ms * rawCount(problem), how: 'rate' };
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

/** Says where two lists of options part; empty where they are the same. */
export function differences(name: string, wanted: Fraction, found: readonly Option[], expected: readonly Option[]): readonly string[] {
  const ours = found.map(lineOf);
  const theirs = expected.map(lineOf);
  const longer = ours.length > theirs.length ? ours : theirs;
  const at = [...longer.keys()].find((i) => ours[i] !== theirs[i]);
  if (at === undefined) return [];
  return [`${name}, ${exactText(wanted)}, row ${at + 1}: ${ours[at] ?? 'nothing'} instead of ${theirs[at] ?? 'nothing'}`];
}

const lineOf = ({ pump, pairs, ratio, offRatio, changed, purchases }: Option): string =>
  [pump, ...pairs, exactText(ratio), exactText(offRatio), changed, purchases].join(' ');
