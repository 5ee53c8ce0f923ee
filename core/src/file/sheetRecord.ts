import * as v from 'valibot';
import { en } from '../en.ts';
import { id, line, list, row } from './fields.ts';
import { mounted } from './mounted.ts';

export const printed = v.pipe(
  v.string(en`a line of the sheet stands in quotation marks`),
  v.maxLength(2000, en`a line has at most 2000 characters`),
);

/** A change sheet as it was printed: the one frozen copy in the file. All else is derived anew. */
export const sheetRecord = row({
  id,
  number: line,
  date: line,
  machine: id,
  material: id,
  /** What the sheet puts on. */
  mounted,
  /** What was on before, in the same order; older files do not tell. */
  before: v.exactOptional(mounted),
  lines: list(printed),
  /** The day on which it was marked as fitted; absent until then. */
  fittedOn: v.exactOptional(line),
});

export type SheetRecord = v.InferOutput<typeof sheetRecord>;
