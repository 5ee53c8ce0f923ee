import { describe, expect, test } from 'vitest';
import { pumpPressure } from '../../../core/src/checks/pumpPressure.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { expectFinding, expectNotMade, inLine, judgeOption, only, pair, planOf, pumpRow, shopOf, stageRow } from '../planFixture.ts';

const bar = (value: string) => ({ value, unit: 'bar' });
const psi = (value: string) => ({ value, unit: 'psi' });
type Given = NonNullable<MachineRow['A']['pressure']>;

function fileWith(pressure: Given | null, limit: Given | null): ShopFile {
  const machine = inLine([stageRow(17, 34)]);
  return shopOf({
    ...machine,
    A: { ...machine.A, pumps: [pumpRow('pump-a', '10', limit === null ? {} : { pressureLimit: limit })], ...(pressure && { pressure }) },
    B: { ...machine.B, pumps: [pumpRow('pump-b', '5', { pressureLimit: bar('40') })], pressure: bar('40') },
  });
}
const judged = (file: ShopFile) => judgeOption(pumpPressure, planOf(file), [pair(17, 34)]);
const A = ['machines', 0, 'A'];

describe('pressure of a side against the limit of its pump [arithmetic]', () => {
  test('28 of 28 bar pass, 28.01 block, and the sentence tells them apart', () => {
    expect(judged(fileWith(bar('28'), bar('28')))).toEqual([]);
    const file = fileWith(bar('28.01'), bar('28'));
    expectFinding(only(judged(file)), file, {
      severity: 'blocks',
      where: [...A, 'pressure'],
      figure: { value: 28.01, unit: 'bar' },
      limit: { value: 28, unit: 'bar' },
      names: ['Pump A works against 28.01 bar', '28.00 bar', 'Lower the pressure'],
    });
  });
  test('compared exactly across units: 1000 psi are 68.9476 bar [NIST SP 811, from memory]', () => {
    expect(judged(fileWith(psi('1000'), bar('68.948')))).toEqual([]);
    expect(only(judged(fileWith(psi('1000'), bar('68.947')))).severity).toBe('blocks');
  });
});

test('what is not given is not checked', () => {
  const noLimit = fileWith(bar('28'), null);
  expectNotMade(only(judged(noLimit)), noLimit, [...A, 'pumps', 0, 'pressureLimit']);
  const noPressure = fileWith(null, bar('28'));
  expectNotMade(only(judged(noPressure)), noPressure, [...A, 'pressure']);
  const neither = fileWith(null, null);
  expectNotMade(only(judged(neither)), neither, [...A, 'pumps', 0, 'pressureLimit']);
});
