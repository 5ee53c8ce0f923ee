import * as v from 'valibot';

/** A day as ISO 8601 writes it, one that there is. */
export const day = v.pipe(
  v.string('a day in quotation marks is expected, as "2026-11-09"'),
  v.check(isDay, ({ input }) => `"${input}" is no day: year, month and day are expected, as "2026-11-09"`),
);

/**
 * Whether a text is a day of the calendar, as `2026-11-09`.
 *
 * @source ISO 8601; the Gregorian calendar, carried on to all years
 * @example isDay('2026-02-30')  // false
 */
export function isDay(text: string): boolean {
  const [whole, ...parts] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text) ?? [];
  const [year = 0, month = 0, date = 0] = parts.map(Number);
  return whole !== undefined && month >= 1 && month <= 12 && date >= 1 && date <= daysIn(year, month);
}

function daysIn(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}
