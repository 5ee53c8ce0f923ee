import { describe, expect, test } from 'vitest';
import { tankFill } from '../../../core/src/checks/tankFill.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { expectFinding, expectNotMade, inLine, judgeOption, only, pair, planOf, shopOf, stageRow } from '../planFixture.ts';

const litres = (value: string) => ({ value, unit: 'L' });
const tank = (fill: string, lowMark: string) => ({ fill: litres(fill), lowMark: litres(lowMark) });
type Batch = NonNullable<MachineRow['batch']>;

// 2 : 1 by volume; A has 20 L above its mark, B 12.
function fileWith(
  batch: Batch | null,
  a: MachineRow['A']['tank'] = tank('22', '2'),
  density: Partial<ShopFile['materials'][number]> = {},
): ShopFile {
  const machine = inLine([stageRow(20, 20)], batch === null ? {} : { batch });
  return shopOf({ ...machine, A: { ...machine.A, ...(a && { tank: a }) }, B: { ...machine.B, tank: tank('13', '1') } }, [], density);
}
const judged = (file: ShopFile) => judgeOption(tankFill, planOf(file), [pair(20, 20)]);
const ofMix = (value: string, unit = 'L'): Batch => ({ of: 'mix', amount: { value, unit } });
const A = ['machines', 0, 'A', 'tank'];

describe('a batch against what stands above the low mark [arithmetic]', () => {
  test('30 L take 20 of A and pass; 30.03 take 20.02', () => {
    expect(judged(fileWith(ofMix('30')))).toEqual([]);
    const file = fileWith(ofMix('30.03'));
    expectFinding(only(judged(file)), file, {
      severity: 'warns',
      where: [...A, 'fill'],
      figure: { value: 20.02, unit: 'L' },
      limit: { value: 20, unit: 'L' },
      names: ['The batch takes 20.02 L of A', '20.00 L stand above the low mark', 'Fill tank A to 22.02 L'],
    });
  });
  test('who fills as told has enough: 30.006 L take 20.004 of A, with 2 below the mark 22.01 and not 22.00', () => {
    expect(only(judged(fileWith(ofMix('30.006')))).what).toContain('22.01');
  });
  test('both tanks by themselves: 60 L are too much for either', () => {
    expect(judged(fileWith(ofMix('60'))).map(({ figure, where }) => [figure?.value, where[2]])).toEqual([
      [40, 'A'],
      [20, 'B'],
    ]);
  });
  test('by mass: 33 kg of 1.1 g/cm³ in all', () => {
    const even = { A: { density: { value: { value: '1.1', unit: 'g/cm3' } } }, B: { density: { value: { value: '1.1', unit: 'g/cm3' } } } };
    expect(judged(fileWith(ofMix('33', 'kg'), tank('22', '2'), even))).toEqual([]);
    expect(only(judged(fileWith(ofMix('33.1', 'kg'), tank('22', '2'), even))).where).toEqual([...A, 'fill']);
  });
  test('no batch: nothing is asked of the tanks', () => {
    expect(judged(fileWith(null))).toEqual([]);
  });
});

describe('what is not given', () => {
  test('the tank, its mark or its fill', () => {
    const machine = inLine([stageRow(20, 20)], { batch: ofMix('3') });
    const bare = shopOf({ ...machine, B: { ...machine.B, tank: tank('13', '1') } });
    expectNotMade(only(judged(bare)), bare, A);
    const noMark = fileWith(ofMix('3'), { fill: litres('22') });
    expectNotMade(only(judged(noMark)), noMark, [...A, 'lowMark']);
    const noFill = fileWith(ofMix('3'), { lowMark: litres('2') });
    expectNotMade(only(judged(noFill)), noFill, [...A, 'fill']);
  });
  test('a density for a batch by mass: named where it is missing, also for the other tank', () => {
    const file = fileWith(ofMix('3', 'kg'), tank('22', '2'), { A: { density: { value: { value: '1.1', unit: 'g/cm3' } } } });
    const [a, b] = judged(file);
    if (a === undefined || b === undefined) throw new Error('two findings are expected');
    for (const finding of [a, b]) expectNotMade(finding, file, ['materials', 0, 'B', 'density']);
  });
});
