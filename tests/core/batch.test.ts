import { describe, expect, test } from 'vitest';
import { type BatchSide, batchOf } from '../../core/src/batch.ts';
import type { MachineRow } from '../../core/src/file/machine.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import type { Plan, SideName } from '../../core/src/plan.ts';
import { exactText, Fraction, float } from '../../core/src/ratio.ts';
import { fittedPumps, fittedTeeth, madeBPerA } from '../../core/src/train.ts';
import { isWorked } from '../../core/src/working.ts';
import { inLine, pair, planOf, pumpRow, shopOf, stageRow } from './planFixture.ts';
import { expectPrinted } from './printedFormula.ts';

type Amount = NonNullable<MachineRow['batch']>['amount'];
const density = (value: string) => ({ density: { value: { value, unit: 'g/cm3' } } });
const kg = (value: string): Amount => ({ value, unit: 'kg' });
const litres = (value: string): Amount => ({ value, unit: 'L' });

// A 10 cc and B 5 cc a turn at one speed: 2 : 1 by volume; with 1.1 and 0.8 g/cm³ 11 : 4 by weight.
const LIQUIDS: Partial<ShopFile['materials'][number]> = { A: density('1.1'), B: density('0.8') };
const planWith = (of: 'mix' | SideName, amount: Amount, liquids = LIQUIDS): Plan =>
  planOf(shopOf(inLine([stageRow(20, 20)], { batch: { of, amount } }), [], liquids));

function taken(plan: Plan, teeth = fittedTeeth(plan)): Readonly<Record<SideName, BatchSide>> {
  const batch = batchOf(plan, { pumps: fittedPumps(plan), teeth });
  if (!batch.known) throw new Error('no batch');
  for (const side of [batch.value.A, batch.value.B])
    for (const amount of [side.mass, side.volume]) if (amount.known && isWorked(amount.value)) expectPrinted(amount.value);
  return batch.value;
}
/** Kilograms and litres; a dash where not given. */
function amounts({ mass, volume }: BatchSide): readonly string[] {
  const text = (value: Fraction): string => exactText(value).replace(/\/1$/, '');
  return [mass.known ? text(mass.value.value) : '-', volume.known ? text(volume.value.value.mul(1000)) : '-'];
}

describe('10 kg of resin with 2 % of catalyst by weight, 1.15 g/ml', () => {
  // Pumps that make exactly that: 0.02 · 1.1 / 1.15 of B per A by volume.
  const machine = inLine([stageRow(20, 20)], { batch: { of: 'A', amount: kg('10') } });
  const plan = planOf(
    shopOf(
      { ...machine, A: { ...machine.A, pumps: [pumpRow('pump-a', '11.5')] }, B: { ...machine.B, pumps: [pumpRow('pump-b', '0.22')] } },
      [],
      {
        ratio: { basis: 'weight', perHundredA: '2' },
        A: density('1.1'),
        B: density('1.15'),
      },
    ),
  );

  test('200 g, which are 173.913 ml and not 200 [arithmetic]', () => {
    const { mass, volume } = taken(plan).B;
    if (!mass.known || !volume.known) throw new Error('not given');
    expect(exactText(mass.value.value)).toBe('1/5');
    expect(float(volume.value.value) * 1e6).toBeCloseTo(173.91304, 5);
  });
  test('200 ml would be 2.3 % by weight [arithmetic]', () => {
    const asMillilitres = new Fraction('0.0002').mul('1150').div('10').mul('100');
    expect(exactText(asMillilitres)).toBe('23/10');
  });
});

describe('a batch in the ratio as made, 2 : 1 by volume, 11 : 4 by weight [arithmetic]', () => {
  test.each([
    ['mix', litres('3'), ['11/5', '2'], ['4/5', '1']],
    ['mix', kg('15'), ['11', '10'], ['4', '5']],
    ['A', litres('10'), ['11', '10'], ['4', '5']],
    ['A', kg('11'), ['11', '10'], ['4', '5']],
    ['B', litres('5'), ['11', '10'], ['4', '5']],
    ['B', kg('4'), ['11', '10'], ['4', '5']],
  ] as const)('of %s, $value $unit', (of, amount, A, B) => {
    const batch = taken(planWith(of, amount));
    expect([amounts(batch.A), amounts(batch.B)]).toEqual([A, B]);
  });
  test('it goes by what the option makes, not by what is wanted: 40 to 20 teeth make 1 : 1', () => {
    const plan = planWith('mix', litres('3'));
    const teeth = [pair(40, 20)];
    expect(exactText(madeBPerA(plan, fittedPumps(plan), teeth))).toBe('1/1');
    const batch = taken(plan, teeth);
    expect([amounts(batch.A)[1], amounts(batch.B)[1]]).toEqual(['3/2', '3/2']);
  });
});

describe('what is not given', () => {
  test('volumes need no density; a mass of the mix needs both', () => {
    const byVolume = taken(planWith('mix', litres('3'), {}));
    expect([amounts(byVolume.A), amounts(byVolume.B)]).toEqual([
      ['-', '2'],
      ['-', '1'],
    ]);
    const byMass = taken(planWith('mix', kg('15'), { A: density('1.1') }));
    expect([amounts(byMass.A), amounts(byMass.B)]).toEqual([
      ['-', '-'],
      ['-', '-'],
    ]);
  });
  test('a mass of A is known without a density, its volume is not, and B is not', () => {
    const batch = taken(planWith('A', kg('11'), { B: density('0.8') }));
    expect([amounts(batch.A), amounts(batch.B)]).toEqual([
      ['11', '-'],
      ['-', '-'],
    ]);
  });
  test('no batch is asked for', () => {
    const plan = planOf(shopOf(inLine([stageRow(20, 20)])));
    expect(batchOf(plan, { pumps: fittedPumps(plan), teeth: fittedTeeth(plan) }).known).toBe(false);
  });
});
