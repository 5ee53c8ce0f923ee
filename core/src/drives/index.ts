import { chain } from './chain.ts';
import type { DriveKind } from './driveKind.ts';

/** Every drive kind there is. A new one is its own file and one line here. */
export const driveKinds: readonly DriveKind[] = [chain];

/** @throws RangeError for a kind that is not listed (the file schema refuses it first) */
export function driveKind(kind: string): DriveKind {
  const found = driveKinds.find((one) => one.kind === kind);
  if (found === undefined) throw new RangeError(`driveKind: ${kind} is not listed`);
  return found;
}
