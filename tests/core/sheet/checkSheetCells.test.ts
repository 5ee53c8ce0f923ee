// What stands in the cells of a check record is as it was written down; net weights of gross and tare are subtraction.
import { describe, expect, test } from 'vitest';
import type { CatchRow, RatioCheckRow } from '../../../core/src/file/ratioCheckRow.ts';
import { checkCatches } from '../../../core/src/sheet/checkCatches.ts';
import { howText, provesText } from '../../../core/src/sheet/checkHow.ts';
import { recorded } from './demoRecord.ts';
import { bench, demoFile, metric } from './demoSheet.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const g = (value: string) => ({ value, unit: 'g' });
const cc = (value: string) => ({ value, unit: 'cc' });

function cells(catches: readonly [CatchRow, ...CatchRow[]]) {
  const { judged } = recorded({
    change: (_, row) => {
      row.catches = [...catches];
    },
  });
  const { heads, rows } = checkCatches(judged.row.catches, judged.evaluation, metric);
  return { heads, rows: rows.map((row) => row.map(plain)) };
}

describe('the table of catches', () => {
  test('a cell that nothing was written in has a dash; a net weight of gross and tare is worked out, in the unit of gross', () => {
    const { heads, rows } = cells([
      { A: { gross: g('256.9'), tare: g('12.3'), volume: cc('240') }, B: { net: g('101.9') } },
      { A: { net: g('244.1') }, B: { gross: { value: '0.1135', unit: 'kg' }, tare: g('11.9') } },
    ]);
    expect(heads).toEqual([
      ...['Catch', 'A gross', 'A tare', 'A net', 'A volume', 'B gross', 'B tare', 'B net'],
      ...['B per 100 A', 'B of all', 'Off-ratio', 'By the scale’s step alone'],
    ]);
    expect(rows.map((row) => row.slice(0, 8))).toEqual([
      ['1', '256.9 g', '12.3 g', '244.6 g', '240 cc', '–', '–', '101.9 g'],
      ['2', '–', '–', '244.1 g', '–', '0.1135 kg', '11.9 g', '0.1016 kg'],
    ]);
    // 101.9 on 244.6 and 101.6 on 244.1
    expect(rows.map((row) => row.slice(8, 11))).toEqual([
      ['41.66', '29.41 %', '0.46 % B-lean'],
      ['41.62', '29.39 %', '0.55 % B-lean'],
    ]);
  });

  test('a catch that is left out says why in place of its figures', () => {
    const kept = { A: { net: g('244.6') }, B: { net: g('101.9') } };
    const { rows } = cells([kept, { ...kept, leftOut: 'spilt' }, kept]);
    expect(rows[1]).toEqual(['2', '244.6 g', '101.9 g', 'left out: spilt']);
  });
});

describe('what was on the machine', () => {
  const row = demoFile().ratioChecks[0] ?? expect.unreachable();
  test('pumps by their names, also one that is not the first of its side', () => {
    const file = demoFile((all) => {
      bench(all, 'bench-1').B.pumps.unshift({ id: 'spare', name: 'Spare', displacement: { value: '9', unit: 'cc/rev' } });
    });
    expect(provesText(file, row)).toBe('Change sheet 0001: pump A PA12, pump B PB6; s1 21 to 30');
  });
  test('without a sheet; by id and number where the machine has other stages or is gone', () => {
    const { changeSheet: _, ...fitted } = row;
    expect(provesText(demoFile(), fitted)).toBe('What was fitted: pump A PA12, pump B PB6; s1 21 to 30');
    expect(provesText({ ...demoFile(), machines: [] }, row)).toBe('Change sheet 0001: pump A pa12, pump B pb6; stage 1 21 to 30');
    const two = { ...row, machine: 'bench-2' };
    expect(provesText(demoFile(), two)).toContain('; stage 1 21 to 30');
  });
  test('a text that is too long is cut', () => {
    const teeth = Array.from({ length: 40 }, () => ({ driver: 21, driven: 30 }));
    expect(provesText(demoFile(), { ...row, mounted: { ...row.mounted, teeth } })).toHaveLength(160);
  });
});

describe('how the catches were made', () => {
  const row = demoFile().ratioChecks[0] ?? expect.unreachable();
  const { run: _, ...uncounted } = row;
  const time = { value: '20', unit: 's' };
  const dial = { value: '80', unit: '%' };
  test.each<[RatioCheckRow, boolean, string]>([
    [row, true, 'both sides unmixed, 20 turns of the motor a catch; scale reads to 0.1 g, gross and tare'],
    [
      { ...row, scale: { ...row.scale, tared: true } },
      true,
      'both sides unmixed, 20 turns of the motor a catch; scale reads to 0.1 g, tared',
    ],
    [{ ...row, run: { time, dial } }, false, 'both sides unmixed, 20 s a catch at dial 80 %; measured by volume'],
    [{ ...row, run: { time } }, false, 'both sides unmixed, neither turns nor seconds noted; measured by volume'],
    [{ ...row, run: { dial } }, false, 'both sides unmixed, neither turns nor seconds noted; measured by volume'],
    [uncounted, false, 'both sides unmixed, neither turns nor seconds noted; measured by volume'],
  ])('%#', (one, weighed, words) => expect(plain(howText(one, weighed))).toBe(words));
});
