import type { Hooks, Rules, SearchProblem } from '../../core/src/search/index.ts';
import { type Form, stoppedNote } from './form.ts';
import { rawCount } from './nestedLoops.ts';
import type { Row } from './report.ts';
import { heldNow_MB, median, timedWithin, used_MB } from './timing.ts';

/** Some searches of one kind, each on a problem of its own made before the clock starts. */
export interface Series {
  readonly name: string;
  readonly problems: readonly SearchProblem[];
  readonly rulesOf: (problem: SearchProblem) => Rules;
  readonly search: (problem: SearchProblem, rules: Rules, hooks: Hooks) => unknown;
}

/** Searches of the kind run before the clock starts, so that the compiler has seen them: at least so many. */
const WARM_UP = 3;
/** Searches of a series that are made however long they take, and whose memory is weighed. */
const FEWEST = 3;

export interface SeriesRun {
  readonly warmUp: () => void;
  /** Makes the search of that number, unless one was stopped or the time is up. */
  readonly step: (i: number) => void;
  readonly row: () => Row;
  /** All of it, from the warm-up on. */
  readonly whole: () => Row;
}

export function seriesRun(form: Form, { name, problems, rulesOf, search }: Series): SeriesRun {
  const raw = problems[0] ? rawCount(problems[0]) : null;
  const times_ms: number[] = [];
  const held_MB: number[] = [];
  let spent_ms = 0;
  let stopped = false;

  function once(problem: SearchProblem): number {
    const rules = rulesOf(problem);
    const ms = timedWithin(form.search_ms, (hooks) => search(problem, rules, hooks))?.ms ?? form.search_ms;
    stopped ||= ms >= form.search_ms;
    return ms;
  }

  function warmUp(): void {
    let warm_ms = 0;
    for (let i = 0; !stopped && warm_ms < (i < WARM_UP ? form.series_ms : form.warmUp_ms); i++) {
      const problem = problems[i % problems.length];
      if (problem === undefined) return;
      warm_ms += once(anew(problem));
    }
  }

  function step(i: number): void {
    const problem = problems[i];
    const weighs = times_ms.length < FEWEST;
    if (problem === undefined || stopped || (!weighs && spent_ms > form.series_ms)) return;
    const before_MB = weighs ? used_MB() : 0;
    const ms = once(problem);
    spent_ms += ms;
    times_ms.push(ms);
    if (weighs) held_MB.push(heldNow_MB() - before_MB);
  }

  function row(): Row {
    const common = { name, raw, loops: null, twin: null };
    if (stopped) return { ...common, median_ms: null, max_ms: null, memory_MB: null, note: stoppedNote(form) };
    const note = times_ms.length < problems.length ? `${times_ms.length} of ${problems.length} searches` : '';
    return { ...common, median_ms: median(times_ms), max_ms: Math.max(...times_ms), memory_MB: Math.max(...held_MB), note };
  }

  return {
    warmUp,
    step,
    row,
    whole: () => {
      warmUp();
      for (const i of problems.keys()) step(i);
      return row();
    },
  };
}

/** A copy that shares no list with the problem. */
function anew(problem: SearchProblem): SearchProblem {
  return {
    ...problem,
    stages: problem.stages.map((stage) => ({ ...stage, pairs: stage.pairs.map((pair) => ({ ...pair })) })),
    pumps: problem.pumps.map((pump) => ({ ...pump })),
  };
}
