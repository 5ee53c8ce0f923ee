import { describe, expect, test } from 'vitest';
import { budget } from '../../../core/src/checks/budget.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import type { PartRow } from '../../../core/src/file/material.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { expectFinding, expectNotMade, inLine, judgeOption, only, pair, planOf, pumpRow, shopOf, stageRow } from '../planFixture.ts';

const share = (value: string) => ({ value, unit: '%' });
const still: PartRow = {
  density: { value: { value: '1', unit: 'g/cm3' } },
  expansion: { value: '0', unit: '1/K' },
  runAt: { value: '25', unit: '°C' },
  densityUncertainty: share('0'),
};
type PumpMore = Parameters<typeof pumpRow>[2];

/** Pumps of 10 and 5 cc make 2 : 1 exactly; only what a test adds is not known exactly. */
function shop(
  toleranceA: string,
  material: Partial<ShopFile['materials'][number]> = {},
  pumps: { A?: PumpMore; B?: PumpMore } = {},
  more: Partial<MachineRow> = {},
) {
  return shopOf(
    inLine([stageRow(20, 20)], {
      A: { shaft: 'motor', fitted: 'a', pumps: [pumpRow('a', '10', { tolerance: share(toleranceA), ...pumps.A })] },
      B: { shaft: 'shaft-1', fitted: 'b', pumps: [pumpRow('b', '5', { tolerance: share('1'), ...pumps.B })] },
      ...more,
    }),
    [],
    {
      ratio: { basis: 'weight', parts: '2 : 1' },
      limits: { definition: '% of B per A', low: '-3', high: '2.5' },
      A: still,
      B: still,
      ...material,
    },
  );
}
const judged = (file: ShopFile, driven = 20) => judgeOption(budget, planOf(file), [pair(20, driven)]);

describe('the worst case against the limits, both ends inclusive [arithmetic]', () => {
  test('1.5 % + 1 % reach 2.5 % exactly: inside; 1.5000001 % is past it, and the sentence shows why', () => {
    expect(judged(shop('1.5'))).toEqual([]);
    const file = shop('1.5000001');
    const finding = only(judged(file));
    expectFinding(finding, file, {
      severity: 'warns',
      where: ['machines', 0, 'A', 'pumps', 0, 'tolerance'],
      figure: { value: 2.5000001, unit: '%' },
      limit: { value: 2.5, unit: '%' },
      places: 9,
      names: ['+2.5000001 %', '+2.5000000 %', 'the tolerance of pump A, ±1.50 %', 'ratio check'],
    });
  });
  test('the end that lies further past its limit is the one named', () => {
    const file = shop('3', { limits: { definition: '% of B per A', low: '-1', high: '3.5' } });
    const finding = only(judged(file));
    expect([finding.figure?.value, finding.limit?.value]).toEqual([-4, -1]);
    expect(finding.what).toContain('−4.00 %, past the limit of −1.00 %');
  });
  test('what is outside by its teeth is not judged again: 20 driving 21 is 4.76 % B-lean', () => expect(judged(shop('9'), 21)).toEqual([]));
});

describe('the largest contribution is where to begin', () => {
  test('a density', () => {
    const file = shop('0.5', { B: { ...still, densityUncertainty: share('2') } });
    expectFinding(only(judged(file)), file, {
      severity: 'warns',
      where: ['materials', 0, 'B', 'densityUncertainty'],
      figure: { value: 3.5, unit: '%' },
      limit: { value: 2.5, unit: '%' },
      names: ['the density of B, ±2.00 %', 'supplier'],
    });
  });
  test('a delivery that the ratio leaves out: the middle itself has moved by 2 % [arithmetic]', () => {
    const file = shop('0.5', {}, { A: { measuredDelivery: { value: share('98'), uncertainty: share('0') } } });
    const finding = only(judged(file));
    expectFinding(finding, file, {
      severity: 'warns',
      where: ['machines', 0, 'A', 'pumps', 0, 'measuredDelivery', 'value'],
      figure: { value: 100 * (1 / 0.98 - 1) + 1, unit: '%' },
      limit: { value: 2.5, unit: '%' },
      names: ['The deliveries as measured', '2.04 % to B-rich'],
    });
    // Counted by the search, the same build is B-rich by its ratio and only the margin is left.
    expect(
      judged(
        shop(
          '0.5',
          { limits: { definition: '% of B per A', low: '-3', high: '3.1' } },
          { A: { measuredDelivery: { value: share('98'), uncertainty: share('0') } } },
          { search: { asMeasured: true } },
        ),
      ),
    ).toEqual([]);
  });
});

describe('what is not given', () => {
  test('all in one note, the first as its place; it never passes for a margin', () => {
    const { densityUncertainty, ...bare } = still;
    const file = shop('0.5', { A: bare, B: bare });
    const finding = only(judged(file));
    expectNotMade(finding, file, ['materials', 0, 'A', 'densityUncertainty']);
    expect(finding.what).toContain('the density uncertainty of A and the density uncertainty of B are not given');
  });
  test('one alone reads as one', () => {
    const { densityUncertainty, ...bare } = still;
    expect(only(judged(shop('0.5', { B: bare }))).what).toContain('the density uncertainty of B is not given');
  });
  test('without limits there is nothing to hold it against', () => {
    const file = shopOf(inLine([stageRow(20, 20)]), [], { ratio: { basis: 'volume', parts: '2 : 1' }, A: still, B: still });
    expectNotMade(only(judged(file)), file, ['materials', 0, 'limits']);
  });
  test('a warning stands beside the note where the known part is past a limit already', () => {
    const { densityUncertainty, ...bare } = still;
    expect(judged(shop('2', { B: bare })).map(({ severity, missing }) => [severity, missing])).toEqual([
      ['warns', false],
      ['notes', true],
    ]);
  });
});
