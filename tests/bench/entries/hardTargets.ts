import type { Fraction } from '../../../core/src/ratio.ts';
import { type Bench, best, free } from '../bench.ts';
import { type Instance, instance, NEAR_MISSES, problemOf, ROUND } from '../instances.ts';
import type { Series } from '../series.ts';
import { type Entry, noLonger } from './entry.ts';

const ONE: Instance = instance(60, 3, 12);

export function targetSeries({ form }: Bench, name: string, wanted: Fraction, rulesOf: Series['rulesOf'] = free): Series {
  const problems = Array.from({ length: form.repeats }, () => problemOf(ONE, wanted));
  return { name: `${ONE.name}, ${name}`, problems, rulesOf, search: best };
}

/** Targets made exactly in millions of ways, and those beside them. */
function targets(name: string, list: typeof ROUND, most: number): Entry {
  return {
    name,
    run: (bench) => {
      const series = list.map(([written, wanted]) => targetSeries(bench, written, wanted));
      const { rows, than } = bench.beside(series, ONE);
      const claims = rows.map((row) => noLonger(`${row.name}: as long as an ordinary target`, row, than, most));
      return { rows, claims, differences: [] };
    },
  };
}

export const hardTargets: readonly Entry[] = [targets('round', ROUND, 1.5), targets('near', NEAR_MISSES, 4)];
