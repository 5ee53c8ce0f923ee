// What a range may be is our choice; which end is larger follows from the units (25.4 mm to the inch, by definition).
import { describe, expect, test } from 'vitest';
import { type RangeEntry, readCountRange, readOpenRangeEntry, readWindowEntry } from '../../core/src/range.ts';

const say = { decimal: '.', system: 'metric' } as const;
const box: RangeEntry = { dimension: 'length', unit: 'mm', example: '250 to 263' };

describe('the ends of a range, in every box that takes one', () => {
  test.each(['250 to 250', '1 in to 25.4 mm', '25.4 mm to 1 in', '1/2 in to 12.7 mm', '249.99 to 250'])('%s is in order', (text) => {
    expect(readWindowEntry(box, text, say).ok).toBe(true);
    expect(readOpenRangeEntry(box, text, say).ok).toBe(true);
  });

  test.each([
    ['250.01 to 250', '250.01 to 250: the first must not be larger than the second.'],
    ['1 in to 25.39 mm', '1 in to 25.39 mm: the first must not be larger than the second.'],
    ['25.41 mm to 1 in', '25.41 mm to 1 in: the first must not be larger than the second.'],
  ])('%s is not', (text, expected) => {
    expect(readWindowEntry(box, text, say)).toEqual({ ok: false, expected });
    expect(readOpenRangeEntry(box, text, say)).toEqual({ ok: false, expected });
  });

  test('teeth: equal ends are a range, and both limits belong to it', () => {
    expect(readCountRange('13 to 13', 5, 400)).toEqual({ ok: true, value: { from: 13, to: 13 } });
    expect(readCountRange('5 to 400', 5, 400)).toEqual({ ok: true, value: { from: 5, to: 400 } });
    expect(readCountRange('14 to 13', 5, 400)).toEqual({
      ok: false,
      expected: '"14 to 13": the first must not be larger than the second.',
    });
    expect(readCountRange('4 to 13', 5, 400)).toEqual({ ok: false, expected: '"4" is not a whole number from 5 to 400.' });
    expect(readCountRange('13 to 401', 5, 400)).toEqual({ ok: false, expected: '"401" is not a whole number from 5 to 400.' });
  });

  test('what was expected, with the example of the box', () => {
    const open = '"10" is not a range. Expected two figures, as 10 to 100, or 10 to, with the end open.';
    expect(readOpenRangeEntry({ ...box, example: '10 to 100' }, '10', say)).toEqual({ ok: false, expected: open });
    const whole = '"1-2-3" is not a range. Expected two figures, as 250 to 263, or 250 where it is one figure.';
    expect(readWindowEntry(box, ' 1-2-3 ', say)).toEqual({ ok: false, expected: whole });
    const teeth = '"13" is not a range. Expected two figures, as 13 to 40, or 13 to, with the end open.';
    expect(readCountRange('13', 5, 400)).toEqual({ ok: false, expected: teeth });
  });

  test('each way to write between two figures', () => {
    for (const between of ['-', '–', '—', '−', ' to ', ' TO ', '..', '...', '…', '  -  '])
      expect(readWindowEntry(box, `250${between}263`, say), between).toEqual({
        ok: true,
        value: { from: { value: '250', unit: 'mm' }, to: { value: '263', unit: 'mm' } },
      });
    for (const text of ['250t263', '250o263', '250.263.']) expect(readWindowEntry(box, text, say).ok, text).toBe(false);
  });

  test('what is read back, where a figure can be read in two ways', () => {
    const reading = (text: string) => {
      const read = readWindowEntry(box, text, say);
      return read.ok ? read.reading : read.expected;
    };
    expect(reading('250-263,5')).toBe('= 250 to 263.5 mm');
    expect(reading('250,5-263,5')).toBe('= 250.5 mm to 263.5 mm');
    expect(reading('250,5')).toBe('= 250.5 mm');
    const open = (text: string) => readOpenRangeEntry(box, text, say);
    expect(open('250,5 to')).toMatchObject({ reading: '= 250.5 mm to' });
    expect(open('to 250,5')).toMatchObject({ reading: '= to 250.5 mm' });
  });
});
