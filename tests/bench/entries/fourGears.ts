import { exactText, Fraction } from '../../../core/src/ratio.ts';
import { findOptions } from '../../../core/src/search/index.ts';
import { anything, stageOf, teethFrom, trainProblem } from '../../core/search/racks.ts';
import { best, free } from '../bench.ts';
import { differences } from '../compare.ts';
import { KEEP } from '../instances.ts';
import { nestedLoops } from '../nestedLoops.ts';
import { timesFaster } from '../report.ts';
import { median, timed } from '../timing.ts';
import { comparedNote, type Entry } from './entry.ts';

const WANTED = new Fraction('1000/6931');
/** Optimum as in public benchmark lists [Sandgren, J. Mechanical Design 112(2), 1990]: 16 and 19 over 43 and 49. */
const OPTIMUM = '304/2107';
const TIMES = 25;
const LOOP_TIMES = 5;

function problem() {
  const rack = teethFrom(12, 60);
  return trainProblem(WANTED, [stageOf('B', rack), stageOf('B', rack)]);
}

/** The published four-gear problem: 1/6.931 by two pairs of 12 to 60 teeth; complete, so that the optimum is not only found but proven. */
export const fourGears: Entry = {
  name: 'four-gear',
  run: (bench) => {
    const name = 'four gears, 1/6.931, the optimum';
    const found = bench.run({
      name,
      problems: Array.from({ length: TIMES }, problem),
      rulesOf: free,
      search: (one, rules, hooks) => findOptions(one, rules, 1, hooks),
    });
    const one = problem();
    const runs = Array.from({ length: LOOP_TIMES }, () => timed(() => nestedLoops(one, anything, 1)));
    const loops = { ms: median(runs.map(({ ms }) => ms)), how: 'ran' } as const;
    const { options } = best(one, anything, {});
    const [first] = options;
    const isOptimum = first !== undefined && exactText(first.ratio) === OPTIMUM;
    const apart = [
      ...(isOptimum ? [] : [`${name}: ${OPTIMUM} is not first`]),
      ...differences(name, WANTED, options, nestedLoops(one, anything, KEEP)),
    ];
    const row = { ...found, loops, note: comparedNote(found.note, apart, 'the loops, a hundred of them') };
    return {
      rows: [row],
      claims: [{ what: `${name}: faster than nested loops`, figure: timesFaster(row, loops), least: 500, unit: 'x', note: found.note }],
      differences: apart,
    };
  },
};
