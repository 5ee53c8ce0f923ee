import { describe, expect, test } from 'vitest';
import { delivery } from '../../../core/src/checks/delivery.ts';
import { expectedCatch } from '../../../core/src/expectedCatch.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { offRatio } from '../../../core/src/mixRatio.ts';
import { Fraction, float, ONE } from '../../../core/src/ratio.ts';
import { fittedPumps, fittedTeeth, madeBPerA } from '../../../core/src/train.ts';
import { expectFinding, inLine, judgeOption, only, pair, planOf, pumpRow, shopOf, stageRow } from '../planFixture.ts';

// 10 and 5 cc at one speed: 2 : 1 by the gearing.
function fileWith(a: string | null, b: string | null, more: Partial<MachineRow> = {}, density?: Partial<ShopFile['materials'][number]>) {
  const machine = inLine([stageRow(20, 20)]);
  const measured = (value: string | null) => (value === null ? {} : { measuredDelivery: { value: { value, unit: '' } } });
  return shopOf(
    {
      ...machine,
      A: { ...machine.A, pumps: [pumpRow('pump-a', '10', measured(a))] },
      B: { ...machine.B, pumps: [pumpRow('pump-b', '5', measured(b))] },
      ...more,
    },
    [],
    density,
  );
}
const judged = (file: ShopFile) => judgeOption(delivery, planOf(file), [pair(20, 20)]);
const atPump = (side: 'A' | 'B') => ['machines', 0, side, 'pumps', 0, 'measuredDelivery'];

describe('delivery as measured [our choice: 95 %, usual of a new pump, from memory]', () => {
  test('95 % pass, 94.99 % warn, and the sentence tells them apart', () => {
    expect(judged(fileWith('0.95', '0.98'))).toEqual([]);
    const file = fileWith('0.9499', '0.98');
    expectFinding(only(judged(file)), file, {
      severity: 'warns',
      where: [...atPump('A'), 'value'],
      figure: { value: 94.99, unit: '%' },
      limit: { value: 95, unit: '%' },
      names: ['Pump A delivers 94.99 %', '95.00 % or more', 'Find the cause'],
    });
  });
  test('a worn pump B: 10.00 of 11.69 are 85.5 %, the ratio 2.2211 and not 2, −9.95 % and not −14.5 [arithmetic]', () => {
    const file = fileWith('0.95', '1000/1169', { search: { asMeasured: true } });
    const finding = only(judged(file));
    expect(finding.where).toEqual([...atPump('B'), 'value']);
    expect(finding.figure?.value).toBeCloseTo(85.543, 3);
    const plan = planOf(file);
    const made = madeBPerA(plan, fittedPumps(plan), fittedTeeth(plan));
    expect(float(ONE.div(made))).toBeCloseTo(2.2211, 4);
    expect(100 * float(offRatio(made, plan.mix.wantedBPerA))).toBeCloseTo(-9.95453, 4);
  });
});

describe('more than the whole displacement [by definition]', () => {
  const measured = (value: string, uncertainty: string) => {
    const row = { value: { value, unit: '%' }, uncertainty: { value: uncertainty, unit: '%' } };
    const machine = inLine([stageRow(20, 20)]);
    return shopOf({ ...machine, A: { ...machine.A, pumps: [pumpRow('pump-a', '10', { measuredDelivery: row })] } });
  };
  test('100.4 % measured to 0.4 % may be, 100.41 % may not', () => {
    expect(judged(measured('100.4', '0.4'))).toEqual([]);
    const file = measured('100.41', '0.4');
    expectFinding(only(judged(file)), file, {
      severity: 'warns',
      where: [...atPump('A'), 'value'],
      figure: { value: 100.41, unit: '%' },
      limit: { value: 100.4, unit: '%' },
      names: ['Pump A', '100.41 %', '100.40 % is the most', 'Weigh again'],
    });
  });
});

test('a pump nobody measured is no finding here: its slip is estimated', () => {
  expect(judged(fileWith(null, null))).toEqual([]);
  expect(only(judged(fileWith('0.9', null))).where).toEqual([...atPump('A'), 'value']);
});

describe('air in a component looks like a poor pump on the scale', () => {
  // 4 % of fine air in B: its pump meters the volume right, and the cup is lighter.
  const caught = (densityOfB: string) => {
    const density = (value: string) => ({ density: { value: { value, unit: 'g/cm3' } } });
    const plan = planOf(fileWith(null, null, {}, { A: density('1.15'), B: density(densityOfB) }));
    const { sides } = expectedCatch(plan, fittedPumps(plan), fittedTeeth(plan));
    if (!sides.A.mass_kg.known || !sides.B.mass_kg.known) throw new Error('no mass');
    return { weight: sides.B.mass_kg.value.div(sides.A.mass_kg.value), volume: sides.B.volume_m3.div(sides.A.volume_m3) };
  };
  test('42.24 in place of 44 g per 100 g of A: −4 % by weight, 0 by volume [arithmetic]', () => {
    const airless = caught('1.012');
    const aired = caught('0.97152');
    expect(airless.weight.mul(100).equals('44')).toBe(true);
    expect(aired.weight.mul(100).equals('42.24')).toBe(true);
    expect(offRatio(aired.weight, airless.weight).equals(new Fraction('-0.04'))).toBe(true);
    expect(offRatio(aired.volume, airless.volume).equals('0')).toBe(true);
  });
});
