// What a quote page has room for is our choice.
import { describe, expect, test } from 'vitest';
import type { QuoteRecord } from '../../../core/src/file/quoteRecord.ts';
import { materialReach } from '../../../core/src/materialReach.ts';
import { keptWindowText } from '../../../core/src/quote/kept.ts';
import { materialTable } from '../../../core/src/quote/materialTable.ts';
import { demoPlan, metric } from '../sheet/demoSheet.ts';

describe('materials on the page', () => {
  const row = materialReach(demoPlan({ selection: { machine: 'bench-1', material: 'e12' } }), null, metric);
  const tableOf = (count: number) => materialTable(Array.from({ length: count }, () => row));
  test('twelve stand there and nothing is left out; of more the rest is counted', () => {
    expect([1, 12, 13, 14].map((count) => [tableOf(count).rows.length, tableOf(count).rest])).toEqual([
      [1, ''],
      [12, ''],
      [12, 'and 1 more material of the shop file'],
      [12, 'and 2 more materials of the shop file'],
    ]);
  });
  test('where nothing can be built a dash stands for every figure of it', () => {
    expect(tableOf(1).rows[0]?.slice(3)).toEqual(['–', 'nothing can be built', '–', '–', '–']);
  });
});

test('the window of a kept page in words', () => {
  const kept = (low: string, high: string, value: string, unit: string) =>
    keptWindowText({ window: { low, high }, tolerance: { value, unit } } as QuoteRecord, metric).replaceAll('\u00a0', ' ');
  expect(kept('1', '5', '2', '%')).toBe('1 to 5 : 1, ± 2 %');
  expect(kept('0.5', '9/2', '0.015', '')).toMatch(/^0\.5 to 4\.5 : 1, ± 1\.50? %$/);
});
