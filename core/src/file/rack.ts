import * as v from 'valibot';
import { count, id, kind, length, line, list, row, teeth } from './fields.ts';
import { prices } from './prices.ts';

const maybe = v.exactOptional;

const piece = row({
  id,
  kind,
  size: line,
  teeth,
  bore: maybe(length),
  keyway: maybe(length),
  quantity: count(0, 10_000),
  part: maybe(line),
  place: maybe(line),
});

export const rack = row({ id, name: line, note: maybe(line), pieces: list(piece), prices: maybe(prices) });

export type RackRow = v.InferOutput<typeof rack>;
export type PieceRow = RackRow['pieces'][number];
