import { expect, test } from 'vitest';
import { pumpFacts } from '../../../core/src/facts/pumpFacts.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import { fittedPumps } from '../../../core/src/train.ts';
import { mm, pair, pumpRow, say } from '../planFixture.ts';
import { expectPrinted } from '../printedFormula.ts';
import { bench, demoPlan, E12_ON_BENCH_1 } from '../sheet/demoSheet.ts';

const factsOf = (change: (machine: MachineRow) => void = () => undefined) => {
  const plan = demoPlan({ ...E12_ON_BENCH_1, change: (file) => change(bench(file, 'bench-1')) });
  const { facts } = pumpFacts(plan, { pumps: fittedPumps(plan), teeth: [pair(23, 25)] }, say);
  for (const { working } of facts) if (working !== null) expectPrinted(working);
  return Object.fromEntries(facts.map(({ id, figure, note }) => [id, [figure, note].join('; ').replaceAll('\u00a0', ' ')]));
};

test('E12 on Bench 1, 23 to 25: A 24.0, B 18.4 pulses in the mixer [invented example, worked out apart from this program]', () => {
  // 12 x 57.15/60 and 10 x 52.578/60 pulses a second; ripple from the table of a hydraulics textbook, from memory.
  expect(factsOf()).toEqual({
    mixerPulsesA: '24.0; ',
    pulsesA: '11.4 1/s; ',
    rippleA: '17.8 %; ',
    mixerPulsesB: '18.4; ',
    pulsesB: '8.8 1/s; ',
    rippleB: '21.2 %; ',
  });
});

test('with all of its sizes a pump has a displacement by its gears and a slip as a band [recomputed]', () => {
  const facts = factsOf((machine) => {
    const gear = { teeth: 12, module: mm('3'), faceWidth: mm('20'), gapWidth: mm('20'), gapLength: mm('3') };
    machine.A.pumps = [pumpRow('pa12', '12', { gear })];
  });
  expect(facts).toMatchObject({
    displacementA: '13.881 cc/rev; typed 12.000 cc/rev; by the gears +15.7 %',
    // 0.02 · 1e-15 · 28e5 / (12 · 4 · 0.003) m³/s = 0.02333 cc/min of 685.8
    slipA: 'under 0.01 % to 0.03 %; under 0.01 % at the usual gap; in proportion to pressure over viscosity',
  });
});

test('a measured delivery stands in place of the slip, and says whether the ratio counts it', () => {
  const measured = (asMeasured: boolean) =>
    factsOf((machine) => {
      const measuredDelivery = { value: { value: '98.97', unit: '%' }, uncertainty: { value: '0.38', unit: '%' } };
      machine.B.pumps = [pumpRow('pb6', '6', { measuredDelivery })];
      machine.search = { ...machine.search, asMeasured };
    });
  expect(measured(false)).toMatchObject({ deliveryB: '98.97 %; as measured, ±0.38 %; not counted in the ratio' });
  expect(measured(true)).toMatchObject({ deliveryB: '98.97 %; as measured, ±0.38 %; counted in the ratio' });
});
