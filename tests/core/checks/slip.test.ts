import { describe, expect, test } from 'vitest';
import { slip } from '../../../core/src/checks/slip.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import {
  expectFinding,
  expectNotMade,
  inLine,
  judgeOption,
  mm,
  only,
  pair,
  planOf,
  pumpRow,
  rpm,
  shopOf,
  stageRow,
} from '../planFixture.ts';

const B = ['machines', 0, 'B'];
const GAP = { teeth: 12, gapWidth: mm('20'), gapLength: mm('3') };

// A has a measured delivery and needs no estimate; B moves 150 cc/min at the least, 10 cc a turn, 200 mPa s, 10 bar.
function fileWith(pump: Partial<MachineRow['B']['pumps'][number]>, pressure = true, viscosity = true): ShopFile {
  const machine = inLine([stageRow(20, 20)]);
  const measured = pumpRow('pump-a', '10', { measuredDelivery: { value: { value: '98', unit: '%' } } });
  return shopOf(
    {
      ...machine,
      motor: { speed: rpm('60'), usable: { from: { value: '25', unit: '%' }, to: { value: '100', unit: '%' } } },
      A: { ...machine.A, pumps: [measured] },
      B: { ...machine.B, pumps: [pumpRow('pump-b', '10', pump)], ...(pressure && { pressure: { value: '10', unit: 'bar' } }) },
    },
    [],
    { B: viscosity ? { viscosity: { value: '200', unit: 'mPa s' } } : {} },
  );
}
const judged = (file: ShopFile) => judgeOption(slip, planOf(file), [pair(20, 20)]);

test('1/6 cc/min of 150 at 10 µm: a band of 0.014 to 0.89 % [laminar flow through a flat gap, recomputed]', () => {
  const file = fileWith({ gear: GAP });
  expectFinding(only(judged(file)), file, {
    severity: 'notes',
    where: [...B, 'pumps', 0],
    figure: { value: 100 * (8 / 900), unit: '%' },
    limit: null,
    names: ['Pump B may lose 0.01 % to 0.89 %', 'ratio check'],
  });
});

describe('what is not given', () => {
  test.each([
    ['the gear', fileWith({}), [...B, 'pumps', 0, 'gear']],
    ['the length of the gap', fileWith({ gear: { teeth: 12, gapWidth: mm('20') } }), [...B, 'pumps', 0, 'gear', 'gapLength']],
    ['the pressure', fileWith({ gear: GAP }, false), [...B, 'pressure']],
    ['the viscosity', fileWith({ gear: GAP }, true, false), ['materials', 0, 'B', 'viscosity']],
  ])('%s: one note, there', (_what, file, where) => {
    expectNotMade(only(judged(file)), file, where);
  });
  test('several are named together', () => {
    expect(only(judged(fileWith({ gear: GAP }, false, false))).what).toContain('the pressure, the viscosity of B');
  });
});

test('a measured delivery replaces the estimate: nothing is said', () => {
  expect(judged(fileWith({ gear: GAP, measuredDelivery: { value: { value: '97', unit: '%' } } }))).toEqual([]);
});
