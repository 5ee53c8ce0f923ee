import { describe, expect, test } from 'vitest';
import { readShopFile } from '../../core/src/file/read.ts';
import { measuredDeliveries } from '../../core/src/measuredDeliveries.ts';
import { searchSummary } from '../../core/src/searchSummary.ts';
import { demoWith } from '../file/shop.ts';

const percent = (value: string) => ({ value, unit: '%' });

/** Bench 1 of the invented example, its search and pump B changed. */
function machineWith(search: unknown, measuredDelivery?: unknown) {
  const changes = [
    [['machines', 0, 'search'], search] as const,
    ...(measuredDelivery === undefined ? [] : [[['machines', 0, 'B', 'pumps', 0, 'measuredDelivery'], measuredDelivery] as const]),
  ];
  const read = readShopFile(demoWith(...changes));
  const machine = read.ok ? read.value.machines[0] : undefined;
  if (machine === undefined) throw new Error(JSON.stringify(read));
  return machine;
}

describe('what a search uses, in one line [our choice of words]', () => {
  test.each([
    [{}, 'wheels from the rack; pumps as fitted'],
    [{ wheels: 'rack', teeth: { from: 12, to: 40 } }, 'wheels from the rack; pumps as fitted'],
    [{ wheels: 'rack and purchases' }, 'wheels from the rack, and some to buy, up to 1; pumps as fitted'],
    [
      { wheels: 'rack and purchases', purchases: 3, teeth: { from: 12, to: 40 } },
      'wheels from the rack, and some to buy, up to 3, 12 to 40 teeth; pumps as fitted',
    ],
    [{ wheels: 'any', anyPump: true, openShared: true }, 'wheels any in a range; pumps any the machine may carry; shared stages open'],
  ])('%o', (search, words) => {
    expect(searchSummary(machineWith(search))).toBe(words);
  });

  test('measured delivery is said only where there is one to count', () => {
    expect(searchSummary(machineWith({ asMeasured: true }))).not.toContain('measured');
    expect(searchSummary(machineWith({}, { value: percent('96') }))).not.toContain('measured');
    expect(searchSummary(machineWith({ asMeasured: true }, { value: percent('96') }))).toMatch(/; delivery as measured$/);
  });
});

describe('pumps that were measured', () => {
  test('none, one with its error, and by name where a side has several', () => {
    expect(measuredDeliveries(machineWith({}))).toBeNull();
    const one = machineWith({}, { value: percent('96'), uncertainty: percent('0.4') });
    expect(measuredDeliveries(one)).toBe('B 96 ± 0.4\u00A0%');
    const pump = { id: 'old', measuredDelivery: { value: { value: '0.9', unit: '' } } };
    const two = { ...one, B: { ...one.B, pumps: [...one.B.pumps, pump] } };
    expect(measuredDeliveries(two)).toBe('B PB6 96 ± 0.4\u00A0%, B old 90\u00A0%');
  });
});
