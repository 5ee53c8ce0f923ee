import * as v from 'valibot';
import { isDate } from '../calendar.ts';
import { en } from '../en.ts';
import { quoted } from '../visible.ts';

/** A day as ISO 8601 writes it, one that there is. */
export const day = v.pipe(
  v.string(en`a day in quotation marks is expected, as "2026-11-09"`),
  v.check(isDate, ({ input }) => en`${quoted(input)} is no day: year, month and day are expected, as "2026-11-09"`),
);
