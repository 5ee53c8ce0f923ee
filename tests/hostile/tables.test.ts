import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { driveKind } from '../../core/src/drives/index.ts';
import { csvLines, LARGEST_CSV_BYTES, readCsv, writeCsv } from '../../core/src/file/csv.ts';
import { readMaterials, writeMaterials } from '../../core/src/file/materialCsv/index.ts';
import { readRackCsv, writeRackCsv } from '../../core/src/file/rackCsv.ts';
import { spreadsheetText, textOfCell } from '../../core/src/file/spreadsheet.ts';
import { readRackLine } from '../../core/src/rackLine.ts';
import { demoText, opened, say } from '../file/shop.ts';

const wish = { say, limitsMean: '% of B per A', taken: [] } as const;
const piece = (part: string) => ({ id: 'piece-1', kind: 'chain', size: '08B', teeth: 20, quantity: 1, part });

describe('formulas in a table that a spreadsheet opens', () => {
  const START = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'];
  test('no text of a name begins a formula, whatever stands unseen in front of its sign [common practice, no source]', () => {
    const unseen = fc.constantFrom('', ' ', '\u00A0', '\u200B', '\u0000', '\uFEFF', '\u202E', '\u001B');
    fc.assert(
      fc.property(unseen, fc.constantFrom(...START), fc.string({ unit: 'binary' }), (before, sign, rest) => {
        const cell = spreadsheetText(`${before}${sign}${rest}`);
        const bare = cell.replace(/^[\s\p{C}]+/u, '');
        expect(/^[=+\-@＝＋－＠]/.test(bare) && !/^[+-]?\d[\d.,]*(?:e[+-]?\d+)?%?$|^-$/i.test(bare)).toBe(false);
      }),
      { numRuns: 1000 },
    );
  });
  test.each(['-0.02', '-5.00', '-1,234.56', '+1.5', '-', ' -5', '-1e-3', '-12%'])('%s is a number and stays one', (number) => {
    expect(spreadsheetText(number)).toBe(number);
  });
  test.each(['=1+1', '@SUM(A1)', '-2+3+A1', '-- comment', '\tx', ' =1+1', '\u0000=1+1', '\u200B@x', '+cmd', '-1-1'])(
    '%j is kept text',
    (text) => {
      expect(spreadsheetText(text)).toBe(`'${text}`);
      expect(textOfCell(`'${text}`)).toBe(text);
    },
  );
  test('any text goes out and comes back the same, through a cell and through a whole file', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.oneof(fc.string({ unit: 'binary' }), fc.constantFrom("'", "'=", '"', '""', ';', ',', '\r\n', "''x", '=1', '1/2', '0055')),
          { minLength: 2, maxLength: 4 },
        ),
        fc.constantFrom('.', ','),
        (cells, decimal) => {
          fc.pre(cells.every((cell) => !cell.includes('\uFFFD')) && cells.some((cell) => cell.trim() !== ''));
          for (const cell of cells) expect(textOfCell(spreadsheetText(cell))).toBe(cell);
          const [row] = readCsv(writeCsv([['head', ...cells.slice(1).map(() => 'more')], cells.map(spreadsheetText)], decimal)).rows.slice(
            1,
          );
          expect(row?.cells.map(textOfCell)).toEqual(cells);
        },
      ),
      { numRuns: 500 },
    );
  });
  test('a part number that is a formula comes back from a rack as it was typed', () => {
    for (const part of ['=HYPERLINK("x")', '+1-1', ' @x', '\u001B[31m', '\u202Eabc', "'quoted"]) {
      const text = writeRackCsv([piece(part)], '.');
      expect(readRackCsv(text)).toMatchObject({ ok: true, rows: [{ part }] });
    }
  });
});

