import * as v from 'valibot';
import { driveKinds } from '../drives/index.ts';
import { en } from '../en.ts';
import { Fraction } from '../ratio.ts';
import { type Reading, readNumber, readRatio, type TypedQuantity } from '../reading.ts';
import { type Dimension, readAmount, readQuantity, toSI } from '../units.ts';
import { quoted } from '../visible.ts';

/** Whether JSON holds an object in braces; a list in square brackets is none. */
export const isObject = (json: unknown): json is Readonly<Record<string, unknown>> =>
  typeof json === 'object' && json !== null && !Array.isArray(json);

/** An object in braces; a field that is missing from it is named together with what it should hold. Unknown keys are for `read` to warn of. */
export function row<const Fields extends v.ObjectEntries>(fields: Fields, expected = en`an object in braces is expected`) {
  const shape = v.object(fields, (issue) => {
    const key = String(issue.path?.at(-1)?.key);
    const field = fields[key];
    const [first] = (field && v.safeParse(field, undefined).issues) ?? [];
    return first === undefined ? en`"${key}" is missing` : en`"${key}" is missing: ${first.message}`;
  });
  return v.pipe(v.custom<v.InferInput<typeof shape>>(isObject, expected), shape);
}

export const list = <T extends v.GenericSchema>(rows: T) => v.array(rows, en`a list in square brackets is expected`);

/** Text in quotation marks. A bare number is told how to be written: JSON would not keep its digits. */
const text = (expected: string) =>
  v.string(({ input }) =>
    typeof input === 'number'
      ? en`${input} must be written in quotation marks, as "${input}", so that it stays exactly as typed`
      : expected,
  );

/** One of a few words. */
export const oneOf = <const Words extends readonly string[]>(words: Words, expected: string) =>
  v.picklist(words, ({ input }) => (typeof input === 'string' ? en`${quoted(input)} is not known here: ${expected}` : expected));

/** The kind of a drive, out of the list of kinds. */
export const kind = oneOf(
  driveKinds.map((one) => one.kind),
  en`the drive kinds are: ${driveKinds.map((one) => one.kind).join(', ')}`,
);

/** Bounds of a quantity, as `[number, unit]`, so that the message can say them in a unit people read. */
export interface Bounds {
  readonly above?: readonly [string, string];
  readonly least?: readonly [string, string];
  readonly most?: readonly [string, string];
  readonly below?: readonly [string, string];
}

const MISS: Record<keyof Bounds, { readonly misses: (order: number) => boolean; readonly words: (bound: string) => string }> = {
  above: { misses: (order) => order <= 0, words: (bound) => en`above ${bound}` },
  least: { misses: (order) => order < 0, words: (bound) => en`at least ${bound}` },
  most: { misses: (order) => order > 0, words: (bound) => en`at most ${bound}` },
  below: { misses: (order) => order >= 0, words: (bound) => en`below ${bound}` },
};

/** What is wrong with a value outside its limit; `expected` is the limit alone, for help to say. */
export interface OutOfRange {
  readonly message: string;
  readonly expected: string;
}

const outOfRange = (typed: string, expected: string): OutOfRange => ({
  message: en`${typed} is out of range: it must be ${expected}`,
  expected,
});

export const NUMBER = en`a number in quotation marks is expected, as "38.9"`;
const UNIT = en`a unit in quotation marks is expected, as "mm", or "" where there is none`;
const QUANTITY = en`a number with its unit is expected, as { "value": "38.9", "unit": "mm" }`;

/** A number as typed, with its unit, both kept as text: `{ "value": "38.9", "unit": "mm" }`. */
export function quantity(dimension: Dimension, bounds: Bounds = {}) {
  return v.pipe(
    row({ value: text(NUMBER), unit: text(UNIT) }, QUANTITY),
    v.rawCheck(({ dataset, addIssue }) => {
      if (!dataset.typed) return;
      const trouble = quantityTrouble(dimension, dataset.value, bounds);
      if (trouble !== null) addIssue(trouble);
    }),
  );
}

function quantityTrouble(dimension: Dimension, typed: TypedQuantity, bounds: Bounds): { readonly message: string } | OutOfRange | null {
  const reading = readQuantity(dimension, typed);
  if (!reading.ok) return { message: reading.expected };
  for (const name of ['above', 'least', 'most', 'below'] as const) {
    const bound = bounds[name];
    if (bound === undefined) continue;
    const limit = toSI(dimension, new Fraction(bound[0]), bound[1]);
    if (MISS[name].misses(reading.value.compare(limit))) return outOfRange(spoken(typed), MISS[name].words(bound.join(' ').trimEnd()));
  }
  return null;
}

/** A mass or a volume, whichever the unit says. */
export const amount = v.pipe(
  row({ value: text(NUMBER), unit: text(UNIT) }, QUANTITY),
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return;
    const read = readAmount(dataset.value);
    if (!read.ok) addIssue({ message: read.expected });
    else if (read.value.value.compare(0) <= 0) addIssue(outOfRange(spoken(dataset.value), MISS.above.words('0')));
  }),
);

/** A quantity in a sentence, as typed. */
export const spoken = ({ value, unit }: TypedQuantity): string => `${value} ${unit}`.trim();

/** Text in quotation marks that a reader understands, kept as typed. */
export const readable = <T>(expected: string, read: (text: string) => Reading<T>) =>
  v.pipe(
    text(expected),
    v.rawCheck(({ dataset, addIssue }) => {
      const reading = dataset.typed ? read(dataset.value) : null;
      if (reading?.ok === false) addIssue({ message: reading.expected });
    }),
  );

/** A plain number as typed, kept as text. */
export const numberText = readable(NUMBER, readNumber);

/** A mix ratio as the data sheet prints it: `100 : 38.9`, or three parts `4 : 1 : 1`. */
export const ratioText = readable(en`a ratio in quotation marks is expected, as "100 : 38.9"`, readRatio);

const COUNT = en`a whole number is expected, without quotation marks`;

/** A whole number of pieces, teeth or pitches. */
export const count = (least: number, most: number) =>
  v.pipe(
    v.number(({ input }) => (typeof input === 'string' ? en`${quoted(input)} stands in quotation marks: ${COUNT}` : COUNT)),
    v.rawCheck(({ dataset, addIssue }) => {
      if (!dataset.typed) return;
      const { value } = dataset;
      if (!Number.isInteger(value)) addIssue({ message: en`${value} is not a whole number` });
      else if (value < least) addIssue(outOfRange(String(value), MISS.least.words(String(least))));
      else if (value > most) addIssue(outOfRange(String(value), MISS.most.words(String(most))));
    }),
  );

const ID = en`an id has letters, digits, dots, hyphens and underscores, begins with a letter or a digit, and has at most 64 characters`;

export const id = v.pipe(
  text(ID),
  v.regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/, ({ input }) => en`${quoted(input)} is no id: ${ID}`),
);

const LONGEST_LINE = 200;

/** One line of the user's own words. */
export const line = v.pipe(
  text(en`text in quotation marks is expected`),
  v.maxLength(LONGEST_LINE, ({ input }) => en`the text has ${input.length} characters: ${LONGEST_LINE} are the most`),
);

export const yesNo = v.boolean(en`true or false is expected, without quotation marks`);
export const teeth = count(5, 400);
export const length = quantity('length', { above: ['0', 'mm'], most: ['20', 'm'] });
export const share = quantity('share', { least: ['0', '%'], most: ['100', '%'] });
export const shareAboveZero = quantity('share', { above: ['0', '%'], most: ['100', '%'] });
export const uncertainty = quantity('share', { least: ['0', '%'], below: ['100', '%'] });
