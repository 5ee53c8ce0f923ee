import { expect, test } from 'vitest';
import { tankFacts } from '../../../core/src/facts/tankFacts.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import { fittedPumps } from '../../../core/src/train.ts';
import { pair, say } from '../planFixture.ts';
import { expectPrinted } from '../printedFormula.ts';
import { bench, demoPlan, E12_ON_BENCH_1 } from '../sheet/demoSheet.ts';

const factsOf = (change: (machine: MachineRow) => void = () => undefined) => {
  const plan = demoPlan({ ...E12_ON_BENCH_1, change: (file) => change(bench(file, 'bench-1')) });
  const { facts } = tankFacts(plan, { pumps: fittedPumps(plan), teeth: [pair(23, 25)] }, say);
  for (const { working } of facts) if (working !== null) expectPrinted(working);
  return Object.fromEntries(facts.map(({ id, figure, note }) => [id, [figure, note].join('; ').replaceAll('\u00a0', ' ')]));
};

test('E12 on Bench 1, 23 to 25 [invented example, worked out apart from this program]', () => {
  expect(factsOf()).toEqual({
    lastsA: '49.6 min; runs low first',
    lastsB: '50.7 min; ',
    fillTogether: '19.64 L; tank A as it is',
  });
});

test('no flow wanted: no minutes, yet what to fill', () => {
  const facts = factsOf((machine) => {
    delete machine.wantedFlow;
  });
  expect(facts).toEqual({ fillTogether: '19.64 L; tank A as it is' });
});

test('10 L of A with what B belongs to it, 4.6 L as made; 1.1479 and 0.97 g/cm³ [arithmetic]', () => {
  const facts = factsOf((machine) => {
    machine.batch = { of: 'A', amount: { value: '10', unit: 'L' } };
  });
  expect(facts).toMatchObject({
    batchMassA: '11.479 kg; ',
    batchVolumeA: '10.00 L; at the temperature as run',
    batchMassB: '4.462 kg; ',
    batchVolumeB: '4.60 L; at the temperature as run',
  });
});

test('tanks of which nothing is given say nothing', () => {
  const facts = factsOf((machine) => {
    delete machine.A.tank;
    delete machine.B.tank;
  });
  expect(facts).toEqual({});
});
