import { isDate } from './calendar.ts';

// Years are counted from March, so that the leap day is their last, in eras of 400 years, which all have as many days.
const ERA_years = 400;
const ERA_days = 146_097;
/** From the first of March of year 0 to the first of January 1970. */
const BEFORE_1970_days = 719_468;

/**
 * Days since the first of January 1970.
 *
 * @param text  a day, as `2026-11-09`; a month or a day beyond the calendar is counted on
 * @source arithmetic on the Gregorian calendar
 * @example dayCount('2026-11-09')  // 20766
 */
export function dayCount(text: string): number {
  const [year = 0, month = 1, date = 1] = text.split('-').map(Number);
  const fromMarch = (month + 9) % 12;
  const years = month <= 2 ? year - 1 : year;
  const era = Math.floor(years / ERA_years);
  const inEra = years - era * ERA_years;
  const inYear = Math.floor((153 * fromMarch + 2) / 5) + date - 1;
  return era * ERA_days + inEra * 365 + Math.floor(inEra / 4) - Math.floor(inEra / 100) + inYear - BEFORE_1970_days;
}

/**
 * The day so many days after the first of January 1970, rounded to a whole one.
 *
 * @param count  finite
 * @returns an empty text before the year 0 and from the year 10000 on
 * @source arithmetic on the Gregorian calendar
 * @example dayText(20766)  // '2026-11-09'
 */
export function dayText(count: number): string {
  const days = Math.round(count) + BEFORE_1970_days;
  const era = Math.floor(days / ERA_days);
  const inEra = days - era * ERA_days;
  const leaps = Math.floor(inEra / 1460) - Math.floor(inEra / 36_524) + Math.floor(inEra / 146_096);
  const years = Math.floor((inEra - leaps) / 365);
  const inYear = inEra - (365 * years + Math.floor(years / 4) - Math.floor(years / 100));
  const fromMarch = Math.floor((5 * inYear + 2) / 153);
  const month = ((fromMarch + 2) % 12) + 1;
  const year = years + era * ERA_years + (month <= 2 ? 1 : 0);
  const date = inYear - Math.floor((153 * fromMarch + 2) / 5) + 1;
  if (year < 0 || year > 9999) return '';
  const two = (of: number) => String(of).padStart(2, '0');
  return `${String(year).padStart(4, '0')}-${two(month)}-${two(date)}`;
}

/**
 * The date so many days later.
 *
 * @param date   as `2026-11-24`
 * @param count  of days, a whole number from 0 to MOST_DAYS
 * @throws RangeError  on a text that is no date
 * @source ISO 8601, calendar dates; the Gregorian calendar
 * @example dateAfter('2026-11-24', 30)  // '2026-12-24'
 */
export function dateAfter(date: string, count: number): string {
  if (!isDate(date)) throw new RangeError(`dateAfter: "${date}" is no date`);
  return dayText(dayCount(date) + count);
}
