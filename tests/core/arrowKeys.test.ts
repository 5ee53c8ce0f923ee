// What an arrow key does to a number is our choice; the sums are plain.
import { describe, expect, test } from 'vitest';
import { readCount, stepNumber } from '../../core/src/entry.ts';

describe('an arrow key on a number', () => {
  test.each([
    ['9', 1, '10'],
    ['10', -1, '9'],
    ['1', -1, '0'],
    ['0', -1, null],
    ['0.99', -1, null],
    ['1.00', -1, '0.00'],
    ['99.5', 1, '100.5'],
    ['12,25', -1, '11,25'],
    ['3.10', 1, '4.10'],
    ['0.005', 1, '1.005'],
    [' 12 ', 1, '13'],
    ['123', 1, '124'],
  ] as const)('%s by %i: %s', (text, by, stepped) => expect(stepNumber(text, by)).toBe(stepped));

  test.each(['', 'x', 'x3', '3x', '3.', '.5', '-3', '1.2.3', '1 2', '3.x', '3;5', '1/2'])('%s is no plain decimal', (text) => {
    expect(stepNumber(text, 1)).toBeNull();
  });
});

test('a whole number between two limits: both belong to it, and nothing else does', () => {
  expect(['5', '400', ' 17 '].map((text) => readCount(text, 5, 400))).toEqual([5, 400, 17].map((value) => ({ ok: true, value })));
  for (const text of ['4', '401', '17x', 'x17', '1 7', '17.0', '+17', '0x11', '1e2'])
    expect(readCount(text, 5, 400), text).toEqual({ ok: false, expected: `"${text}" is not a whole number from 5 to 400.` });
  expect(readCount('1000000', 5, 10_000_000).ok).toBe(false);
  expect(readCount('999999', 5, 10_000_000)).toEqual({ ok: true, value: 999_999 });
});