describe('tables that no spreadsheet wrote', () => {
  const signs = fc.constantFrom(
    ',',
    ';',
    '\t',
    '"',
    '""',
    '\n',
    '\r\n',
    '\r',
    "'",
    '\0',
    '\uFEFF',
    '\u202E',
    '=',
    '08B',
    '20',
    '100:38.9',
    'weight',
    'name',
    'ratio',
    'teeth',
    'chain number',
    'quantity',
    '__proto__',
    'constructor',
    '±2 %',
    '1e308',
    ' ',
  );
  const text = fc
    .array(fc.oneof({ weight: 4, arbitrary: signs }, fc.string({ unit: 'binary', maxLength: 8 })), { maxLength: 60 })
    .map((parts) => parts.join(''));

  test('are read or refused line by line, and nothing of a list is lost', () => {
    fc.assert(
      fc.property(text, (table) => {
        const rack = readRackCsv(table);
        expect(rack.ok || rack.troubles.length > 0).toBe(true);
        const list = readMaterials(table, wish);
        for (const { line, what } of list.faults) {
          expect(line).toBeGreaterThan(0);
          expect(what.length).toBeLessThan(700);
        }
        // what could not be read stays in the box
        if (list.faults.length > 0) expect(list.left).not.toBe('');
      }),
      { numRuns: 1500 },
    );
  });
  test('a list with something struck out of it still gives its other rows', () => {
    const materials = opened(demoText()).materials;
    const { text: whole } = writeMaterials(materials, '.');
    fc.assert(
      fc.property(fc.nat(whole.length), fc.nat(12), fc.string({ unit: 'binary', maxLength: 5 }), (at, length, put) => {
        const list = readMaterials(whole.slice(0, at) + put + whole.slice(at + length), wish);
        expect(list.materials.length + list.faults.length).toBeGreaterThan(0);
      }),
      { numRuns: 300 },
    );
  });
  test.each(['__proto__', 'constructor', 'toString'])('a head called "%s" is a column not known here', (head) => {
    expect(readRackCsv(`chain number,teeth,quantity,${head}\n08B,20,1,x`)).toMatchObject({
      ok: true,
      ignored: [head],
      rows: [{ teeth: 20 }],
    });
    const list = readMaterials(`name,ratio,basis,${head}\nE12,100:38.9,weight,x`, wish);
    expect(list.materials[0]?.material).toMatchObject({ name: 'E12' });
    expect(list.notes).toContain(`Columns not read: ${head}.`);
  });
  test.each([
    ['quotation marks', '"'],
    ['quotation marks and commas', '",'],
    ['quoted cells with more behind them', '"a"x'],
    ['line ends', '\n'],
    ['commas', ','],
    ['rows', 'a,1:2,weight\n'],
    ['one letter', 'x'],
  ])('a megabyte of %s', (_, sign) => {
    const table = sign.repeat(Math.floor(LARGEST_CSV_BYTES / sign.length));
    const rack = readRackCsv(table);
    const list = readMaterials(table, wish);
    expect(rack.ok).toBe(false);
    for (const { what } of [...(rack.ok ? [] : rack.troubles), ...list.faults]) expect(what.length).toBeLessThan(700);
  });
  test('a cell of a megabyte is quoted by its beginning', () => {
    const long = 'x'.repeat(500_000);
    const rack = readRackCsv(`chain number,teeth,bore,quantity\n${long},20,${long},1`);
    expect(rack.ok || rack.troubles.map(({ what }) => what.length)).toEqual([expect.any(Number), expect.any(Number)]);
    for (const { what } of rack.ok ? [] : rack.troubles) expect(what.length).toBeLessThan(400);
    const list = readMaterials(
      `name,ratio,basis,limits,limits definition,density A,${long}\nE12,${long},${long},${long},${long},${long},1`,
      wish,
    );
    for (const { what } of list.faults) expect(what.length).toBeLessThan(700);
    for (const note of list.notes) expect(note.length).toBeLessThan(500);
  });
  test('cells with tabs, semicolons and line ends in them keep their columns', () => {
    const rows = [
      ['a\tb', 'c;d', 'e\r\nf', '"'],
      ['=', ' ', '\u2028', "'"],
    ];
    for (const delimiter of [',', ';', '\t'])
      expect(
        readCsv(csvLines([['h', 'h', 'h', 'h'], ...rows], delimiter))
          .rows.slice(1)
          .map(({ cells }) => cells),
      ).toEqual(rows);
  });
});

describe('a rack in one line', () => {
  test('wide ranges over and over add up to no more than a count can be', () => {
    expect(readRackLine(`40: ${'5-400,'.repeat(999)}`, driveKind('chain'))).toMatchObject({ ok: true });
    expect(readRackLine(`40: ${'5-400,'.repeat(1000)}`, driveKind('chain'))).toMatchObject({
      ok: false,
      expected: expect.stringContaining('add up to 1000'),
    });
  });
  test('two names of one chain add up under the first [ISO 606: 08A is 40]', () => {
    expect(readRackLine('40: 12; 08A: 12, 13', driveKind('chain'))).toEqual({
      ok: true,
      value: [
        { size: '40', teeth: 12, quantity: 2 },
        { size: '40', teeth: 13, quantity: 1 },
      ],
    });
  });
  test('whatever is typed is read or answered', () => {
    const signs = fc.constantFrom('40', ':', ';', ',', '-', 'x', '12', '400', '999999', ' ', '\n', '\u202E', '08A', 'to', '..');
    fc.assert(
      fc.property(
        fc.array(signs, { maxLength: 30 }).map((parts) => parts.join('')),
        (line) => {
          const read = readRackLine(line, driveKind('chain'));
          expect(read.ok ? '' : read.expected).not.toMatch(/[\p{Cc}\p{Bidi_Control}]|undefined|NaN/u);
        },
      ),
      { numRuns: 1000 },
    );
  });
});
