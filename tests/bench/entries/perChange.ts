import { bestPerChange, type Hooks, type Rules, type SearchProblem } from '../../../core/src/search/index.ts';
import { free } from '../bench.ts';
import { instance, ordinary, problemOf } from '../instances.ts';
import type { Row } from '../report.ts';
import { median } from '../timing.ts';
import { type Entry, noLonger } from './entry.ts';

const ONE = instance(60, 3, 12);
/** What somebody reads first: more parts than these are hardly ever changed at once. */
const FIRST_LEVELS = 5;

/** The best option for each number of changed parts: until the first levels are known, and until all are. */
export const perChange: Entry = {
  name: 'per-change',
  run: (bench) => {
    const problems = ordinary(bench.form.targets).map((wanted) => problemOf(ONE, wanted));
    const first_ms = new Map<SearchProblem, number>();
    const search = (problem: SearchProblem, rules: Rules, hooks: Hooks) => {
      const from_ms = performance.now();
      const level = (changed: number): void => {
        if (changed === FIRST_LEVELS) first_ms.set(problem, performance.now() - from_ms);
      };
      return bestPerChange(problem, rules, { ...hooks, level });
    };
    const series = { name: `${ONE.name}, best for each number of changes`, problems, rulesOf: free, search };
    const { rows, than } = bench.beside([series], ONE);
    // the warm-up searches copies, which are not asked for here
    const times_ms = problems.flatMap((problem) => first_ms.get(problem) ?? []);
    const firstOf = (all: Row): Row => ({
      ...all,
      name: `${ONE.name}, best for 0 to ${FIRST_LEVELS} changes`,
      median_ms: all.median_ms === null ? null : median(times_ms),
      max_ms: all.max_ms === null ? null : Math.max(...times_ms),
      memory_MB: null,
    });
    const firsts = rows.map(firstOf);
    const claims = firsts.map((row) => noLonger(`${row.name}: as long as one search`, row, than, 3));
    return { rows: [...firsts, ...rows], claims, differences: [] };
  },
};
