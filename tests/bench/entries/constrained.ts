import { anything } from '../../core/search/racks.ts';
import { best, free } from '../bench.ts';
import { differences } from '../compare.ts';
import { instance, ordinary, problemOf, withChecks } from '../instances.ts';
import { comparedNote, type Entry } from './entry.ts';

const INSTANCES = [instance(60, 3), instance(60, 3, 12)];
const PASSING_PERCENT = 30;
const SEED = 71;

/** Racks of which few pairs can be built, as real shafts and centres have it. */
export const constrained: Entry = {
  name: 'constrained',
  run: (bench) => {
    const parts = INSTANCES.map((one) => {
      const name = `${one.name}, ${PASSING_PERCENT} % of pairs pass`;
      const problems = ordinary(bench.form.targets).map((wanted) =>
        withChecks(problemOf(one, wanted), SEED, (below) => (below(100) < PASSING_PERCENT ? 0 : 1 + below(255))),
      );
      const found = bench.run({ name, problems, rulesOf: free, search: best });
      const [problem] = problems;
      if (problem === undefined) throw new Error('no ordinary target');
      const { baseline, options } = bench.loops(problem);
      const isCompared = options !== null && found.median_ms !== null;
      const apart = isCompared ? differences(name, problem.wanted, best(problem, anything, {}).options, options) : null;
      return { row: { ...found, loops: baseline, note: comparedNote(found.note, apart, 'the loops') }, apart: apart ?? [] };
    });
    return { rows: parts.map(({ row }) => row), claims: [], differences: parts.flatMap(({ apart }) => apart) };
  },
};
