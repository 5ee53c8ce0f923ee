import * as v from 'valibot';
import { Fraction } from '../ratio.ts';
import { readNumber, readRatio, type TypedQuantity } from '../reading.ts';
import { type Dimension, readQuantity, toSI } from '../units.ts';

/** Bounds of a quantity, as `[number, unit]`, so that the message can say them in a unit people read. */
export interface Bounds {
  readonly above?: readonly [string, string];
  readonly least?: readonly [string, string];
  readonly most?: readonly [string, string];
  readonly below?: readonly [string, string];
}

const MISS: Record<keyof Bounds, { readonly misses: (order: number) => boolean; readonly words: string }> = {
  above: { misses: (order) => order <= 0, words: 'above' },
  least: { misses: (order) => order < 0, words: 'at least' },
  most: { misses: (order) => order > 0, words: 'at most' },
  below: { misses: (order) => order >= 0, words: 'below' },
};

/** A number as typed, with its unit, both kept as text: `{ "value": "38.9", "unit": "mm" }`. */
export function quantity(dimension: Dimension, bounds: Bounds = {}) {
  return v.pipe(
    v.object({
      value: v.string('the number stands in quotation marks, as "38.9", so that it stays exactly as typed'),
      unit: v.string('the unit stands in quotation marks, as "mm"'),
    }),
    v.rawCheck(({ dataset, addIssue }) => {
      if (!dataset.typed) return;
      const message = quantityTrouble(dimension, dataset.value, bounds);
      if (message !== null) addIssue({ message });
    }),
  );
}

function quantityTrouble(dimension: Dimension, typed: TypedQuantity, bounds: Bounds): string | null {
  const reading = readQuantity(dimension, typed);
  if (!reading.ok) return reading.expected;
  for (const name of ['above', 'least', 'most', 'below'] as const) {
    const bound = bounds[name];
    if (bound === undefined) continue;
    const limit = toSI(dimension, new Fraction(bound[0]), bound[1]);
    if (MISS[name].misses(reading.value.compare(limit))) {
      return `${typed.value} ${typed.unit} is out of range: it must be ${MISS[name].words} ${bound[0]} ${bound[1]}`.trimEnd();
    }
  }
  return null;
}

/** A plain number as typed, kept as text. */
export const numberText = v.pipe(
  v.string('the number stands in quotation marks, as "38.9", so that it stays exactly as typed'),
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return;
    const reading = readNumber(dataset.value);
    if (!reading.ok) addIssue({ message: reading.expected });
  }),
);

/** A mix ratio as the data sheet prints it: `100 : 38.9`, or three parts `4 : 1 : 1`. */
export const ratioText = v.pipe(
  v.string('the ratio stands in quotation marks, as "100 : 38.9"'),
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return;
    const reading = readRatio(dataset.value);
    if (!reading.ok) addIssue({ message: reading.expected });
  }),
);

/** A whole number of pieces, teeth or pitches. */
export const count = (least: number, most: number) =>
  v.pipe(
    v.number('a whole number is expected, without quotation marks'),
    v.integer('a whole number is expected'),
    v.minValue(least, `must be at least ${least}`),
    v.maxValue(most, `must be at most ${most}`),
  );

export const id = v.pipe(
  v.string('an id stands in quotation marks'),
  v.regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/, 'an id has letters, digits, dot, hyphen or underscore, 64 at most'),
);

/** One line of the user's own words. */
export const line = v.pipe(v.string('text in quotation marks is expected'), v.maxLength(200, 'must be at most 200 characters'));

export const yesNo = v.boolean('true or false is expected');
export const teeth = count(5, 400);
export const length = quantity('length', { above: ['0', 'mm'], most: ['20', 'm'] });
export const share = quantity('share', { least: ['0', '%'], most: ['100', '%'] });
export const shareAboveZero = quantity('share', { above: ['0', '%'], most: ['100', '%'] });
export const uncertainty = quantity('share', { least: ['0', '%'], below: ['100', '%'] });

/** Strict shape of an object's keys is checked by `read`, which warns of keys it does not know. */
export const list = <T extends v.GenericSchema>(row: T) => v.array(row, 'a list in square brackets is expected');
