import type { CatchBox, UnfinishedCatch, UnfinishedCheck } from '../file/unfinishedCheck.ts';
import { boxesOf } from './boxes.ts';

export const blankCatch = (): UnfinishedCatch => ({ A: {}, B: {} });

/** Up to the last in which something is written that counts. */
export function writtenCatches(check: UnfinishedCheck): readonly UnfinishedCatch[] {
  const boxes = boxesOf(check);
  const isWritten = ({ A, B, leftOut }: UnfinishedCatch) => leftOut !== undefined || !isBlank(A, boxes) || !isBlank(B, boxes);
  return check.catches.slice(0, check.catches.findLastIndex(isWritten) + 1);
}

/** Whether nothing is written of a side in boxes that count. */
export const isBlank = (side: UnfinishedCatch['A'], boxes: readonly CatchBox[]): boolean =>
  boxes.every((box) => (side[box] ?? '').trim() === '');
