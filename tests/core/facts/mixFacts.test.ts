import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { mixFacts } from '../../../core/src/facts/mixFacts.ts';
import { readShopFile } from '../../../core/src/file/read.ts';
import { madeRatio } from '../../../core/src/madeRatio.ts';
import type { Build, Plan } from '../../../core/src/plan.ts';
import { exactText } from '../../../core/src/ratio.ts';
import { fittedPumps, fittedTeeth, madeBPerA } from '../../../core/src/train.ts';
import { inLine, pair, planOf, pumpRow, say, shopOf, stageRow } from '../planFixture.ts';
import { chainOf, expectPrinted } from '../printedFormula.ts';

// The invented demo; its figures were worked out apart from this program.
const read = readShopFile(readFileSync(new URL('../../examples/demo.ratiowright', import.meta.url), 'utf8'));
if (!read.ok) throw new Error('the demo does not open');
const demo = read.value;

const fitted = (plan: Plan): Build => ({ pumps: fittedPumps(plan), teeth: fittedTeeth(plan) });
const figures = (plan: Plan, build: Build) =>
  Object.fromEntries(mixFacts(plan, build, say).facts.map(({ id, figure }) => [id, figure.replaceAll('\u00A0', ' ')]));

describe('U40 on Bench 1 as fitted, 21 to 30 (invented example)', () => {
  const plan = planOf(demo, { machine: 'bench-1', material: 'u40' });

  test('ratio wanted and made, off-ratio, parts and index', () => {
    expect(figures(plan, fitted(plan))).toEqual({
      wanted: '2.8532 : 1',
      made: '2.8571 : 1',
      pumps: '0.5000',
      wheels: '0.7000',
      offRatio: '0.139 % B-lean',
      perHundredA: '41.795',
      index: 'index 104.85',
      lowLimit: '−2.857 %',
      highLimit: '+2.857 %',
      equivalentWeightA: '340.034 g/eq',
      equivalentWeightB: '135.539 g/eq',
      perHundredAWanted: '41.853',
      densityA: '1.01809 g/cm³',
      densityB: '1.21574 g/cm³',
    });
  });
  test('19 to 27 makes +0.389 %', () => {
    expect(figures(plan, { ...fitted(plan), teeth: [pair(19, 27)] }).offRatio).toBe('0.389 % B-rich');
  });
  test('the wanted ratio goes back to % NCO, OH number, index, densities and expansions', () => {
    const wanted = mixFacts(plan, fitted(plan), say).facts.find(({ id }) => id === 'wanted')?.working;
    if (!wanted) throw new Error('no working');
    const put = chainOf(wanted).flatMap((one) => one.put.map(([, { what }]) => what));
    for (const what of [
      '% NCO of U40 isocyanate',
      'OH number of U40 polyol, mg KOH/g',
      'index',
      'expansion of A',
      'density of B as stated',
    ])
      expect(put).toContain(what);
  });
});

describe('every working of the mix [mathjs, npm]', () => {
  test.each(demo.machines.flatMap(({ id }) => demo.materials.map((material) => [id, material.id] as const)))(
    '%s, %s',
    (machine, material) => {
      const plan = planOf(demo, { machine, material });
      const workings = mixFacts(plan, fitted(plan), say).facts.flatMap(({ working }) => working ?? []);
      expect(workings.length).toBeGreaterThan(7);
      for (const working of workings) expectPrinted(working);
    },
  );
  const gcc = (value: string, at: string) => ({ value: { value, unit: 'g/cm3' }, at: { value: at, unit: '°C' } });
  const hot = { value: '60', unit: '°C' };
  const at20 = { value: '20', unit: '°C' };
  const grows = { expansion: { value: '0.001', unit: '1/K' }, runAt: hot };
  test.each([
    [
      'third part by weight',
      {
        ratio: { basis: 'weight', parts: '4:1:1', thirdInto: 'A' },
        A: { density: gcc('1.1', '20'), ...grows },
        third: { density: gcc('0.9', '20') },
        B: { density: gcc('1', '20') },
      },
    ],
    [
      'third part by volume',
      {
        ratio: { basis: 'volume', parts: '4:1:1', thirdInto: 'B', at: at20 },
        A: { density: gcc('1.1', '20'), ...grows },
        third: { density: gcc('0.9', '20'), ...grows },
        B: { density: gcc('1', '20'), ...grows },
      },
    ],
    [
      'two densities',
      {
        ratio: { basis: 'weight', parts: '2:1' },
        A: { density: gcc('1.1', '20'), secondDensity: gcc('1.08', '45'), runAt: hot },
        B: { density: gcc('1', '20') },
      },
    ],
    [
      'two ratios for one density',
      {
        ratio: { basis: 'weight', parts: '100:47', at: at20 },
        otherRatio: { basis: 'volume', parts: '2:1' },
        A: { density: gcc('1.16', '20'), ...grows },
        B: {},
      },
    ],
    [
      'points of the total',
      { ratio: { basis: 'volume', parts: '3:1' }, limits: { definition: 'points of B in the total', low: '-5', high: '4' } },
    ],
    ['parts of B', { ratio: { basis: 'volume', parts: '100:33' }, limits: { definition: 'parts of B', low: '30', high: '40' } }],
    ['% of A per B', { ratio: { basis: 'volume', parts: '3:1' }, limits: { definition: '% of A per B', low: '-5', high: '4' } }],
  ] as const)('%s', (_name, material) => {
    const plan = planOf(shopOf(inLine([stageRow(20, 30), stageRow(17, 40)]), [], material));
    const workings = mixFacts(plan, fitted(plan), say).facts.flatMap(({ working }) => working ?? []);
    for (const working of workings) expectPrinted(working);
    expect(workings.length).toBeGreaterThan(4);
  });
});

test('the made ratio is pumps times wheels, shared stages and measured delivery included [kinematics]', () => {
  const delivery = { measuredDelivery: { value: { value: '98', unit: '%' } } };
  const machine = inLine([stageRow(20, 30), stageRow(17, 40)], {
    A: { shaft: 'shaft-1', fitted: 'pump-a', pumps: [pumpRow('pump-a', '10')] },
    B: { shaft: 'shaft-2', fitted: 'pump-b', pumps: [pumpRow('pump-b', '5', delivery)] },
    search: { asMeasured: true },
  });
  const plan = planOf(shopOf(machine));
  const { pumps, wheels, made } = madeRatio(plan, fitted(plan));
  expect([exactText(pumps.value), exactText(wheels.value)]).toEqual(['49/100', '17/40']);
  expect(exactText(made.value)).toBe(exactText(madeBPerA(plan, fittedPumps(plan), fittedTeeth(plan))));
  expectPrinted(made);
});
