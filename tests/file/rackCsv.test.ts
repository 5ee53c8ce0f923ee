import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PieceRow } from '../../core/src/file/rack.ts';
import { readRackCsv, writeRackCsv } from '../../core/src/file/rackCsv.ts';
import { spreadsheetText, textOfCell } from '../../core/src/file/spreadsheet.ts';

const row = (more: Partial<PieceRow>): PieceRow => ({ id: 'piece-1', kind: 'chain', size: '40', teeth: 17, quantity: 1, ...more });
const rowsOf = (text: string): readonly PieceRow[] => {
  const read = readRackCsv(text);
  if (!read.ok) throw new Error(read.troubles.map(({ line, what }) => `${line}: ${what}`).join(' '));
  return read.rows;
};
const troublesOf = (text: string): readonly string[] => {
  const read = readRackCsv(text);
  return read.ok ? [] : read.troubles.map(({ line, what }) => `${line}: ${what}`);
};
const HEAD = 'chain number,teeth,bore,keyway,quantity,part number,place';

describe('texts that a spreadsheet would change', () => {
  test.each(['-0.02', '-5.00', '-1,234.56', '+1.5', '-'])('%s is a number and stays [spreadsheet practice, hand-made case]', (text) => {
    expect(spreadsheetText(text)).toBe(text);
  });

  test.each(['=1+1', '@SUM(A1)', '-2+3+A1', '-- comment', '\tx', '＝1+1', '\r=1'])(
    '%j begins a formula and is kept text [OWASP, CSV injection, from memory]',
    (text) => {
      expect(spreadsheetText(text)).toBe(`'${text}`);
    },
  );

  test.each([
    ...['3/4', '0055', '0E36', '2:1', '12-25', '40-12-25', '1.5', 'MAR1', '1-Sep', '1234567890123456'],
    ...[
      '1e5',
      '1.e5',
      '1,25e5',
      '1.255E-12',
      '2.5e+3',
      '1.',
      '3,75',
      '10:30:00',
      '1/2/3',
      '2026-11-29',
      '29.11.2026',
      '12/25',
      '25/12',
      '12/2026',
    ],
    ...['sept 5', '5 March', '29-Nov-26'],
  ])('%s is read as a date, a time or another number and is kept text [spreadsheet practice, hand-made case]', (text) => {
    expect(spreadsheetText(text)).toBe(`'${text}`);
  });

  test.each([
    ...['20/45', '0815-25', 'R1-01', '40B17', '55', 'Marley 4x', ''],
    ...[
      '12-25-17 old',
      '1-2-3-4',
      '12345-1-1',
      '1-2/3',
      'x1e5',
      '1e5x',
      '1.2.e5',
      '123456789012345',
      '2:1 or so',
      '1:2:3:4',
      '13/45',
      'maybe',
      '12/25/',
    ],
  ])('%j is text or a whole number anyway and stays', (text) => {
    expect(spreadsheetText(text)).toBe(text);
  });

  test('every text comes back, apostrophes too [law]', () => {
    const odd = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom('0', '1', '/', '-', "'", '=', '+', 'e', ':', '.') }));
    fc.assert(
      fc.property(odd, (text) => {
        expect(textOfCell(spreadsheetText(text))).toBe(text);
      }),
    );
    expect(textOfCell("'as typed")).toBe("'as typed");
    expect(textOfCell("'0055")).toBe('0055');
  });
});

