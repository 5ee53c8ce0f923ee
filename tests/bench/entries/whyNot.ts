import { ONE as ONE_TO_ONE, ratioOf } from '../../../core/src/ratio.ts';
import { type Candidate, fewestRelaxations, type SearchProblem } from '../../../core/src/search/index.ts';
import { type Bench, ordinarySeries } from '../bench.ts';
import { stoppedNote } from '../form.ts';
import { instance, oneOfEach, ordinary, problemOf, withChecks } from '../instances.ts';
import { rawCount } from '../nestedLoops.ts';
import type { Row } from '../report.ts';
import { seriesRun } from '../series.ts';
import { median, timedWithin } from '../timing.ts';
import { type Entry, noLonger } from './entry.ts';

const ONE = instance(60, 3);
/** Checks of the pairs; one bit more is the quantity of one of each wheel. */
const CHECKS = 8;
const QUANTITY = 2 ** CHECKS;
const SEED = 8;
const LIMIT = ratioOf(1, 10 ** 5);
const TARGETS = 5;

/** Every pair fails about half of the checks, and hardly one of them none. */
const strict = (problem: SearchProblem): SearchProblem => ({
  ...withChecks(problem, SEED, (below) => below(2 ** CHECKS)),
  limits: { low: LIMIT.neg(), high: LIMIT },
});

/** Why nothing fits: until the first smallest set of checks is known, and until all are. */
export const whyNot: Entry = {
  name: 'why-not',
  run: (bench) => {
    const search = seriesRun(bench.form, ordinarySeries(ONE, { ...bench.form, targets: TARGETS }));
    search.warmUp();
    reasons(bench, strict(problemOf(ONE, ONE_TO_ONE)));
    const runs = ordinary(TARGETS).map((wanted, i) => {
      search.step(i);
      return reasons(bench, strict(problemOf(ONE, wanted)));
    });
    const than = search.row();
    const raw = rawCount(problemOf(ONE, ONE_TO_ONE));
    const sets = runs.map((run) => run?.sets ?? 0).join(', ');
    const first = rowOf(
      'first reason',
      raw,
      runs.map((run) => run?.first_ms ?? null),
      bench,
    );
    const all = rowOf(
      'all reasons',
      raw,
      runs.map((run) => run?.all_ms ?? null),
      bench,
      `smallest sets found: ${sets}`,
    );
    return {
      rows: [first, all],
      claims: [
        noLonger(`${first.name}: as long as one search`, first, than, 3),
        noLonger(`${all.name}: as long as one search`, all, than, 80),
      ].map((claim) => ({ ...claim, note: claim.figure === null ? claim.note : '' })),
      differences: [],
    };
  },
};

interface Reasons {
  readonly first_ms: number;
  readonly all_ms: number;
  readonly sets: number;
}

function reasons({ form }: Bench, problem: SearchProblem): Reasons | null {
  const quantity = oneOfEach(problem);
  const failures = (candidate: Candidate): number => (quantity.admit(candidate) === null ? QUANTITY : 0);
  const from_ms = performance.now();
  let first_ms: number | null = null;
  const reason = (): void => {
    first_ms ??= performance.now() - from_ms;
  };
  const found = timedWithin(form.search_ms, (hooks) => fewestRelaxations(problem, failures, CHECKS + 1, { ...hooks, reason }));
  return found && { first_ms: first_ms ?? found.ms, all_ms: found.ms, sets: found.value.masks.length };
}

function rowOf(what: string, raw: number, times_ms: readonly (number | null)[], { form }: Bench, note = ''): Row {
  const ended_ms = times_ms.filter((ms) => ms !== null);
  const stopped = ended_ms.length < times_ms.length;
  return {
    name: `${ONE.name}, nothing fits: ${what}`,
    raw,
    median_ms: stopped ? null : median(ended_ms),
    max_ms: stopped ? null : Math.max(...ended_ms),
    loops: null,
    twin: null,
    memory_MB: null,
    note: stopped ? stoppedNote(form) : note,
  };
}
