import { en } from '../en.ts';
import { quantityText } from '../entry.ts';
import type { CatchRow, CaughtRow } from '../file/ratioCheckRow.ts';
import type { UnfinishedCatch, UnfinishedCheck } from '../file/unfinishedCheck.ts';
import { boxUnit } from './boxes.ts';

const KEYS = ['gross', 'tare', 'net', 'volume'] as const;

/**
 * Puts catches out of a table into a check that is being written, in place of those before.
 *
 * @param check  is changed: the boxes that the catches need are shown
 * @returns what stands against it, or null
 * @source our choice
 */
export function takeCatches(check: UnfinishedCheck, catches: readonly CatchRow[]): string | null {
  const any = (key: keyof CaughtRow) => catches.some(({ A, B }) => A[key] !== undefined || B[key] !== undefined);
  const [gross, net] = [any('gross') || any('tare'), any('net')];
  if (gross && net) return en`Some catches have gross and tare and others a net weight; write them all one way.`;
  if (gross) check.weighing = 'gross';
  else if (net && check.weighing === 'gross') check.weighing = 'net';
  if (any('volume')) check.volumes = true;
  check.catches = catches.map(
    ({ A, B, leftOut }): UnfinishedCatch => ({ A: textsOf(A), B: textsOf(B), ...(leftOut !== undefined && { leftOut }) }),
  );
  return null;
}

const textsOf = (caught: CaughtRow): UnfinishedCatch['A'] =>
  Object.fromEntries(
    KEYS.flatMap((key) => {
      const typed = caught[key];
      return typed === undefined ? [] : [[key, quantityText(key === 'volume' ? 'volume' : 'mass', typed, boxUnit(key))]];
    }),
  );
