import { bestPerChange } from '../../../core/src/search/index.ts';
import { free } from '../bench.ts';
import { instance, ordinary, problemOf } from '../instances.ts';
import { type Entry, noLonger } from './entry.ts';

const ONE = instance(60, 3, 12);

/** The best option for each number of changed parts. */
export const perChange: Entry = {
  name: 'per-change',
  run: (bench) => {
    const than = bench.ordinary(ONE);
    const problems = ordinary(bench.form.targets).map((wanted) => problemOf(ONE, wanted));
    const row = bench.run({
      name: `${ONE.name}, best for each number of changes`,
      problems,
      rulesOf: free,
      search: (problem, rules, hooks) => bestPerChange(problem, rules, hooks),
    });
    const claim = noLonger(`${row.name}: as long as one search`, row, than, 3);
    return { rows: [row], claims: [{ ...claim, note: claim.note || 'all levels, 0 to 8' }], differences: [] };
  },
};
