import { describe, expect, test } from 'vitest';
import { pulses } from '../../../core/src/checks/pulses.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { expectFinding, expectNotMade, inLine, judgeOption, only, pair, planOf, pumpRow, shopOf, stageRow } from '../planFixture.ts';

const MIXER = ['machines', 0, 'mixerVolume'];

// A 10 cc and 12 teeth at motor speed, B 5 cc and 10 teeth at half of it: 12.5 cc, 12 and 5 pulses a turn of the motor.
function fileWith(mixer_cc: string | null, teethOfB: number | null = 10): ShopFile {
  const machine = inLine([stageRow(17, 34)], mixer_cc === null ? {} : { mixerVolume: { value: mixer_cc, unit: 'cc' } });
  const pumpB = pumpRow('pump-b', '5', teethOfB === null ? {} : { gear: { teeth: teethOfB } });
  return shopOf({
    ...machine,
    A: { ...machine.A, pumps: [pumpRow('pump-a', '10', { gear: { teeth: 12 } })] },
    B: { ...machine.B, pumps: [pumpB] },
  });
}
const judged = (file: ShopFile, teeth = pair(17, 34)) => judgeOption(pulses, planOf(file), [teeth]);

describe('pulses in a mixer volume [our choice: 5; the count is arithmetic]', () => {
  test('12.5 cc hold 5 pulses of B and pass; 12.49 do not', () => {
    expect(judged(fileWith('12.5'))).toEqual([]);
    const file = fileWith('12.49');
    expectFinding(only(judged(file)), file, {
      severity: 'warns',
      where: MIXER,
      figure: { value: 4.996, unit: 'pulses' },
      limit: { value: 5, unit: 'pulses' },
      names: ['B comes in 4.996 pulses', 'Take a larger mixer'],
    });
  });
  test('of A as of B: 5 cc hold 4.8 and 2', () => {
    expect(judged(fileWith('5')).map(({ figure }) => figure?.value)).toEqual([4.8, 2]);
  });
  test('other wheels count: 34 to 17 turn B four times as fast', () => {
    expect(judged(fileWith('12.49'), pair(34, 17))).toEqual([]);
  });
});

describe('what is not given', () => {
  test('the mixer volume: one note', () => {
    const file = fileWith(null);
    expectNotMade(only(judged(file)), file, MIXER);
  });
  test('the teeth of B: a note there, and A is judged', () => {
    const file = fileWith('5', null);
    const [a, b, ...rest] = judged(file);
    if (b === undefined) throw new Error('two findings are expected');
    expect([a?.figure?.value, rest]).toEqual([4.8, []]);
    expectNotMade(b, file, ['machines', 0, 'B', 'pumps', 0, 'gear']);
  });
});
