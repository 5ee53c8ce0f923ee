import { best } from '../bench.ts';
import { differences } from '../compare.ts';
import { instance, KEEP, oneOfEach, ordinary, problemOf, ROUND } from '../instances.ts';
import { nestedLoops } from '../nestedLoops.ts';
import type { Entry } from './entry.ts';
import { targetSeries } from './hardTargets.ts';

const ONE = instance(60, 3, 12);
/** What loops walk in a moment, to compare the answers. */
const SMALL = instance(20, 3);

/** One piece of every wheel: a rule that most of the tied options of a round target break. */
export const quantity: Entry = {
  name: 'quantity',
  run: (bench) => {
    const problems = ordinary(bench.form.targets).map((wanted) => problemOf(ONE, wanted));
    const plain = { name: `${ONE.name}, quantity 1`, problems, rulesOf: oneOfEach, search: best };
    const round = ROUND.map(([written, wanted]) => targetSeries(bench, `quantity 1, ${written}`, wanted, oneOfEach));
    const apart = ordinary(1).flatMap((wanted) => {
      const problem = problemOf(SMALL, wanted);
      const rules = oneOfEach(problem);
      return differences(`${SMALL.name}, quantity 1`, wanted, best(problem, rules, {}).options, nestedLoops(problem, rules, KEEP));
    });
    return { rows: bench.inTurn([plain, ...round]), claims: [], differences: apart };
  },
};
