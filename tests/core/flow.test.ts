import { describe, expect, test } from 'vitest';
import { dialText } from '../../core/src/dial.ts';
import type { MachineRow } from '../../core/src/file/machine.ts';
import { type Flow, flowOf, pumpFlow, type Setting } from '../../core/src/flow.ts';
import { fixed } from '../../core/src/format.ts';
import type { Plan } from '../../core/src/plan.ts';
import { exactText, type Fraction, float, whole } from '../../core/src/ratio.ts';
import { fittedPumps, fittedTeeth } from '../../core/src/train.ts';
import { fromSI, toSI } from '../../core/src/units.ts';
import type { Worked } from '../../core/src/working.ts';
import { inLine, pair, planOf, pumpRow, rpm, say, shopOf, stageRow } from './planFixture.ts';
import { expectPrinted } from './printedFormula.ts';
import { demoPlan } from './sheet/demoSheet.ts';

const percent = (value: string) => ({ value, unit: '%' });
const inCc = ({ value }: Worked<Fraction>, places = 1): string => fixed(fromSI('flow', value, 'cc/min'), places, say);
const inRpm = ({ value }: Worked<Fraction>, places = 2): string => fixed(fromSI('speed', value, 'rpm'), places, say);
const flowWith = (plan: Plan, teeth = fittedTeeth(plan)): Flow => flowOf(plan, { pumps: fittedPumps(plan), teeth });

function settingOf({ setting }: Flow): Setting {
  if (setting === null) throw new Error('no setting');
  return setting;
}

describe('what a pump moves', () => {
  test('5 in³ at 1000 rpm: 21.6 US gpm, of which 20 are 92.4 % [Fluid Power with Applications, efficiencies example, from memory]', () => {
    const D = toSI('displacement', whole(5), 'in3/rev');
    const gpm = float(fromSI('flow', pumpFlow.of({ D, n: toSI('speed', whole(1000), 'rpm') }), 'US gal/min'));
    expect(gpm).toBeCloseTo(21.6, 1);
    expect((100 * 20) / gpm).toBeCloseTo(92.4, 1);
  });
  test('1 in³ at 1800 rpm: 7.79 US gpm [231 in³ to the gallon]', () => {
    const D = toSI('displacement', whole(1), 'in3/rev');
    expect(float(fromSI('flow', pumpFlow.of({ D, n: toSI('speed', whole(1800), 'rpm') }), 'US gal/min'))).toBeCloseTo(7.79, 2);
  });
});

type Row = readonly [material: string, driver: number, driven: number, A: string, B: string, total: string, dial: string, cost: string];

describe('Bench 1, 1000 cc/min wanted [invented example, worked out apart from this program]', () => {
  const ROWS: readonly Row[] = [
    ['e12', 23, 25, '685.8', '315.5', '1001.3', '63.5 %', '0.13'],
    ['e12', 22, 24, '685.8', '314.3', '1000.1', '63.5 %', '0.01'],
    ['e12', 25, 27, '685.8', '317.5', '1003.3', '63.5 %', '0.33'],
    ['e12', 32, 35, '685.8', '313.5', '999.3', '63.5 %', '−0.07'],
    ['e12', 21, 23, '685.8', '313.1', '998.9', '63.5 %', '−0.11'],
    ['e12', 21, 30, '739.8', '258.9', '998.7', '68.5 %', '−0.13'],
    ['l5', 14, 35, '831.6', '166.3', '997.9', '77.0 %', '−0.21'],
    ['l5', 15, 37, '831.6', '168.6', '1000.2', '77.0 %', '0.02'],
  ];
  test.each(ROWS)('%s, %d to %d: %s + %s = %s cc/min at %s, rounding (%) %s', (material, driver, driven, A, B, total, dial, cost) => {
    const setting = settingOf(flowWith(demoPlan({ selection: { machine: 'bench-1', material } }), [pair(driver, driven)]));
    expect([inCc(setting.flow.A), inCc(setting.flow.B), inCc(setting.total)]).toEqual([A, B, total]);
    expect(dialText(setting.dial.value, say).replace('\u00a0', ' ')).toBe(dial);
    expect(fixed(setting.cost.value.mul(100), 2, say)).toBe(cost);
  });
  test('23 to 25: motor 57.15 rpm, pumps 57.15 and 52.58 rpm', () => {
    const { motorSpeed, pumpSpeed } = settingOf(flowWith(demoPlan({ selection: { machine: 'bench-1', material: 'e12' } }), [pair(23, 25)]));
    expect([motorSpeed, pumpSpeed.A, pumpSpeed.B].map((speed) => inRpm(speed))).toEqual(['57.15', '57.15', '52.58']);
  });
  test('printed as computed [mathjs, npm]', () => {
    const { ends, setting } = flowWith(demoPlan({ selection: { machine: 'bench-1', material: 'e12' } }), [pair(23, 25)]);
    if (ends === null || setting === null) throw new Error('no flow');
    for (const worked of [setting.total, setting.cost, setting.motorSpeed, ends.from.total, ends.to.total]) expectPrinted(worked);
  });
});

