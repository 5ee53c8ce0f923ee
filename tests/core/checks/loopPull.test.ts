import { describe, expect, test } from 'vitest';
import { loopPull } from '../../../core/src/checks/loopPull.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { expectFinding, expectNotMade, inLine, judgeOption, only, pair, planOf, pumpRow, shopOf, stageRow } from '../planFixture.ts';

const share = (value: string) => ({ value, unit: '' });

/** Pump B of 100 cc behind chain 40 of so many pitches, at a pressure. */
function fileWith(pressure_bar: string, pitches: number, factor: string | null = '1'): ShopFile {
  const machine = inLine([stageRow(20, 20, { pitches, offsetLink: true })]);
  return shopOf({
    ...machine,
    ...(factor !== null && { serviceFactor: share(factor) }),
    B: {
      ...machine.B,
      pumps: [pumpRow('pump-b', '100')],
      pressure: { value: pressure_bar, unit: 'bar' },
      mechanicalEfficiency: share('1'),
    },
  });
}
const judged = (file: ShopFile) => judgeOption(loopPull, planOf(file), [pair(20, 20)]);
const SIZE = ['machines', 0, 'stages', 0, 'size'];

// Chain 40: 3125 lbf = 13900.7 N least tensile strength [asme-b29.1], a seventh of it 1985.8 N. The pull is 2 T / D with
// T = Δp · 100 cc / 2π and D = 12.7 mm / sin 9° = 81.184 mm [geometry]: 39.208 N for each bar.
const PULL_N_per_bar = (2 * 1e5 * 100e-6) / (2 * Math.PI) / (0.0127 / Math.sin(Math.PI / 20));
const ALLOWED_N = (3125 * 4.4482216152605) / 7;

describe('pull of a chain against a seventh of its strength (common practice, no source)', () => {
  test('just inside passes, just outside blocks', () => {
    const limit_bar = ALLOWED_N / PULL_N_per_bar;
    expect(judged(fileWith((limit_bar - 0.01).toFixed(3), 60))).toEqual([]);
    const over_bar = (limit_bar + 0.01).toFixed(3);
    const file = fileWith(over_bar, 60);
    expectFinding(only(judged(file)), file, {
      severity: 'blocks',
      where: SIZE,
      figure: { value: Number(over_bar) * PULL_N_per_bar, unit: 'N' },
      limit: { value: ALLOWED_N, unit: 'N' },
      places: 2,
      names: ['a seventh of the least tensile strength', 'Take a stronger chain'],
    });
  });

  test('with an offset link 0.65 of it is allowed [handbook practice: 65 to 80 %, the worst taken]', () => {
    const limit_bar = (0.65 * ALLOWED_N) / PULL_N_per_bar;
    expect(judged(fileWith((limit_bar - 0.01).toFixed(3), 61))).toEqual([]);
    expect(only(judged(fileWith((limit_bar + 0.01).toFixed(3), 61)))).toMatchObject({ severity: 'blocks' });
    expect(judged(fileWith((limit_bar + 0.01).toFixed(3), 60))).toEqual([]);
  });

  test('the service factor counts', () => {
    expect(judged(fileWith('40', 60, '1'))).toEqual([]);
    expect(only(judged(fileWith('40', 60, '1.5'))).severity).toBe('blocks');
  });

  test('without a service factor it is not checked', () => {
    const file = fileWith('40', 60, null);
    expectNotMade(only(judged(file)), file, ['machines', 0, 'serviceFactor']);
  });
});
