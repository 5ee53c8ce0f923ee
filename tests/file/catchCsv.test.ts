import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CatchCsv, readCatchCsv, writeCatchCsv } from '../../core/src/file/catchCsv.ts';
import type { CatchRow } from '../../core/src/file/ratioCheckRow.ts';
import { readNumber } from '../../core/src/reading.ts';

const catchesOf = (text: string): readonly CatchRow[] => {
  const read = readCatchCsv(text);
  if (!read.ok) throw new Error(said(read).join(' '));
  return read.catches;
};
const said = (read: CatchCsv): readonly string[] =>
  read.ok ? [] : read.faults.map(({ line, column, what }) => `${line} ${column ?? '-'}: ${what}`);
const faultsOf = (text: string) => said(readCatchCsv(text));
const g = (value: string) => ({ value, unit: 'g' });

describe('catches from a table', () => {
  test.each([
    ['comma', 'A net g,B net g\n244.6,101.9\n244.1,101.6'],
    ['semicolon and decimal comma, with the mark of UTF-8', '\uFEFFA net g;B net g\r\n244.6;101.9\r\n244.1;101.6\r\n'],
    ['tab', 'A net (g)\tB net (g)\n244.6\t101.9\n244.1\t101.6'],
    ['unit in the cell, and in quotation marks', '"a NET","b net"\n"244.6 g","101.9 g"\n\n244.1 g,101.6 g\n'],
  ])('%s', (_, text) => {
    expect(catchesOf(text)).toEqual([
      { A: { net: g('244.6') }, B: { net: g('101.9') } },
      { A: { net: g('244.1') }, B: { net: g('101.6') } },
    ]);
  });

  test('a decimal comma stays as it was written', () => {
    expect(catchesOf('A net g;B net g\n244,6;101,9')[0]?.A.net).toEqual(g('244,6'));
  });

  test('gross, tare, net and volume of each side in any order, and why one is left out', () => {
    const text = 'catch;B volume mL;A gross g;A tare g;B net oz;left out;colour\n1;83.8;256.9;12.3;3.59;;blue\n2;;;;;the cup tipped over;';
    const read = readCatchCsv(text);
    expect(read.ok && read.ignored).toEqual(['colour']);
    expect(read.ok && read.catches).toEqual([
      {
        A: { gross: g('256.9'), tare: g('12.3') },
        B: { net: { value: '3.59', unit: 'oz' }, volume: { value: '83.8', unit: 'mL' } },
      },
      { A: {}, B: {}, leftOut: 'the cup tipped over' },
    ]);
  });

  test('rows that hold only their number are no catches', () => {
    expect(catchesOf('catch,A net g,B net g\n1,244.6,101.9\n2,,\n3,,\n')).toHaveLength(1);
  });

  test('every fault with its line and its column, nothing read', () => {
    expect(faultsOf('A net g,B net,left out\n244.6,101.9,\nmany,99 g,\n-1,99 kg,\n1e9,1 mm,,too far')).toEqual([
      '2 B net: "101.9" has no unit: write 101.9 g, or the unit in the head, as "B net g".',
      expect.stringMatching(/^3 A net: "many" is not a number/),
      expect.stringMatching(/^4 A net: -1 g is out of range: it must be at least 0 g\.$/),
      '5 -: "too far" stands beyond the 3 columns of the head.',
      expect.stringMatching(/^5 B net: "1 mm" is not a number with a unit known here/),
      expect.stringMatching(/^5 A net: 1e9 g is out of range: it must be at most 10000 kg\.$/),
    ]);
  });

  test('a head that lacks a side, names a column twice or an unknown unit; no head; no catch; too many', () => {
    expect(faultsOf('A net g,A tare g\n1,2')[0]).toMatch(/^1 -: The head has no amount of B\./);
    expect(faultsOf('A net g,a net,B net g\n1,2,3')).toEqual(['1 -: The column "A net" stands there twice.']);
    expect(faultsOf('A net stone,B net g\n1,2')).toEqual(['1 -: "A net stone": "stone" is no unit known here.']);
    expect(faultsOf('244.6,101.9')[0]).toMatch(/^1 -: The head has no amount of A and none of B\./);
    expect(faultsOf('')[0]).toMatch(/^1 -: The head has no amount/);
    expect(faultsOf('A net g,B net g\n')).toEqual(['1 -: There is no catch under the head.']);
    expect(faultsOf(`A net g,B net g\n${'1,2\n'.repeat(51)}`)).toEqual(['52 -: There are 51 catches; a ratio check has at most 50.']);
  });

  test('a head without a side lists every column that there is', () => {
    expect(faultsOf('A net g\n1')).toEqual([
      '1 -: The head has no amount of B. The columns are: A gross, A tare, A net, A volume, B gross, B tare, B net, B volume, left out; with the unit, as "A net g".',
    ]);
    // a tare alone is no amount
    expect(faultsOf('A net g,B tare g\n1,2')[0]).toMatch(/^1 -: The head has no amount of B\./);
  });

  test('what is no table at all says where', () => {
    expect(faultsOf('A net g,B net g\n"1,2\n')[0]).toMatch(/^2 -: Quoted field unterminated/);
    expect(faultsOf('A net g\uFFFD,B net g')[0]).toMatch(/UTF-8/);
  });
});

