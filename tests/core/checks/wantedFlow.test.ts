import { describe, expect, test } from 'vitest';
import { wantedFlow } from '../../../core/src/checks/wantedFlow.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { expectFinding, expectNotMade, inLine, judgeOption, only, pair, planOf, pumpRow, rpm, shopOf, stageRow } from '../planFixture.ts';

// A 10 cc at 60 rpm, B 5 cc at half of that: 750 cc/min at 100 %, 150 at 20 %.
const fileWith = (more: Partial<MachineRow>): ShopFile =>
  shopOf({
    ...inLine([stageRow(17, 34)]),
    motor: {
      speed: rpm('60'),
      usable: { from: { value: '20', unit: '%' }, to: { value: '100', unit: '%' } },
      dialStep: { value: '0.5', unit: '%' },
    },
    ...more,
  });
const cc = (value: string): Partial<MachineRow> => ({ wantedFlow: { value, unit: 'cc/min' } });
const judged = (file: ShopFile, teeth = pair(17, 34)) => judgeOption(wantedFlow, planOf(file), [teeth]);
const MACHINE = ['machines', 0];

describe('flow wanted against what the dial gives [arithmetic]', () => {
  test('150 and 750 cc/min are there', () => {
    expect([judged(fileWith(cc('150'))), judged(fileWith(cc('750')))]).toEqual([[], []]);
  });
  test('750.01 is not: the most is named, and where the dial then stands', () => {
    const file = fileWith(cc('750.01'));
    expectFinding(only(judged(file)), file, {
      severity: 'warns',
      where: [...MACHINE, 'wantedFlow'],
      figure: { value: 750.01, unit: 'cc/min' },
      limit: { value: 750, unit: 'cc/min' },
      names: ['750.01 cc/min is wanted', '750.00 cc/min is the most', 'The ratio can be built', '750.0 cc/min at 100.0 %'],
    });
  });
  test('149.99 is not: the least', () => {
    const file = fileWith(cc('149.99'));
    expectFinding(only(judged(file)), file, {
      severity: 'warns',
      where: [...MACHINE, 'wantedFlow'],
      figure: { value: 149.99, unit: 'cc/min' },
      limit: { value: 150, unit: 'cc/min' },
      names: ['150.00 cc/min is the least', '150.0 cc/min at 20.0 %'],
    });
  });
  test('a shot is named where it stands: 200 cc in 15 s are 800 cc/min', () => {
    const file = fileWith({ wantedShot: { amount: { value: '200', unit: 'cc' }, time: { value: '15', unit: 's' } } });
    expect(only(judged(file)).where).toEqual([...MACHINE, 'wantedShot']);
  });
  test('other wheels bring it into reach: 34 to 17 make 1200 cc/min', () => {
    expect(judged(fileWith(cc('1200')), pair(34, 17))).toEqual([]);
  });
  test('where the pump speeds leave nothing, that is said elsewhere', () => {
    const machine = inLine([stageRow(17, 34)]);
    const A = { ...machine.A, pumps: [pumpRow('pump-a', '10', { speedFrom: rpm('61') })] };
    expect(judged(fileWith({ ...cc('300'), A }))).toEqual([]);
  });
});

test('no flow is wanted: one note that no dial setting is worked out', () => {
  const file = fileWith({});
  const finding = only(judged(file));
  expectNotMade(finding, file, [...MACHINE, 'wantedFlow']);
  expect(finding.what).toContain('no dial setting');
});