// Motor 60 rpm; A 10 cc on its shaft, B 5 cc through 17 to 34 teeth at half its speed: 12.5 cc a turn, 750 cc/min in all.
const benchOf = (more: Partial<MachineRow> = {}, motor: Partial<MachineRow['motor']> = {}): Plan =>
  planOf(
    shopOf({
      ...inLine([stageRow(17, 34)]),
      motor: { speed: rpm('60'), usable: { from: percent('20'), to: percent('100') }, dialStep: percent('1'), ...motor },
      ...more,
    }),
  );
const wanted = (value: string): Partial<MachineRow> => ({ wantedFlow: { value, unit: 'cc/min' } });

describe('flow over the range of the dial [arithmetic]', () => {
  test('20 to 100 % are 150 to 750 cc/min', () => {
    const { ends, setting } = flowWith(benchOf());
    expect(ends && [inCc(ends.from.total), inCc(ends.to.total)]).toEqual(['150.0', '750.0']);
    expect(setting).toBeNull();
  });
  test('pumps from 24 rpm (A) and to 21 rpm (B) leave 40 to 70 %, 300 to 525 cc/min', () => {
    const machine = inLine([stageRow(17, 34)]);
    const { range, ends } = flowWith(
      benchOf({
        A: { ...machine.A, pumps: [pumpRow('pump-a', '10', { speedFrom: rpm('24') })] },
        B: { ...machine.B, pumps: [pumpRow('pump-b', '5', { speedTo: rpm('21') })] },
      }),
    );
    expect([range.from.whose, exactText(range.from.share), range.to.whose, exactText(range.to.share)]).toEqual([
      'pump A',
      '2/5',
      'pump B',
      '7/10',
    ]);
    expect(ends && [inCc(ends.from.total), inCc(ends.to.total)]).toEqual(['300.0', '525.0']);
  });
  test('pumps that leave nothing leave neither flow nor setting', () => {
    const machine = inLine([stageRow(17, 34)]);
    const { ends, setting } = flowWith(
      benchOf({
        ...wanted('300'),
        A: { ...machine.A, pumps: [pumpRow('pump-a', '10', { speedFrom: rpm('50') })] },
        B: { ...machine.B, pumps: [pumpRow('pump-b', '5', { speedTo: rpm('5') })] },
      }),
    );
    expect([ends, setting]).toEqual([null, null]);
  });
  test('more than there is: the most, and what it costs; less: the least', () => {
    const most = settingOf(flowWith(benchOf(wanted('1000'))));
    expect([exactText(most.dial.value), inCc(most.total), exactText(most.cost.value)]).toEqual(['1/1', '750.0', '-1/4']);
    const least = settingOf(flowWith(benchOf(wanted('100'))));
    expect([exactText(least.dial.value), inCc(least.total), exactText(least.cost.value)]).toEqual(['1/5', '150.0', '1/2']);
  });
  test('a half goes away from zero: 333.75 cc/min are 44.5 %, so 45 %', () => {
    const { dial, wanted: before } = settingOf(flowWith(benchOf(wanted('333.75'))));
    expect([exactText(before.value), exactText(dial.value)]).toEqual(['89/200', '9/20']);
  });
  test('without a step the dial stands where it is wanted, at no cost', () => {
    const machine = inLine([stageRow(17, 34)]);
    const plan = planOf(shopOf({ ...machine, ...wanted('333.75'), motor: { speed: rpm('60') } }));
    const { dial, cost } = settingOf(flowWith(plan));
    expect([exactText(dial.value), exactText(cost.value)]).toEqual(['89/200', '0/1']);
  });
});

describe('deliveries as measured [arithmetic]', () => {
  const machine = inLine([stageRow(17, 34)]);
  const measuredDelivery = { value: percent('80') };
  const B = { ...machine.B, pumps: [pumpRow('pump-b', '5', { measuredDelivery })] };

  test('80 % of B are 120 of 150 cc/min, only where the ratio counts what was measured', () => {
    const counted = flowWith(benchOf({ B, search: { asMeasured: true } })).ends?.to;
    const plain = flowWith(benchOf({ B })).ends?.to;
    expect(counted && [inCc(counted.flow.A), inCc(counted.flow.B)]).toEqual(['600.0', '120.0']);
    expect(plain && [inCc(plain.flow.A), inCc(plain.flow.B)]).toEqual(['600.0', '150.0']);
    if (counted !== undefined) expectPrinted(counted.total);
  });
});