describe('catches as a table', () => {
  test('writeCatchCsv example; the decimal sign is the shop’s', () => {
    const one = [{ A: { net: g('244.6') }, B: { net: g('101,9') } }];
    expect(writeCatchCsv(one, '.')).toBe('\uFEFFcatch,A net g,B net g\r\n1,244.6,101.9\r\n');
    expect(writeCatchCsv(one, ',')).toBe('\uFEFFcatch;A net g;B net g\r\n1;244,6;101,9\r\n');
  });

  test('only a plain decimal is a number to a spreadsheet; a fraction, a power or another unit is kept as text', () => {
    const cells = (A: { readonly value: string; readonly unit: string }) =>
      writeCatchCsv(
        [
          { A: { net: A }, B: { net: g('1') } },
          { A: { net: g('1') }, B: { net: g('1') } },
        ],
        ',',
      ).split('\r\n')[1];
    expect([cells(g('244.6')), cells(g('3/4')), cells(g('1 1/2')), cells(g('7e-1'))]).toEqual([
      '1;244,6;1',
      "1;'3/4;1",
      '1;1 1/2;1',
      "1;'7e-1;1",
    ]);
  });

  test('a formula in a reason stays text [OWASP, CSV injection, from memory]', () => {
    expect(writeCatchCsv([{ A: {}, B: {}, leftOut: '=HYPERLINK("x")' }], '.')).toBe('\uFEFFcatch,left out\r\n1,"\'=HYPERLINK(""x"")"\r\n');
  });

  test('what is written is read back to the same amounts [law]', () => {
    const number = fc.oneof(
      fc.nat({ max: 9999 }).map(String),
      fc.double({ min: 0.001, max: 9999, noNaN: true }).map((value) => value.toFixed(3)),
      fc.constantFrom('1 1/2', '3/4', '12,5', '7e-1', '0.0(3)'),
    );
    const mass = fc.record({ value: number, unit: fc.constantFrom('g', 'kg', 'oz') });
    const side = fc.record({ gross: mass, tare: mass, net: mass }, { requiredKeys: ['net'] });
    const reason = fc.string({ minLength: 1, maxLength: 200 }).filter((text) => text.trim() === text && !/[\r\n\t\uFFFD]/.test(text));
    const row = fc.record({ A: side, B: side, leftOut: reason }, { requiredKeys: ['A', 'B'] });
    const exact = (rows: readonly CatchRow[]) =>
      rows.map(({ A, B, leftOut }) => ({
        leftOut,
        amounts: [A.gross, A.tare, A.net, B.gross, B.tare, B.net].map((typed) => {
          const read = typed && readNumber(typed.value);
          return read?.ok ? `${read.value.toFraction()} ${typed?.unit}` : null;
        }),
      }));
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 5 }), fc.constantFrom('.', ',') as fc.Arbitrary<'.' | ','>, (rows, decimal) => {
        expect(exact(catchesOf(writeCatchCsv(rows, decimal)))).toEqual(exact(rows));
      }),
    );
  });
});
