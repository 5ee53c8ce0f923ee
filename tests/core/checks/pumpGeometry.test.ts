import { describe, expect, test } from 'vitest';
import { pumpGeometry } from '../../../core/src/checks/pumpGeometry.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { expectFinding, expectNotMade, inLine, judgeOption, mm, only, pair, planOf, pumpRow, shopOf, stageRow } from '../planFixture.ts';

type GearRow = NonNullable<MachineRow['A']['pumps'][number]['gear']>;

const A = ['machines', 0, 'A', 'pumps', 0];
const B = ['machines', 0, 'B', 'pumps', 0];
// 13.881277 cc by the involute form, recomputed with that of the classical derivation.
const TWELVE: GearRow = { teeth: 12, module: mm('3'), faceWidth: mm('20') };

function fileWith(displacement_cc: string, gear?: GearRow): ShopFile {
  const machine = inLine([stageRow(17, 34)]);
  const pumpA = pumpRow('pump-a', displacement_cc, gear && { gear });
  const pumpB = pumpRow('pump-b', '13.9', { gear: TWELVE });
  return shopOf({ ...machine, A: { ...machine.A, pumps: [pumpA] }, B: { ...machine.B, pumps: [pumpB] } });
}
const judged = (file: ShopFile) => judgeOption(pumpGeometry, planOf(file), [pair(17, 34)]);

describe('displacement typed against 13.881 cc by its gears [our choice: 10 %]', () => {
  test('12.62 cc is 9.99 % less and passes, 12.61 is not', () => {
    expect(judged(fileWith('12.62', TWELVE))).toEqual([]);
    const file = fileWith('12.61', TWELVE);
    expectFinding(only(judged(file)), file, {
      severity: 'warns',
      where: [...A, 'displacement'],
      figure: { value: 10.0815, unit: '%' },
      limit: { value: 10, unit: '%' },
      names: ['12.610 cc/rev is typed', '13.881 cc/rev', '10.1 % more', 'Look at the nameplate'],
    });
  });
  test('15.42 cc passes, 15.43 is not: the gears make a tenth less', () => {
    expect(judged(fileWith('15.42', TWELVE))).toEqual([]);
    const file = fileWith('15.43', TWELVE);
    expectFinding(only(judged(file)), file, {
      severity: 'warns',
      where: [...A, 'displacement'],
      figure: { value: -10.0371, unit: '%' },
      limit: { value: -10, unit: '%' },
      names: ['10.0 % less'],
    });
  });
  test('sizes that leave no pump at all are said too: an inside diameter beyond the outside', () => {
    const file = fileWith('10', { teeth: 12, outsideDiameter: mm('30'), insideDiameter: mm('42'), faceWidth: mm('20') });
    expect(only(judged(file)).severity).toBe('warns');
  });
});

describe('sizes that are not given', () => {
  test('no gears, or their teeth alone, which the pulses need: nothing to hold the displacement against', () => {
    expect(judged(fileWith('12'))).toEqual([]);
    expect(judged(fileWith('12', { teeth: 12 }))).toEqual([]);
  });
  test('all but one: that one is named', () => {
    const noFace = fileWith('12', { teeth: 12, module: mm('3') });
    expectNotMade(only(judged(noFace)), noFace, [...A, 'gear', 'faceWidth']);
    const outsideOnly = fileWith('12', { teeth: 12, outsideDiameter: mm('42'), faceWidth: mm('20'), gapWidth: mm('20') });
    expectNotMade(only(judged(outsideOnly)), outsideOnly, [...A, 'gear', 'module']);
  });
  test('each side by itself', () => {
    const machine = inLine([stageRow(17, 34)]);
    const half = (id: string) => pumpRow(id, '12', { gear: { teeth: 12, faceWidth: mm('20') } });
    const file = shopOf({ ...machine, A: { ...machine.A, pumps: [half('pump-a')] }, B: { ...machine.B, pumps: [half('pump-b')] } });
    const [a, b, ...rest] = judged(file);
    if (a === undefined || b === undefined) throw new Error('two findings are expected');
    expectNotMade(a, file, [...A, 'gear', 'module']);
    expectNotMade(b, file, [...B, 'gear', 'module']);
    expect(rest).toEqual([]);
  });
});
