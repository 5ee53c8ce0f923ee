import { describe, expect, test } from 'vitest';
import { workFacts } from '../../../core/src/facts/workFacts.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import { planOption } from '../../../core/src/option.ts';
import type { Teeth } from '../../../core/src/plan.ts';
import { fittedPumps } from '../../../core/src/train.ts';
import { pair, pumpRow, say } from '../planFixture.ts';
import { expectPrinted } from '../printedFormula.ts';
import { bench, demoPlan, E12_ON_BENCH_1, U40_ON_BENCH_2 } from '../sheet/demoSheet.ts';

type Wanted = Parameters<typeof demoPlan>[0];

function factsOf(wanted: Wanted, teeth: readonly Teeth[], pumpB?: string): Record<string, string> {
  const plan = demoPlan(wanted);
  const fitted = fittedPumps(plan);
  const pumps = { ...fitted, B: plan.sides.B.pumps.find(({ id }) => id === pumpB) ?? fitted.B };
  const { facts } = workFacts(plan, planOption(plan, pumps, teeth, say), say);
  for (const { working } of facts) if (working !== null) expectPrinted(working);
  return Object.fromEntries(facts.map(({ id, figure, note }) => [id, [figure, note].join('; ').replaceAll('\u00a0', ' ')]));
}
const onBench1 = (change: (machine: MachineRow) => void = () => undefined): Wanted => ({
  ...E12_ON_BENCH_1,
  change: (file) => change(bench(file, 'bench-1')),
});

describe('minutes of a change [invented example, worked out apart from this program]', () => {
  test('E12 on Bench 1, 23 to 25: two sprockets, a chain length, a centre', () => {
    expect(factsOf(E12_ON_BENCH_1, [pair(23, 25)])).toEqual({
      sprocket: '24.0 min; 2, 12.0 min each',
      chainLength: '10.0 min; 1, 10.0 min each',
      centre: '3.0 min; 1, 3.0 min each',
      total: '37.0 min; ',
    });
  });
  test.each([
    ['21 to 23, one sprocket', pair(21, 23), ['sprocket', 'chainLength', 'centre'], '25.0 min; '],
    ['25 to 27, the chain stays', pair(25, 27), ['sprocket', 'centre'], '27.0 min; '],
    ['21 to 30, as fitted', pair(21, 30), [], '0.0 min; '],
  ] as const)('%s', (_what, teeth, kinds, total) => {
    const facts = factsOf(E12_ON_BENCH_1, [teeth]);
    expect(Object.keys(facts)).toEqual([...kinds, 'total']);
    expect(facts.total).toBe(total);
  });
  test.each([
    ['U40 on Bench 2: four sprockets, one chain, two centres', [pair(22, 32), pair(26, 17)], '64.0 min; '],
    ['L5 on Bench 2: two sprockets, one chain, two centres', [pair(18, 24), pair(20, 25)], '40.0 min; '],
    ['L5 on Bench 2, one stage left alone: two sprockets, one centre', [pair(20, 24), pair(18, 25)], '27.0 min; '],
  ] as const)('%s', (_what, teeth, total) => {
    expect(factsOf(U40_ON_BENCH_2, teeth).total).toBe(total);
  });
});

test('another pump is work of its own, with the minutes that the shop states: 2 · 5.5 + 10 + 3 + 75 [arithmetic]', () => {
  const wanted = onBench1((machine) => {
    machine.B.pumps = [pumpRow('pb6', '6'), pumpRow('pb8', '8')];
    machine.minutes = { sprocket: { value: '5.5', unit: 'min' }, pump: { value: '75', unit: 'min' } };
  });
  expect(factsOf(wanted, [pair(23, 25)], 'pb8')).toEqual({
    sprocket: '11.0 min; 2, 5.5 min each',
    chainLength: '10.0 min; 1, 10.0 min each',
    centre: '3.0 min; 1, 3.0 min each',
    pump: '75.0 min; 1, 75.0 min each',
    total: '99.0 min; ',
  });
});

test('the length of the chain now is not given: a chain that is left alone is no work, one on another wheel is [our choice]', () => {
  const wanted = onBench1(({ stages }) => {
    for (const stage of stages) delete stage.pitches;
  });
  expect(factsOf(wanted, [pair(21, 30)])).toEqual({ total: '0.0 min; ' });
  expect(factsOf(wanted, [pair(21, 29)])).toMatchObject({ chainLength: '10.0 min; 1, 10.0 min each' });
});
