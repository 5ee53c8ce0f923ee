import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayCount, dayText } from '../../core/src/file/day.ts';
import { isDay } from '../../core/src/file/isDay.ts';

test('days are counted and written as the calendar of the language does [ECMAScript Date, proleptic Gregorian calendar]', () => {
  const days = fc.integer({ min: -719_000, max: 2_932_000 });
  fc.assert(
    fc.property(days, (count) => {
      const text = new Date(count * 86_400_000).toISOString().slice(0, 10);
      expect(dayText(count)).toBe(text);
      expect(dayCount(text)).toBe(count);
      expect(isDay(text)).toBe(true);
    }),
    { numRuns: 2000 },
  );
});

test.each([
  '2026-02-30',
  '2025-02-29',
  '1900-02-29',
  '2026-13-01',
  '2026-00-10',
  '2026-11-00',
  '9. 11. 2026',
  '2026-1-1',
  '',
  '2026-11-09 ',
])('"%s" is no day', (text) => expect(isDay(text)).toBe(false));

test('a fraction of a day is rounded, and what lies beyond four digits of a year is not written', () => {
  expect(dayText(20_766.4)).toBe('2026-11-09');
  expect(dayText(4e6)).toBe('');
  expect(dayText(-1e6)).toBe('');
});
