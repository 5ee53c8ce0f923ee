import { expect, test } from 'vitest';
import { flowFacts } from '../../../core/src/facts/flowFacts.ts';
import { fittedPumps } from '../../../core/src/train.ts';
import { pair, say } from '../planFixture.ts';
import { expectPrinted } from '../printedFormula.ts';
import { bench, demoPlan, E12_ON_BENCH_1 } from '../sheet/demoSheet.ts';

const factsOf = (change?: Parameters<typeof demoPlan>[0]['change']) => {
  const plan = demoPlan({ ...E12_ON_BENCH_1, ...(change && { change }) });
  const { facts } = flowFacts(plan, { pumps: fittedPumps(plan), teeth: [pair(23, 25)] }, say);
  for (const { working } of facts) if (working !== null) expectPrinted(working);
  return new Map(facts.map(({ id, figure, note }) => [id, [figure, note].join('; ').replaceAll('\u00a0', ' ')]));
};

test('E12 on Bench 1, 23 to 25 [invented example, worked out apart from this program]', () => {
  expect(Object.fromEntries(factsOf())).toMatchObject({
    dial: '63.5 %; ',
    total: '1001.3 cc/min; ',
    cost: '+0.13 %; ',
    flowA: '685.8 cc/min; ',
    flowB: '315.5 cc/min; ',
    motorSpeed: '57.15 rpm; ',
    speedA: '57.15 rpm; ',
    speedB: '52.58 rpm; ',
  });
});

test('a finer dial is written as it is set, and one at its end says at whose [our choice]', () => {
  const finer = factsOf((file) => {
    bench(file, 'bench-1').motor.dialStep = { value: '0.05', unit: '%' };
  });
  // 1000 of 1576.8 cc/min are 63.42 %.
  expect(finer.get('dial')).toBe('63.4 %; ');
  const finest = factsOf((file) => {
    bench(file, 'bench-1').motor.dialStep = { value: '0.02', unit: '%' };
  });
  expect(finest.get('dial')).toBe('63.42 %; ');
  const most = factsOf((file) => {
    bench(file, 'bench-1').wantedFlow = { value: '2', unit: 'L/min' };
  });
  expect(most.get('dial')).toBe('100.0 %; dial at the most that the motor allows');
});

test('no flow wanted: the range alone, 20 to 100 % of 1576.8 cc/min [arithmetic]', () => {
  const facts = factsOf((file) => {
    delete bench(file, 'bench-1').wantedFlow;
  });
  expect([...facts.keys()]).toEqual(['from', 'to']);
  expect(facts.get('from')).toBe('315.4 cc/min; A 216.0 cc/min, B 99.4 cc/min');
  expect(facts.get('to')).toBe('1576.8 cc/min; A 1080.0 cc/min, B 496.8 cc/min');
});
