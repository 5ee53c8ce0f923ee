import { anything } from '../../core/search/racks.ts';
import { best } from '../bench.ts';
import { stoppedNote } from '../form.ts';
import { instance, ordinary, problemOf } from '../instances.ts';
import { rawCount } from '../nestedLoops.ts';
import { timedWithin } from '../timing.ts';
import type { Entry } from './entry.ts';

const ONE = instance(60, 3);

/** The very first search of a process, before the compiler has seen any of it: what a person waits for who has just opened the window. */
export const firstSearch: Entry = {
  name: 'first',
  run: ({ form }) => {
    const rows = ordinary(1).map((wanted) => {
      const problem = problemOf(ONE, wanted);
      const one = timedWithin(form.search_ms, (hooks) => best(problem, anything, hooks));
      const ms = one?.ms ?? null;
      const note = one === null ? stoppedNote(form) : 'nothing warmed up';
      return {
        name: `first search of all, ${ONE.name}`,
        raw: rawCount(problem),
        median_ms: ms,
        max_ms: ms,
        loops: null,
        twin: null,
        memory_MB: null,
        note,
      };
    });
    return { rows, claims: [], differences: [] };
  },
};
