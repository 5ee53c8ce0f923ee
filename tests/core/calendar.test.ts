import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isDate, MOST_DAYS } from '../../core/src/calendar.ts';
import { dateAfter, dayCount, dayText } from '../../core/src/days.ts';

// The other reckoning is that of ECMAScript: days of 86 400 000 ms since 1970-01-01, in the proleptic Gregorian calendar.
const DAY_ms = 86_400_000;
const written = (dayNumber: number) => new Date(dayNumber * DAY_ms).toISOString().slice(0, 10);
/** From 1600-01-01 to 2399-12-31, twice the 400 years after which the calendar repeats. */
const dayNumbers = fc.integer({ min: Date.UTC(1600, 0, 1) / DAY_ms, max: Date.UTC(2399, 11, 31) / DAY_ms });

describe('so many days later', () => {
  test.each([
    ['2026-11-24', 30, '2026-12-24'],
    ['2026-12-31', 1, '2027-01-01'],
    ['2028-02-28', 1, '2028-02-29'],
    ['2026-02-28', 1, '2026-03-01'],
    ['1900-02-28', 1, '1900-03-01'],
    ['2000-02-28', 2, '2000-03-01'],
    ['2026-11-24', 0, '2026-11-24'],
  ])('%s and %i days is %s [Gregorian calendar]', (date, dayCount, later) => {
    expect(dateAfter(date, dayCount)).toBe(later);
  });
  test('as ECMAScript counts days', () => {
    fc.assert(
      fc.property(dayNumbers, fc.integer({ min: 0, max: MOST_DAYS }), (day, dayCount) => {
        expect(dateAfter(written(day), dayCount)).toBe(written(day + dayCount));
      }),
    );
  });
  test('of what is no date it says so', () => {
    expect(() => dateAfter('24 Nov 2026', 1)).toThrow(RangeError);
  });
});

describe('dates', () => {
  test.each(['2026-02-29', '2100-02-29', '2026-13-01', '2026-00-10', '2026-04-31', '2026-4-3', '24 Nov 2026', ''])(
    '"%s" is none',
    (text) => {
      expect(isDate(text)).toBe(false);
    },
  );
  test('every day of ECMAScript is one', () => {
    fc.assert(fc.property(dayNumbers, (day) => isDate(written(day))));
  });
});

test('days are counted and written as the calendar of the language does [ECMAScript Date, proleptic Gregorian calendar]', () => {
  const days = fc.integer({ min: -719_000, max: 2_932_000 });
  fc.assert(
    fc.property(days, (count) => {
      const text = new Date(count * 86_400_000).toISOString().slice(0, 10);
      expect(dayText(count)).toBe(text);
      expect(dayCount(text)).toBe(count);
      expect(isDate(text)).toBe(true);
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
])('"%s" is no day', (text) => expect(isDate(text)).toBe(false));

test('a fraction of a day is rounded, and what lies beyond four digits of a year is not written', () => {
  expect(dayText(20_766.4)).toBe('2026-11-09');
  expect(dayText(4e6)).toBe('');
  expect(dayText(-1e6)).toBe('');
});
