import * as v from 'valibot';
import { driveKinds } from '../drives/index.ts';
import { count, id, length, line, list, teeth } from './fields.ts';

const maybe = v.exactOptional;

const piece = v.object({
  id,
  kind: v.picklist(
    driveKinds.map((kind) => kind.kind),
    `this drive kind is not known here; known are: ${driveKinds.map((kind) => kind.kind).join(', ')}`,
  ),
  size: line,
  teeth,
  bore: maybe(length),
  keyway: maybe(length),
  quantity: count(0, 10_000),
  part: maybe(line),
  place: maybe(line),
});

export const rack = v.object({ id, name: line, note: maybe(line), pieces: list(piece) });

export type RackRow = v.InferOutput<typeof rack>;
export type PieceRow = RackRow['pieces'][number];
