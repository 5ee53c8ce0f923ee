import * as v from 'valibot';
import { en } from '../en.ts';
import { day } from './day.ts';
import { id, line, list, oneOf, quantity, row, shareAboveZero, yesNo } from './fields.ts';
import { mounted } from './mounted.ts';

const maybe = v.exactOptional;

export const MOST_CATCHES = 50;

const mass = quantity('mass', { least: ['0', 'g'], most: ['10000', 'kg'] });
const volume = quantity('volume', { above: ['0', 'cc'], most: ['10000', 'L'] });

/** An exact fraction as the program writes it, `n/d`. */
const exact = v.pipe(
  v.string(en`an exact fraction in quotation marks is expected, as "7/20"`),
  v.regex(/^-?\d{1,400}\/[1-9]\d{0,399}$/, en`an exact fraction is expected, as "7/20"`),
);

/** One side of a catch as it was written down: gross and tare, or net; its volume where it was read too. */
const caught = row({ gross: maybe(mass), tare: maybe(mass), net: maybe(mass), volume: maybe(volume) });

export const catchRow = row({
  A: caught,
  B: caught,
  /** Why the catch does not count. */
  leftOut: maybe(line),
});

/** How long each catch ran: turns of the motor, or a time with the dial in per cent. */
const run = row({
  turns: maybe(quantity('number', { above: ['0', ''], most: ['1000000', ''] })),
  time: maybe(quantity('time', { above: ['0', 's'], most: ['100', 'h'] })),
  dial: maybe(shareAboveZero),
});

const scale = row({
  step: quantity('mass', { above: ['0', 'g'], most: ['100', 'kg'] }),
  /** True where the scale was set to zero with the empty cup, so that it was read once. */
  tared: yesNo,
  uncertainty: maybe(quantity('mass', { least: ['0', 'g'], most: ['100', 'kg'] })),
});

const pair = row({ A: exact, B: exact });
const givenPair = row({ A: maybe(exact), B: maybe(exact) });

/** What the verdict rests on, as it stood on the day: a later change of machine or material leaves an old check as it was. SI. */
const terms = row({
  wantedBPerA: exact,
  limits: maybe(row({ low: exact, high: exact })),
  basis: oneOf(['weight', 'volume'], en`the basis is "weight" or "volume"`),
  written: line,
  limitsWritten: maybe(line),
  density: givenPair,
  densityBOverA: maybe(exact),
  displacement: pair,
  tolerance: givenPair,
  newDelivery: givenPair,
  pumpTurns: pair,
  /** Of the motor at 100 % of the dial, rev/s. */
  motorSpeed: exact,
});

/** A ratio check as it is kept. */
export const ratioCheckRow = row({
  id,
  date: day,
  machine: id,
  material: id,
  /** The change sheet that it proves. */
  changeSheet: maybe(id),
  /** What was on the machine. */
  mounted,
  run: maybe(run),
  scale,
  /** Of the interval; 95 % where it is not given. */
  confidence: maybe(quantity('share', { least: ['60', '%'], most: ['99.9', '%'] })),
  catches: v.pipe(
    list(catchRow),
    v.minLength(1, en`a ratio check has at least one catch`),
    v.maxLength(MOST_CATCHES, en`a ratio check has at most ${MOST_CATCHES} catches`),
  ),
  by: maybe(line),
  note: maybe(line),
  terms,
});

export type RatioCheckRow = v.InferOutput<typeof ratioCheckRow>;
export type CatchRow = RatioCheckRow['catches'][number];
export type CaughtRow = CatchRow['A'];
