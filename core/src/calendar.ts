/** How long a page may be said to hold, in days: our choice, ten years. */
export const MOST_DAYS = 3650;

/**
 * Whether a text is the date of a day that exists.
 *
 * @source ISO 8601, calendar dates; the Gregorian calendar
 * @example isDate('2026-02-29')  // false
 */
export function isDate(text: string): boolean {
  const [whole, ...parts] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text) ?? [];
  const [year = 0, month = 0, date = 0] = parts.map(Number);
  return whole !== undefined && month >= 1 && month <= 12 && date >= 1 && date <= daysIn(year, month);
}

function daysIn(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}
