import * as v from 'valibot';
import { en } from '../en.ts';
import { id, line, list, oneOf, row, yesNo } from './fields.ts';
import { MOST_CATCHES } from './ratioCheckRow.ts';

const maybe = v.exactOptional;

/** Boxes of one side of a catch. */
const side = row({ gross: maybe(line), tare: maybe(line), net: maybe(line), volume: maybe(line) });

/** A ratio check while it is being written: every box holds its text, readable or not, so that nothing typed is lost on the way. */
export const unfinishedCheck = row({
  machine: id,
  /** The change sheet that it proves; absent: what is fitted now. */
  changeSheet: maybe(id),
  date: maybe(line),
  runBy: oneOf(['turns', 'time'], en`it is "turns" or "time"`),
  turns: maybe(line),
  time: maybe(line),
  dial: maybe(line),
  step: maybe(line),
  weighing: oneOf(['gross', 'tared', 'net'], en`it is "gross", "tared" or "net"`),
  uncertainty: maybe(line),
  confidence: maybe(line),
  /** Whether volumes are read too. */
  volumes: maybe(yesNo),
  catches: v.pipe(
    list(row({ A: side, B: side, leftOut: maybe(line) })),
    v.maxLength(MOST_CATCHES, en`at most ${MOST_CATCHES} catches are expected`),
  ),
  by: maybe(line),
  note: maybe(line),
});

export type UnfinishedCheck = v.InferOutput<typeof unfinishedCheck>;
export type UnfinishedCatch = UnfinishedCheck['catches'][number];
export type CatchBox = keyof UnfinishedCatch['A'];
