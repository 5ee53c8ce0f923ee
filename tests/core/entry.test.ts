import { expect, test } from 'vitest';
import { readCount, readNumberEntry, readQuantityEntry, readRatioEntry, stepNumber } from '../../core/src/entry.ts';

const say = { decimal: '.', system: 'metric' } as const;

test('an empty box is not given, never a zero', () => {
  for (const empty of ['', ' ', '\u00A0']) {
    expect(readQuantityEntry('length', empty, 'mm', say)).toEqual({ ok: true, value: undefined });
    expect(readRatioEntry(empty)).toEqual({ ok: true, value: undefined });
    expect(readCount(empty, 5, 400)).toEqual({ ok: true, value: undefined });
    expect(readNumberEntry(empty, say)).toEqual({ ok: true, value: undefined });
  }
});

test('what is typed is kept as typed; a reading stands beside it where it could be read in two ways', () => {
  expect(readQuantityEntry('length', '12.70', 'mm', say)).toEqual({ ok: true, value: { value: '12.70', unit: 'mm' } });
  expect(readQuantityEntry('length', '10,5', 'mm', say)).toEqual({ ok: true, value: { value: '10,5', unit: 'mm' }, reading: '= 10.5 mm' });
  expect(readQuantityEntry('length', '1 1/2 in', 'mm', say)).toEqual({
    ok: true,
    value: { value: '1 1/2', unit: 'in' },
    reading: '= 1.5 in',
  });
  expect(readRatioEntry('38B:100A')).toEqual({ ok: true, value: '38B:100A', reading: 'A 100, B 38' });
  expect(readRatioEntry('2,5:1')).toMatchObject({ reading: 'A 2.5, B 1' });
});

test('an unreadable entry says what was typed', () => {
  for (const read of [
    readQuantityEntry('length', '12_5', 'mm', say),
    readRatioEntry('45'),
    readCount('4.5', 5, 400),
    readNumberEntry('x', say),
  ]) {
    expect(read.ok).toBe(false);
  }
  expect(readCount('401', 5, 400)).toEqual({ ok: false, expected: '"401" is not a whole number from 5 to 400.' });
});

test.each([
  ['3.14', -1, '2.14'],
  ['3.14', 1, '4.14'],
  ['3,10', 1, '4,10'],
  ['0.5', -1, null],
  ['12', 1, '13'],
  ['1 1/2', 1, null],
] as const)('an arrow key on %s by %i keeps the decimals as typed: %s', (text, by, stepped) => {
  expect(stepNumber(text, by)).toBe(stepped);
});
