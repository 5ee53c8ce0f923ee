// Which heads a table of a rack may have is our choice; what a spreadsheet takes for a date or a number is its practice, cases made by hand.
import { describe, expect, test } from 'vitest';
import { readRackCsv } from '../../core/src/file/rackCsv.ts';
import { spreadsheetText } from '../../core/src/file/spreadsheet.ts';

describe('heads that mean the same', () => {
  test.each(['part number', 'part no', 'part', 'PART_NUMBER'])('%s', (head) => {
    const read = readRackCsv(`chain number,teeth,quantity,${head}\n40,17,1,P-1`);
    expect(read.ok && read.rows.map(({ part }) => part)).toEqual(['P-1']);
  });
  test.each([
    ['chain', 'quantity'],
    ['chain number', 'pieces'],
  ])('%s and %s', (size, pieces) => {
    const read = readRackCsv(`${size},teeth,${pieces}\n40,17,2`);
    expect(read.ok && read.rows.map((row) => [row.size, row.teeth, row.quantity])).toEqual([['40', 17, 2]]);
  });
  test.each(['bore mm', 'bore (mm)', 'bore [mm]', 'bore, mm', 'Bore_mm'])('%s carries the unit', (head) => {
    const read = readRackCsv(`chain number,teeth,quantity,"${head}"\n40,17,1,25`);
    expect(read.ok && read.rows.map(({ bore }) => bore)).toEqual([{ value: '25', unit: 'mm' }]);
  });
  test('a cell that holds nothing is named with its column', () => {
    const read = readRackCsv('chain number,teeth,quantity\n40,,');
    expect(read.ok ? [] : read.troubles.map(({ what }) => what)).toEqual(['teeth: nothing is given.', 'quantity: nothing is given.']);
  });
});

test.each(['1.25e10', '12e3', '1,5E-7', '2026/11/29', '29.11.2026', '1-2-3', '12:30', '12:30:15', '007', '1.'])(
  '%s would be read as something else and is kept text',
  (text) => expect(spreadsheetText(text)).toBe(`'${text}`),
);
test.each(['1.2.3.4', '1/2-3', 'e10', '12e', '12:', 'x12:30', '2026/11/29/1'])('%s would not', (text) =>
  expect(spreadsheetText(text)).toBe(text),
);