describe('the rack as a table', () => {
  test('writeRackCsv example: the head alone', () => {
    expect(writeRackCsv([], '.')).toBe(`\uFEFF${HEAD}\r\n`);
  });

  test('quotes stand only where they are needed, doubled inside [RFC 4180, from memory]', () => {
    const text = writeRackCsv([row({ bore: { value: '25,4', unit: 'mm' }, part: '-1,234.56', place: 'top "left"' })], '.');
    expect(text.split('\r\n')[1]).toBe('40,17,"25,4 mm",,1,"-1,234.56","top ""left"""');
  });

  test('semicolons where the comma is the decimal sign [spreadsheet practice]', () => {
    expect(writeRackCsv([row({ bore: { value: '25,4', unit: 'mm' } })], ',').split('\r\n')[1]).toBe('40;17;25,4 mm;;1;;');
  });

  test('leading zeros and 20/45 stay text there and back', () => {
    const rows = [row({ part: '0055', place: '20/45' }), row({ id: 'piece-2', size: '085', part: '3/4', place: '=A1' })];
    expect(rowsOf(writeRackCsv(rows, '.'))).toEqual(rows);
    expect(writeRackCsv(rows, '.')).toContain("40,17,,,1,'0055,20/45");
  });

  test('a rack comes back as it was written [law]', () => {
    const length = fc.record({ value: fc.constantFrom('25', '25,4', '1/2', '1 1/8', '0.5'), unit: fc.constantFrom('mm', 'in') });
    const text = fc.string({
      minLength: 1,
      maxLength: 20,
      unit: fc.constantFrom('a', '0', ',', ';', '"', '\n', '\t', '=', '-', "'", '/', ' ', 'ü'),
    });
    const piece = fc.record(
      {
        size: fc.constantFrom('40', '08B', '085'),
        teeth: fc.integer({ min: 5, max: 400 }),
        quantity: fc.integer({ min: 0, max: 10_000 }),
        bore: length,
        keyway: length,
        part: text,
        place: text,
      },
      { requiredKeys: ['size', 'teeth', 'quantity'] },
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 6 }), fc.constantFrom('.' as const, ',' as const), (pieces, decimal) => {
        const rows = pieces.map((one, index): PieceRow => ({ ...one, id: `piece-${index + 1}`, kind: 'chain' }));
        expect(rowsOf(writeRackCsv(rows, decimal))).toEqual(rows);
      }),
    );
  });
});

describe('tables of others', () => {
  test('readRackCsv example: few columns, any order, any delimiter', () => {
    for (const mark of [',', ';', '\t'])
      expect(rowsOf(`chain${mark}teeth${mark}quantity\n40${mark}12${mark}1`)).toEqual([row({ teeth: 12 })]);
    expect(rowsOf('Quantity;Place;Teeth;Chain\r\n2;R1;12;08b\r\n')).toEqual([row({ size: '08B', teeth: 12, quantity: 2, place: 'R1' })]);
  });

  test('a length takes its unit from its cell, else from the head; without one it is refused', () => {
    const bore = (head: string, cell: string) => rowsOf(`chain;teeth;quantity;${head}\n40;12;1;${cell}`)[0]?.bore;
    expect(bore('bore mm', '25,4')).toEqual({ value: '25,4', unit: 'mm' });
    expect(bore('Bore (in)', '1/2')).toEqual({ value: '1/2', unit: 'in' });
    expect(bore('bore_mm', '1 in')).toEqual({ value: '1', unit: 'in' });
    expect(bore('bore', '')).toBeUndefined();
    expect(troublesOf('chain;teeth;quantity;bore\n40;12;1;25')).toEqual([
      '2: bore: "25" has no unit: write 25 mm, or the unit in the head, as "bore mm".',
    ]);
  });

  test('every bad line is named with its number and reason, and nothing is taken', () => {
    const troubles = troublesOf('chain,teeth,bore,quantity\n40,12,,1\n99,12,,1\n\n40,4,0 mm,x\n40,,,');
    expect(troubles.map((text) => text.split(':', 1)[0])).toEqual(['3', '5', '5', '5', '6', '6']);
    expect(troubles[0]).toContain('"99"');
    expect(troubles[1]).toContain('from 5 to 400');
    expect(troubles[2]).toContain('bore');
    expect(troubles[3]).toContain('quantity');
  });

  test('line numbers count the line ends inside cells', () => {
    expect(troublesOf('chain,teeth,quantity,place\n40,12,1,"two\nlines"\n40,4,1,')[0]).toMatch(/^4: teeth/);
  });

  test.each([
    ['', 'The head lacks: chain number, teeth, quantity'],
    ['chain,teeth\n40,12', 'The head lacks: quantity'],
    ['chain,teeth,teeth,quantity\n40,12,12,1', 'twice'],
    ['chain,teeth,quantity\n40,"12,1', 'uot'],
    ['chain,teeth,quantity,place\n40,12,1,R\uFFFD', 'UTF-8'],
    [`chain,teeth,quantity\n${'40,12,1\n'.repeat(501)}`, 'more than 500'],
  ])('%j is refused', (text, named) => {
    expect(troublesOf(text).join(' ')).toContain(named);
  });

  test('500 rows are read, and unknown columns are named', () => {
    const read = readRackCsv(`chain,teeth,quantity,remark\n${'40,12,1,x\n'.repeat(500)}`);
    expect(read.ok ? [read.rows.length, read.ignored] : null).toEqual([500, ['remark']]);
  });
});
