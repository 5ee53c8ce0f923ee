import { anything } from '../../core/search/racks.ts';
import { type Bench, best } from '../bench.ts';
import { differences } from '../compare.ts';
import { type Instance, instance, ordinary, problemOf } from '../instances.ts';
import { type Claim, type Outcome, timesFaster } from '../report.ts';
import { comparedNote, type Entry } from './entry.ts';

/** From a rack of three open stages that loops can still walk to one of four that they never will; how many times faster is claimed. */
const STEPS: readonly (readonly [one: Instance, faster: number | null])[] = [
  [instance(20, 1, 4), null],
  [instance(20, 2, 4), null],
  [instance(20, 3), null],
  [instance(40, 3), 1e3],
  [instance(60, 3), 1e4],
  [instance(64, 3, 4), null],
  [instance(60, 3, 12), 3e5],
  [instance(60, 4, 12), 1e8],
];

export const ladder: readonly Entry[] = STEPS.map(([one, faster]) => ({ name: one.name, run: (bench) => step(bench, one, faster) }));

function step(bench: Bench, one: Instance, faster: number | null): Outcome {
  const found = bench.ordinary(one);
  const [wanted] = ordinary(1);
  if (wanted === undefined) throw new Error('no ordinary target');
  const problem = problemOf(one, wanted);
  const { baseline, options } = bench.loops(problem);
  const row = { ...found, loops: baseline, twin: bench.twin(problem) };
  const claims: readonly Claim[] =
    faster === null
      ? []
      : [{ what: `${one.name} faster than nested loops`, figure: timesFaster(row, baseline), least: faster, unit: 'x', note: row.note }];
  const apart =
    options === null || row.median_ms === null ? null : differences(one.name, wanted, best(problem, anything, {}).options, options);
  return { rows: [{ ...row, note: comparedNote(row.note, apart, 'the loops') }], claims, differences: apart ?? [] };
}
