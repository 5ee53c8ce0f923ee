import { exactText, Fraction, ratioOf } from '../../../core/src/ratio.ts';
import { findOptions, slideOf } from '../../../core/src/search/index.ts';
import { anything, stageOf, teethFrom, trainProblem } from '../../core/search/racks.ts';
import { best, free } from '../bench.ts';
import { differences } from '../compare.ts';
import { KEEP } from '../instances.ts';
import { nestedLoops, rawCount } from '../nestedLoops.ts';
import { type Row, timesFaster } from '../report.ts';
import { figure } from '../table.ts';
import { median, timed } from '../timing.ts';
import { comparedNote, type Entry } from './entry.ts';

const WANTED = new Fraction('1000/6931');
/** Optimum as in public benchmark lists [Sandgren, J. Mechanical Design 112(2), 1990]: 16 and 19 over 43 and 49. */
const OPTIMUM = '304/2107';
const TIMES = 25;
const LOOP_TIMES = 5;
const READY_TIMES = 500;

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
    const ready = { ...readyRow(`${name}, products ready`), loops };
    return {
      rows: [row, ready],
      claims: [
        {
          what: `${name}: faster than nested loops`,
          figure: timesFaster(ready, loops),
          least: 500,
          unit: 'x',
          note: 'products of the rack ready',
        },
      ],
      differences: apart,
    };
  },
};

/** The same with the products of the rack kept from a search for another ratio, as while a target is dragged; never the same ratio twice running. */
function readyRow(name: string): Row {
  const one = problem();
  const { value: slide, ms } = timed(() => slideOf(one));
  const times_ms: number[] = [];
  const made = new Set<string>();
  for (let i = 0; i < READY_TIMES; i++) {
    slide?.at(ratioOf(300 + (i % 50), 1000), 1);
    const step = timed(() => slide?.at(WANTED, 1).map(({ ratio, offRatio }) => [ratio, offRatio]));
    times_ms.push(step.ms);
    for (const [ratio] of step.value ?? []) if (ratio) made.add(exactText(ratio));
  }
  const right = made.size === 1 && made.has(OPTIMUM);
  const note = `prepared in ${figure(ms)} ms; ${right ? 'finds the optimum' : 'OTHER ROWS than the optimum'}`;
  return {
    name,
    raw: rawCount(one),
    median_ms: median(times_ms),
    max_ms: Math.max(...times_ms),
    loops: null,
    twin: null,
    memory_MB: null,
    note,
  };
}
