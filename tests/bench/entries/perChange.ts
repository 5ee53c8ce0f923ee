import { bestPerChange, type Hooks, type Rules, type SearchProblem } from '../../../core/src/search/index.ts';
import { free } from '../bench.ts';
import { instance, ordinary, problemOf } from '../instances.ts';
import { type Entry, noLonger } from './entry.ts';

const ONE = instance(60, 3, 12);

/** The best option for each number of changed parts. */
export const perChange: Entry = {
  name: 'per-change',
  run: (bench) => {
    const problems = ordinary(bench.form.targets).map((wanted) => problemOf(ONE, wanted));
    const series = {
      name: `${ONE.name}, best for each number of changes`,
      problems,
      rulesOf: free,
      search: (problem: SearchProblem, rules: Rules, hooks: Hooks) => bestPerChange(problem, rules, hooks),
    };
    const { rows, than } = bench.beside([series], ONE);
    const claims = rows
      .map((row) => noLonger(`${row.name}: as long as one search`, row, than, 3))
      .map((claim) => ({ ...claim, note: claim.note || 'all levels, 0 to 8' }));
    return { rows, claims, differences: [] };
  },
};
