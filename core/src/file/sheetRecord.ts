import * as v from 'valibot';
import { id, line, list, row, teeth } from './fields.ts';

const printed = v.pipe(v.string('a line of the sheet stands in quotation marks'), v.maxLength(2000, 'a line has at most 2000 characters'));

/** A change sheet as it was printed: the one frozen copy in the file. All else is derived anew. */
export const sheetRecord = row({
  id,
  number: line,
  date: line,
  machine: id,
  material: id,
  /** What the sheet puts on, stage by stage in the order the machine had then. */
  mounted: row({ pumps: row({ A: id, B: id }), teeth: list(row({ driver: teeth, driven: teeth })) }),
  lines: list(printed),
  /** The day on which it was marked as fitted; absent until then. */
  fittedOn: v.exactOptional(line),
});

export type SheetRecord = v.InferOutput<typeof sheetRecord>;

/** The number after the largest one kept: sheets are numbered through, whatever the machine. */
export function nextSheetNumber(kept: readonly { readonly number: string }[]): string {
  const largest = kept.reduce((most, { number }) => Math.max(most, /^\d{1,9}$/.test(number) ? Number(number) : 0), 0);
  return String(largest + 1).padStart(4, '0');
}
