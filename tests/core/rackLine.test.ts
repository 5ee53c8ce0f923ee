import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chain } from '../../core/src/drives/chain.ts';
import type { PieceRow } from '../../core/src/file/rack.ts';
import { applyRackLine } from '../../core/src/rackChange.ts';
import { type RackCount, rackLineReading, readRackLine, writeRackLine } from '../../core/src/rackLine.ts';

const counts = (text: string): readonly RackCount[] => {
  const read = readRackLine(text, chain);
  if (!read.ok) throw new Error(read.expected);
  return read.value;
};
const asRows = (read: readonly RackCount[]): readonly PieceRow[] => applyRackLine([], read, chain, undefined).rows;
const mm = (value: string) => ({ value, unit: 'mm' });

describe('the rack in one line', () => {
  test('40: 12-25, 28, 30x2, 36 is 17 tooth counts, 18 sprockets [counted by hand: 14 + 1 + 1 + 1; 14 + 1 + 2 + 1]', () => {
    const read = counts('40: 12-25, 28, 30x2, 36');
    expect(rackLineReading(read, chain)).toBe('17 tooth counts, 18 sprockets');
    expect(read.map(({ teeth }) => teeth)).toEqual([12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 28, 30, 36]);
    expect(read.find(({ teeth }) => teeth === 30)).toEqual({ size: '40', teeth: 30, quantity: 2 });
    expect(writeRackLine(asRows(read), chain)).toBe('40: 12-25, 28, 30x2, 36');
  });

  test('readRackLine example: 12, 13 and 14 once, 30 twice', () => {
    expect(counts('40: 12-14, 30x2').map(({ teeth, quantity }) => [teeth, quantity])).toEqual([
      [12, 1],
      [13, 1],
      [14, 1],
      [30, 2],
    ]);
  });

  test('several sizes, loose writing, and counts that add up [our choice]', () => {
    expect(counts(' #40 : 17 - 19 x2 , 18 ; 08b:21×3,').map(({ size, teeth, quantity }) => `${size} ${teeth} ${quantity}`)).toEqual([
      '40 17 2',
      '40 18 3',
      '40 19 2',
      '08B 21 3',
    ]);
  });

  test('40 and 08A are one chain, so their counts add up [ISO 606 annex B, from memory]', () => {
    expect(counts('40: 17; 08A: 17')).toEqual([{ size: '40', teeth: 17, quantity: 2 }]);
    expect(counts('40: 17; 08B: 17')).toHaveLength(2);
  });

  test('blank is an empty list', () => {
    expect(counts('  ;')).toEqual([]);
  });

  test.each([
    ['12-25, 28', '"12-25, 28"'],
    ['99: 12', '"99"'],
    ['40: 12; 13', '"13"'],
    ['40: 12, 08B: 15', 'more than one colon'],
    ['40: 12,,13', 'two commas'],
    ['40: 30y2', '"30y2"'],
    ['40: 4', '5 to 400'],
    ['40: 401', '5 to 400'],
    ['40: 4-12', '5 to 400'],
    ['40: 390-401', '5 to 400'],
    ['40: 2x30', '5 to 400'],
    ['40: 25-12', '25 down to 12'],
    ['40: 30x0', '0 is not a count'],
    ['40: 30x1000', '1000 is not a count'],
    ['40: 30x999, 30', 'add up to 1000'],
    ['40: 5-400; 08B: 5-109', 'more than 500'],
  ])('%s is refused, naming %s, with an example', (text, named) => {
    const read = readRackLine(text, chain);
    expect(read.ok ? '' : read.expected).toContain(named);
    expect(read.ok ? '' : read.expected).toContain('40: 12-25, 28, 30x2, 36');
  });

  test('just inside every limit', () => {
    expect(counts('40: 5, 400, 30x999')).toHaveLength(3);
    expect(counts('40: 5-400; 08B: 5-108')).toHaveLength(500);
  });

  test('what is written reads back to the same counts [law]', () => {
    const line = fc.array(
      fc.record({
        size: fc.constantFrom('40', '08B', '50'),
        teeth: fc.integer({ min: 5, max: 60 }),
        quantity: fc.integer({ min: 1, max: 9 }),
      }),
      { maxLength: 40 },
    );
    const key = (read: readonly RackCount[]) => read.map(({ size, teeth, quantity }) => `${size} ${teeth} ${quantity}`).sort();
    fc.assert(
      fc.property(line, (entries) => {
        const read = counts(entries.map(({ size, teeth, quantity }) => `${size}: ${teeth}x${quantity}`).join('; '));
        expect(key(counts(writeRackLine(asRows(read), chain)))).toEqual(key(read));
      }),
    );
  });
});

describe('the rack after a line [our choice]', () => {
  const rack: readonly PieceRow[] = [
    { id: 'a', kind: 'chain', size: '40', teeth: 12, bore: mm('25'), quantity: 1, part: '0012', place: 'R1' },
    { id: 'b', kind: 'chain', size: '40', teeth: 15, bore: mm('25'), quantity: 2, part: '0015' },
    { id: 'c', kind: 'chain', size: '40', teeth: 15, bore: mm('20'), quantity: 1 },
    { id: 'd', kind: 'chain', size: '40', teeth: 20, quantity: 0, place: 'R9' },
    { id: 'e', kind: 'chain', size: '08B', teeth: 17, quantity: 1 },
  ];
  const changed = (text: string) => applyRackLine(rack, counts(text), chain, mm('25'));

  test('the line of the rack itself changes nothing', () => {
    const same = changed(writeRackLine(rack, chain));
    expect(same).toEqual({ rows: rack, added: 0, gone: [] });
  });

  test('rows that stay keep bore, part number and place; new ones take the bore; other sizes and empty places stay', () => {
    const change = changed('40: 12x3, 13, 15x3');
    expect(change.rows.map(({ id, teeth, quantity }) => [id, teeth, quantity])).toEqual([
      ['a', 12, 3],
      ['piece-1', 13, 1],
      ['b', 15, 2],
      ['c', 15, 1],
      ['d', 20, 0],
      ['e', 17, 1],
    ]);
    expect(change.rows[0]).toMatchObject({ bore: mm('25'), part: '0012', place: 'R1' });
    expect(change.rows[1]).toMatchObject({ size: '40', bore: mm('25') });
    expect(change.added).toBe(1);
  });

  test('a count is shared: the first row takes what is added and gives what is taken', () => {
    const of = (text: string) =>
      changed(text)
        .rows.filter(({ teeth }) => teeth === 15)
        .map(({ quantity }) => quantity);
    expect(of('40: 12, 15x5')).toEqual([4, 1]);
    expect(of('40: 12, 15x2')).toEqual([1, 1]);
    expect(of('40: 12, 15')).toEqual([0, 1]);
  });

  test('what the line no longer holds goes, and is named', () => {
    expect(changed('08A: 15x3').gone.map(({ id }) => id)).toEqual(['a']);
    expect(changed('08B: 17, 18').gone).toEqual([]);
  });
});
