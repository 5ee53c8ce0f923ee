/** How long a page may be said to hold, in days: our choice, ten years. */
export const MOST_DAYS = 3650;

interface Day {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

const LENGTHS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
const lengthOf = (year: number, month: number): number => (month === 2 && isLeap(year) ? 29 : (LENGTHS[month - 1] ?? 0));

/** A date as it is written here, of a day that exists. */
function dayOf(date: string): Day | null {
  const [, year, month, day] = (/^(\d{4})-(\d{2})-(\d{2})$/.exec(date) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined) return null;
  return day >= 1 && day <= lengthOf(year, month) ? { year, month, day } : null;
}

/**
 * Whether a text is the date of a day that exists.
 *
 * @source ISO 8601, calendar dates; the Gregorian calendar
 * @example isDate('2026-02-29')  // false
 */
export const isDate = (text: string): boolean => dayOf(text) !== null;

/**
 * The date so many days later.
 *
 * @param date      as `2026-11-24`
 * @param dayCount  whole number, 0 to MOST_DAYS
 * @throws RangeError  on a text that is no date
 * @source ISO 8601, calendar dates; the Gregorian calendar
 * @example dateAfter('2026-11-24', 30)  // '2026-12-24'
 */
export function dateAfter(date: string, dayCount: number): string {
  const start = dayOf(date);
  if (start === null) throw new RangeError(`dateAfter: "${date}" is no date`);
  let { year, month } = start;
  let day = start.day + dayCount;
  while (day > lengthOf(year, month)) {
    day -= lengthOf(year, month);
    [year, month] = month === 12 ? [year + 1, 1] : [year, month + 1];
  }
  return [String(year).padStart(4, '0'), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-');
}
