import type { Fraction } from '../../../core/src/ratio.ts';
import { type Bench, best, free, type Series } from '../bench.ts';
import { type Instance, instance, NEAR_MISSES, problemOf, ROUND } from '../instances.ts';
import type { Row } from '../report.ts';
import { type Entry, noLonger } from './entry.ts';

const ONE: Instance = instance(60, 3, 12);

export function targetRow(bench: Bench, name: string, wanted: Fraction, rulesOf: Series['rulesOf'] = free): Row {
  const problems = Array.from({ length: bench.form.repeats }, () => problemOf(ONE, wanted));
  return bench.run({ name: `${ONE.name}, ${name}`, problems, rulesOf, search: best });
}

/** Targets made exactly in millions of ways, and those beside them. */
function targets(name: string, list: typeof ROUND, most: number): Entry {
  return {
    name,
    run: (bench) => {
      const than = bench.ordinary(ONE);
      const rows = list.map(([written, wanted]) => targetRow(bench, written, wanted));
      const claims = rows.map((row) => noLonger(`${row.name}: as long as an ordinary target`, row, than, most));
      return { rows, claims, differences: [] };
    },
  };
}

export const hardTargets: readonly Entry[] = [targets('round', ROUND, 1.5), targets('near', NEAR_MISSES, 4)];
