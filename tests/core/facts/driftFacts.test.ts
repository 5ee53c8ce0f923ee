import { expect, test } from 'vitest';
import { driftFacts } from '../../../core/src/facts/driftFacts.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import type { Say } from '../../../core/src/format.ts';
import { fittedPumps } from '../../../core/src/train.ts';
import { mm, pair, pumpRow, say } from '../planFixture.ts';
import { expectPrinted } from '../printedFormula.ts';
import { bench, demoPlan, E12_ON_BENCH_1 } from '../sheet/demoSheet.ts';

interface Asked {
  readonly machine?: (machine: MachineRow) => void;
  readonly material?: (material: ShopFile['materials'][number]) => void;
  readonly how?: Say;
  readonly teeth?: ReturnType<typeof pair>;
}

function said({ machine, material, how = say, teeth = pair(23, 25) }: Asked = {}) {
  const plan = demoPlan({
    ...E12_ON_BENCH_1,
    change: (file) => {
      machine?.(bench(file, 'bench-1'));
      for (const one of file.materials) if (one.id === 'e12') material?.(one);
    },
  });
  const { facts } = driftFacts(plan, { pumps: fittedPumps(plan), teeth: [teeth] }, how);
  for (const { working } of facts) if (working !== null) expectPrinted(working);
  return facts.map(({ id, what, figure, note }) => ({ id, what, text: [figure, note].join('; ') }));
}
const factsOf = (asked?: Asked): Record<string, string> =>
  Object.fromEntries(said(asked).map(({ id, text }) => [id, text.replaceAll('\u00a0', ' ')]));

/** Density of E12 over that at 25 °C, which is stated [definition of volume expansion]. */
const density = { A: (at_C: number) => 1.16 / (1 + 0.00062 * (at_C - 25)), B: (at_C: number) => 0.97 / (1 + 0.0008 * (at_C - 25)) };
/** 12 cc of A to 6 cc of B at 23/25 of its speed, weighed, against 100 : 38.9 [conservation of mass]. */
const offRatio_percent = (A_C: number, B_C: number) => 100 * ((6 * (23 / 25) * density.B(B_C)) / (12 * density.A(A_C)) / 0.389 - 1);

test('E12 on Bench 1, 23 to 25, from 42 and 25 °C: what 10 K make of it by weighing [conservation of mass]', () => {
  expect(offRatio_percent(42, 25)).toBeCloseTo(-0.0747, 4);
  const facts = factsOf();
  const weighed = [
    ['hotterA', 52, 25],
    ['colderA', 32, 25],
    ['hotterB', 42, 35],
    ['colderB', 42, 15],
    ['hotterBoth', 52, 35],
    ['colderBoth', 32, 15],
  ] as const;
  for (const [id, A_C, B_C] of weighed) {
    const percent = offRatio_percent(A_C, B_C);
    expect(facts[id], id).toBe(`${percent < 0 ? '−' : '+'}${Math.abs(percent).toFixed(2)} %; + is B-rich`);
  }
});

test('at the temperatures where it leaves the limits it weighs 2 % lean and 2 % rich [conservation of mass]', () => {
  expect(factsOf()).toMatchObject({
    lowA: '−31.4 K; at 10.6 °C',
    highA: '+33.8 K; at 75.8 °C',
    lowB: '+24.6 K; at 49.6 °C',
    highB: '−25.4 K; at −0.4 °C',
  });
  // A tenth of a kelvin moves it by less than 0.01 %.
  expect(offRatio_percent(10.6, 25)).toBeCloseTo(-2, 2);
  expect(offRatio_percent(75.8, 25)).toBeCloseTo(2, 2);
  expect(offRatio_percent(42, 49.6)).toBeCloseTo(-2, 2);
  expect(offRatio_percent(42, -0.4)).toBeCloseTo(2, 2);
});

test('outside the limits there is nothing to leave, without them neither', () => {
  const ids = ['hotterA', 'colderA', 'hotterB', 'colderB', 'hotterBoth', 'colderBoth'];
  expect(Object.keys(factsOf({ teeth: pair(21, 30) }))).toEqual(ids);
  const noLimits = factsOf({
    material: (e12) => {
      delete e12.limits;
    },
  });
  expect(Object.keys(noLimits)).toEqual(ids);
});

test('an inch shop reads the same steps in degrees Fahrenheit [10 K are 18 °F, 75.84 °C are 168.5 °F, NIST SP 811, from memory]', () => {
  const facts = said({ how: { decimal: '.', system: 'inch' } });
  const one = (id: string) => facts.find((fact) => fact.id === id);
  expect(one('hotterA')?.what).toBe('off-ratio, A alone 18\u00a0°F hotter');
  expect(one('highA')?.text).toBe('+60.9\u00a0°F; at 168.5\u00a0°F');
});

test('an expansion that is not given is named, and leaves the other side alone', () => {
  const facts = factsOf({
    material: ({ B }) => {
      delete B.expansion;
    },
  });
  expect(Object.keys(facts)).toEqual(['hotterA', 'colderA', 'lowA', 'highA', 'lacking']);
  expect(facts.lacking).toBe('not given; the expansion of B');
});

test('a tenth more pressure on a slip of 0.272 % of A, or 4.73 % of B [plane-gap-flow, from memory; arithmetic]', () => {
  // 0.02 · (20 µm)³ · p / (12 · μ · 0.003) m³/s, of 685.8 and 315.468 cc/min.
  const gear = { teeth: 12, gapWidth: mm('20'), gapLength: mm('3') };
  const facts = factsOf({
    machine: ({ A, B }) => {
      A.pumps = [pumpRow('pa12', '12', { gear })];
      B.pumps = [pumpRow('pb6', '6', { gear })];
    },
    material: ({ A, B }) => {
      A.viscosity = { value: '400', unit: 'mPa s' };
      B.viscosity = { value: '25', unit: 'mPa s' };
    },
  });
  expect(facts).toMatchObject({
    slipDriftA: '+0.03 %; + is B-rich; by the most slip that is estimated',
    slipDriftB: '−0.47 %; + is B-rich; by the most slip that is estimated',
  });
});
