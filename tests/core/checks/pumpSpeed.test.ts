import { describe, expect, test } from 'vitest';
import { pumpSpeed } from '../../../core/src/checks/pumpSpeed.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import { expectFinding, expectNotMade, inLine, judgeOption, only, pair, planOf, pumpRow, rpm, shopOf, stageRow } from '../planFixture.ts';

type Limits = { readonly speedFrom?: { value: string; unit: string }; readonly speedTo?: { value: string; unit: string } };

// Motor 60 rpm at 100 %, usable 20 to 100 %; pump A at motor speed, pump B through 17 to 34 teeth at half of it.
function benchOf(a: Limits, b: Limits, motor: Partial<MachineRow['motor']> = {}): MachineRow {
  const machine = inLine([stageRow(17, 34)]);
  const usable = { from: { value: '20', unit: '%' }, to: { value: '100', unit: '%' } };
  return {
    ...machine,
    motor: { speed: rpm('60'), usable, ...motor },
    A: { ...machine.A, pumps: [pumpRow('pump-a', '10', a)] },
    B: { ...machine.B, pumps: [pumpRow('pump-b', '5', b)] },
  };
}
const FITTED = [pair(17, 34)];
const A = ['machines', 0, 'A', 'pumps', 0];
const B = ['machines', 0, 'B', 'pumps', 0];
const between = (from: string, to: string): Limits => ({ speedFrom: rpm(from), speedTo: rpm(to) });

describe('what the pump speeds leave of the dial [arithmetic]', () => {
  test('12 to 60 rpm for A and 6 to 30 for B leave all of 20 to 100 %', () => {
    expect(judgeOption(pumpSpeed, planOf(shopOf(benchOf(between('12', '60'), between('6', '30')))), FITTED)).toEqual([]);
  });
  test('A no faster than 30 rpm is 50 % and less', () => {
    const file = shopOf(benchOf(between('1', '30'), between('1', '30')));
    expectFinding(only(judgeOption(pumpSpeed, planOf(file), FITTED)), file, {
      severity: 'notes',
      where: [...A, 'speedTo'],
      figure: { value: 50, unit: '%' },
      limit: { value: 100, unit: '%' },
      names: ['20.0 to 50.0 %', '20.0 to 100.0 %'],
    });
  });
  test('B no slower than 15 rpm is 50 % and more: one setting is left, and one is enough', () => {
    const file = shopOf(benchOf(between('1', '30'), between('15', '30')));
    expectFinding(only(judgeOption(pumpSpeed, planOf(file), FITTED)), file, {
      severity: 'notes',
      where: [...B, 'speedFrom'],
      figure: { value: 50, unit: '%' },
      limit: { value: 20, unit: '%' },
      names: ['50.0 to 50.0 %'],
    });
  });
  test('a hair more, and nothing is left', () => {
    const file = shopOf(benchOf(between('1', '30'), between('15.001', '30')));
    expectFinding(only(judgeOption(pumpSpeed, planOf(file), FITTED)), file, {
      severity: 'blocks',
      where: [...B, 'speedFrom'],
      figure: { value: 50.0033, unit: '%' },
      limit: { value: 50, unit: '%' },
      names: ['pump B wants 50.003 % or more', 'pump A 50.000 % or less'],
    });
  });
  test('one pump against the motor’s own range', () => {
    const file = shopOf(benchOf(between('1', '11.4'), between('1', '30')));
    expectFinding(only(judgeOption(pumpSpeed, planOf(file), FITTED)), file, {
      severity: 'blocks',
      where: [...A, 'speedTo'],
      figure: { value: 20, unit: '%' },
      limit: { value: 19, unit: '%' },
      names: ['the motor wants 20.0 % or more', 'pump A 19.0 % or less'],
    });
  });
  test('other wheels turn pump B faster: 34 to 17 teeth is 120 rpm at 100 %, so 30 rpm are 25 %', () => {
    const plan = planOf(shopOf(benchOf(between('1', '60'), between('1', '30'))));
    expect(only(judgeOption(pumpSpeed, plan, [pair(34, 17)])).figure).toEqual({ value: 25, unit: '%' });
  });
});

describe('limits that are not given', () => {
  test('each side says which, and nothing blocks or passes', () => {
    const file = shopOf(benchOf({ speedFrom: rpm('1') }, { speedTo: rpm('30') }));
    const [a, b, ...rest] = judgeOption(pumpSpeed, planOf(file), FITTED);
    if (a === undefined || b === undefined) throw new Error('two findings are expected');
    expectNotMade(a, file, [...A, 'speedTo']);
    expectNotMade(b, file, [...B, 'speedFrom']);
    expect([a.what, b.what, rest]).toEqual([
      'Pump A: its highest speed is not given, and so not checked.',
      'Pump B: its lowest speed is not given, and so not checked.',
      [],
    ]);
  });
  test('neither limit of a pump, and no usable range of the motor', () => {
    const file = shopOf(inLine([stageRow(17, 34)]));
    const [a, b, dial] = judgeOption(pumpSpeed, planOf(file), FITTED);
    if (a === undefined || b === undefined || dial === undefined) throw new Error('three findings are expected');
    expectNotMade(a, file, [...A, 'speedFrom']);
    expectNotMade(b, file, [...B, 'speedFrom']);
    expectNotMade(dial, file, ['machines', 0, 'motor', 'usable']);
    expect([a.what, b.what, dial.what]).toEqual([
      'Pump A: its speed limits are not given, and so not checked.',
      'Pump B: its speed limits are not given, and so not checked.',
      'The usable range of the motor is not given; the whole dial was taken.',
    ]);
  });
  test('what is given still blocks', () => {
    const plan = planOf(shopOf(benchOf({ speedTo: rpm('6') }, { speedFrom: rpm('29') })));
    expect(judgeOption(pumpSpeed, plan, FITTED).map(({ severity }) => severity)).toEqual(['blocks', 'notes', 'notes']);
  });
});
