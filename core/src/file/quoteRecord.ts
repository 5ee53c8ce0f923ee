import * as v from 'valibot';
import { en } from '../en.ts';
import { count, id, line, list, numberText, quantity, row, yesNo } from './fields.ts';
import { printed } from './sheetRecord.ts';

const maybe = v.exactOptional;
const rows = <T extends v.GenericSchema>(one: T) => v.pipe(list(one), v.readonly());
const words = rows(printed);

const PLACE = en`a place on the rule is a number from 0 to 100, in per cent of its width`;
const place = v.pipe(
  v.number(PLACE),
  v.check((at) => at >= 0 && at <= 100, PLACE),
);
const lane = count(0, 20);
/** It is put into a drawing as it stands, so it may hold nothing but a path. */
const PATH = en`a path has moves, lines and numbers only, as M0 100L5 40Z`;
const path = v.pipe(v.string(PATH), v.regex(/^[MLHVZ\d. -]*$/, PATH), v.maxLength(100_000, PATH));

const stretch = row({ from: place, to: place });
const mark = row({ at: place, text: printed });
const flag = row({ at: place, row: maybe(lane), toLeft: yesNo, words: printed, limits: maybe(stretch), best: maybe(place) });

/** The drawing of the reach, worded and rounded as it was printed. */
const rule = row({
  sentence: printed,
  lanes: lane,
  hill: path,
  strokes: path,
  above: rows(mark),
  below: rows(mark),
  gaps: rows(stretch),
  flags: rows(flag),
});

/** The words of the page, every figure as it was printed. */
const page = row({
  title: printed,
  number: printed,
  date: printed,
  valid: printed,
  machine: printed,
  customer: printed,
  note: printed,
  shop: printed,
  window: printed,
  legend: printed,
  invented: printed,
  cautions: words,
  reach: rows(row({ what: printed, figure: printed, against: printed })),
  materials: row({ heads: words, rows: rows(words), rest: printed }),
  definitions: words,
  add: words,
  assumptions: words,
  signatures: words,
  footer: printed,
});

/** A quote page as it was kept: a frozen copy, which prints the same whatever becomes of the machine. */
export const quoteRecord = row({
  id,
  number: line,
  date: line,
  machine: id,
  /** By volume as run, A to 1 of B, exact. */
  window: row({ low: numberText, high: numberText }),
  tolerance: quantity('share', { above: ['0', '%'], below: ['100', '%'] }),
  customer: maybe(line),
  validUntil: maybe(line),
  page,
  rule,
});

export type QuoteRecord = v.InferOutput<typeof quoteRecord>;
