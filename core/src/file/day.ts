import * as v from 'valibot';

/** A day as ISO 8601 writes it, one that there is. */
export const day = v.pipe(
  v.string('a day in quotation marks is expected, as "2026-11-09"'),
  v.check(
    (text) => isDay(text),
    ({ input }) => `"${input}" is no day: year, month and day are expected, as "2026-11-09"`,
  ),
);

/**
 * Whether a text is a day of the calendar, as `2026-11-09`.
 *
 * @source ISO 8601
 * @example isDay('2026-02-30')  // false
 */
export const isDay = (text: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(text) && dayText(dayNumber(text)) === text;

const DAY_ms = 86_400_000;

/** Days since the first of January 1970; NaN where it is no day at all. */
export const dayNumber = (text: string): number => Date.parse(`${text}T00:00:00Z`) / DAY_ms;

/** The way back, rounded to a whole day; an empty text beyond the years 0 to 9999. */
export function dayText(number: number): string {
  const time = Math.round(number) * DAY_ms;
  // Date counts no further
  if (!(Math.abs(time) <= 8.64e15)) return '';
  const text = new Date(time).toISOString();
  return /^\d{4}-/.test(text) ? text.slice(0, 10) : '';
}
