import { ONE } from '../../../core/src/ratio.ts';
import { anything } from '../../core/search/racks.ts';
import { best } from '../bench.ts';
import { instance, ordinary, problemOf } from '../instances.ts';
import type { Claim } from '../report.ts';
import { used_MB } from '../timing.ts';
import type { Entry } from './entry.ts';

const SERIES = [
  { one: instance(20, 2, 4), searches: { quick: 200, full: 1000 } },
  { one: instance(60, 3), searches: { quick: 10, full: 100 } },
] as const;
/** What the compiler and its notes may still take once all is warm. */
const MOST_MB = 1;
const WARM_UP = 20;

/** What is still held after many searches, everything that nothing refers to having been given back. */
export const memory: Entry = {
  name: 'memory',
  run: ({ form }) => {
    const claims = SERIES.map(({ one, searches }): Claim => {
      const targets = ordinary(15);
      const search = (i: number) => best(problemOf(one, targets[i % targets.length] ?? ONE), anything, {});
      for (let i = 0; i < WARM_UP; i++) search(i);
      const before_MB = used_MB();
      for (let i = 0; i < searches[form.name]; i++) search(i);
      const after_MB = used_MB();
      return {
        what: `held after ${searches[form.name]} searches of ${one.name}, beyond what was before`,
        figure: after_MB - before_MB,
        most: MOST_MB,
        unit: 'MB',
        note: `${before_MB.toFixed(1)} MB before, ${after_MB.toFixed(1)} MB after`,
      };
    });
    return { rows: [], claims, differences: [] };
  },
};
