import { describe, expect, test } from 'vitest';
import { budget } from '../../../core/src/checks/budget.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { expectFinding, expectNotMade, inLine, judgeOption, only, pair, planOf, pumpRow, shopOf, stageRow } from '../planFixture.ts';

const percent = (value: string) => ({ value, unit: '%' });

/** 2 : 1 by volume from 10 and 5 cc on equal wheels: exact, so that only the tolerances move it. */
function fileWith(toleranceA: string | null, limit: string): ShopFile {
  const machine = inLine([stageRow(20, 20)]);
  return shopOf(
    {
      ...machine,
      A: { ...machine.A, pumps: [pumpRow('pump-a', '10', toleranceA === null ? {} : { tolerance: percent(toleranceA) })] },
      B: { ...machine.B, pumps: [pumpRow('pump-b', '5', { tolerance: percent('0.5') })] },
    },
    [],
    {
      limits: { definition: '% of B per A', low: `-${limit}`, high: limit },
      A: { expansion: { value: '0', unit: '1/K' }, runAt: { value: '25', unit: '°C' }, temperatureUncertainty: { value: '2', unit: 'K' } },
      B: { expansion: { value: '0', unit: '1/K' }, runAt: { value: '25', unit: '°C' }, temperatureUncertainty: { value: '2', unit: 'K' } },
    },
  );
}
const judged = (file: ShopFile) => judgeOption(budget, planOf(file), [pair(20, 20)]);

describe('worst case against the limits [arithmetic]', () => {
  test('just as far as the limit passes, a hair further warns, naming both and what to do', () => {
    expect(judged(fileWith('0.5', '1'))).toEqual([]);
    const file = fileWith('0.501', '1');
    const found = only(judged(file));
    expectFinding(found, file, {
      severity: 'warns',
      where: found.where,
      figure: { value: found.figure?.value ?? Number.NaN, unit: '%' },
      limit: { value: found.limit?.value ?? Number.NaN, unit: '%' },
      names: ['1.001', '1.000', 'measure its delivery'],
    });
    expect(Math.abs(found.figure?.value ?? 0)).toBeCloseTo(1.001, 6);
    expect(Math.abs(found.limit?.value ?? 0)).toBeCloseTo(1, 9);
  });

  test('a tolerance that is not given is named, and nothing is called safe', () => {
    const file = fileWith(null, '1');
    expectNotMade(only(judged(file)), file, ['machines', 0, 'A', 'pumps', 0, 'tolerance']);
  });
});
