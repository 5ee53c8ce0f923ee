import { describe, expect, test } from 'vitest';
import { lubrication } from '../../../core/src/checks/lubrication.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { inLine, judgeOption, only, pair, planOf, rpm, shopOf, stageRow } from '../planFixture.ts';

const fileAt = (speed_rpm: string, size = '40'): ShopFile =>
  shopOf({ ...inLine([stageRow(19, 19, { size })]), motor: { speed: rpm(speed_rpm) } });
const judged = (file: ShopFile) => judgeOption(lubrication, planOf(file), [pair(19, 19)]);

describe('chain speed against what oiling by hand will do for [asme-b29.1, supplementary information, from memory]', () => {
  test('half-inch chain, 19 teeth: 378.9 rpm are 300 ft/min, 450 rpm are 356.25 ft/min and too fast for oiling by hand [arithmetic]', () => {
    expect(judged(fileAt('378.9'))).toEqual([]);
    expect(only(judged(fileAt('379'))).severity).toBe('warns');
    const found = only(judged(fileAt('450')));
    expect(found).toMatchObject({ severity: 'warns', where: ['machines', 0, 'stages', 0, 'size'] });
    expect(found.figure).toEqual({ value: expect.closeTo(1.80975, 5), unit: 'm/s' });
    expect(found.limit).toEqual({ value: expect.closeTo(1.524, 5), unit: 'm/s' });
    expect(found.what).toContain('or keep the dial lower');
  });

  test('the B series goes by the A series of the same pitch (our choice), and the sentence says so', () => {
    expect(judged(fileAt('378.9', '08B'))).toEqual([]);
    expect(only(judged(fileAt('379', '08B'))).what).toContain('of the same pitch');
  });

  test('an oil bath has its limit too: 2300 or less passes to a stream', () => {
    expect(only(judged(fileAt('2800'))).what).not.toBe(only(judged(fileAt('450'))).what);
  });

  test('05B has no A series chain of its pitch: a note says that its limit is not known here', () => {
    expect(only(judged(fileAt('60', '05B')))).toMatchObject({ severity: 'notes', figure: null });
  });
});
