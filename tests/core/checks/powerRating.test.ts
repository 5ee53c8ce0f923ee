import { describe, expect, test } from 'vitest';
import { powerRating } from '../../../core/src/checks/powerRating.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { expectNotMade, inLine, judgeOption, only, pair, planOf, pumpRow, rpm, shopOf, stageRow } from '../planFixture.ts';

const share = (value: string) => ({ value, unit: '' });

/** Pump B of 100 cc on 17 to 17 teeth of a chain at 1000 rpm; a pressure that makes so many watts. */
function fileWith(size: string, power_W: number, factor: string | null = '1'): ShopFile {
  const machine = inLine([stageRow(17, 17, { size })]);
  return shopOf({
    ...machine,
    motor: { speed: rpm('1000'), usable: { from: { value: '0', unit: '%' }, to: { value: '100', unit: '%' } } },
    ...(factor !== null && { serviceFactor: share(factor) }),
    B: {
      ...machine.B,
      pumps: [pumpRow('pump-b', '100')],
      // Power is pressure times flow: 100 cc a turn at 1000 rpm are 1/600 m3/s [definition].
      pressure: { value: (power_W * 600).toFixed(3), unit: 'Pa' },
      mechanicalEfficiency: share('1'),
    },
  });
}
const judged = (file: ShopFile) => judgeOption(powerRating, planOf(file), [pair(17, 17)]);

// 17 teeth of chain 40 at 1000 rpm: 5.48 hp [mechanical-engineering-design, text after eq. 17-33, from memory]; 1 hp is 745.69987 W.
const RATED_W = 0.004 * 17 ** 1.08 * 1000 ** 0.9 * 0.5 ** (3 - 0.07 * 0.5) * 745.6998715822702;

describe('power in a chain against its published rating', () => {
  test('the rating of the example is 5.48 hp', () => expect(RATED_W / 745.69987).toBeCloseTo(5.48, 2));

  test('just inside passes, just outside warns and says what to do', () => {
    expect(judged(fileWith('40', RATED_W - 0.1))).toEqual([]);
    const found = only(judged(fileWith('40', RATED_W + 0.1)));
    expect(found).toMatchObject({ severity: 'warns', where: ['machines', 0, 'stages', 0, 'size'] });
    expect(found.figure?.value).toBeCloseTo(RATED_W + 0.1, 2);
    expect(found.limit?.value).toBeCloseTo(RATED_W, 2);
    expect(found.what).toContain('Keep the dial lower');
  });

  test('the ISO name of the same chain has the same rating', () => {
    expect(judged(fileWith('08A', RATED_W - 0.1))).toEqual([]);
    expect(only(judged(fileWith('08A', RATED_W + 0.1))).severity).toBe('warns');
  });

  test('for the B series none is published: a note says that only the strength counts', () => {
    expect(only(judged(fileWith('08B', RATED_W)))).toMatchObject({ severity: 'notes', missing: false });
  });

  test('without a service factor it is not checked', () => {
    const file = fileWith('40', 100, null);
    expectNotMade(only(judged(file)), file, ['machines', 0, 'serviceFactor']);
  });
});
