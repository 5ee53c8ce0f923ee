import { describe, expect, test } from 'vitest';
import { csvLines, readCsv, writeCsv } from '../../core/src/file/csv.ts';
import { columnCalled } from '../../core/src/file/materialCsv/columns.ts';
import { readLimits } from '../../core/src/file/materialCsv/limitsCell.ts';

describe('tables', () => {
  test('writeCsv and readCsv examples', () => {
    expect(
      writeCsv(
        [
          ['name', 'ratio'],
          ['E12', '100:38.9'],
        ],
        '.',
      ),
    ).toBe('\uFEFFname,ratio\r\nE12,100:38.9\r\n');
    expect(readCsv('name;ratio\nE12;100:38,9').rows[1]).toEqual({ cells: ['E12', '100:38,9'], line: 2 });
  });
  test.each([
    ['E12;100:38,9;1,16;0,97;25,5;42,5', ';'],
    ['E12\t100:38,9; as printed', '\t'],
    ['"one; two",5:1', ','],
    ['\n;;\n"quoted ""\t"" name"\t5:1', '\t'],
    ['alone', ','],
  ])('%j is parted by %j, whatever stands in its cells', (text, delimiter) => {
    expect(readCsv(text).delimiter).toBe(delimiter);
  });
  test('quotation marks are doubled inside, and a cell may hold line ends, which are counted [RFC 4180, section 2, from memory]', () => {
    const rows = [
      ['a', 'say "no"', 'two\nlines'],
      ['b', '', 'c,d'],
    ];
    const text = csvLines(rows, ',');
    expect(text).toBe('a,"say ""no""","two\nlines"\r\nb,,"c,d"');
    expect(readCsv(text).rows).toEqual([
      { cells: rows[0], line: 1 },
      { cells: rows[1], line: 3 },
    ]);
  });
});

describe('examples of what a list is made of', () => {
  test('columnCalled', () => {
    expect(columnCalled('Density A (g/cm3 at 25 °C)', 4)).toEqual({
      name: 'density A',
      at: 4,
      unit: 'g/cm3',
      heldAt: '25 °C',
      definition: null,
    });
    expect(columnCalled('density A at °C', 1)).toMatchObject({ name: 'density A at', unit: '°C' });
    expect(columnCalled('density A lb/gal (US)', 1)?.unit).toBe('lb/gal (US)');
    for (const other of ['names', 'density A furlongs', 'colour', '']) expect(columnCalled(other, 0)).toBeNull();
  });
  test('readLimits', () => {
    expect(readLimits('±2 % of B per A', false)).toEqual({ ok: true, value: { low: '-2', high: '2', definition: '% of B per A' } });
    for (const none of ['', '±', '2', '+1 to', '+1/+2', '-1', 'about 2 %']) expect(readLimits(none, false).ok, none).toBe(false);
  });
});
