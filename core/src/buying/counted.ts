import { exactText } from '../ratio.ts';
import type { Wheel } from './wheels.ts';

/** A wheel with how many of it are bought. */
export interface CountedWheel {
  readonly wheel: Wheel;
  readonly quantity: number;
}

/** Tells wheels apart that are ordered apart. */
export const nameOfWheel = ({ kind, size, teeth, bore_m }: Wheel): string =>
  `${kind} ${size} ${teeth} ${bore_m.known ? exactText(bore_m.value) : ''}`;

/** Each wheel once, with how many of it, in the order in which they first stand there. */
export function counted(wheels: readonly Wheel[]): readonly CountedWheel[] {
  const counts = new Map<string, CountedWheel>();
  for (const wheel of wheels) {
    const name = nameOfWheel(wheel);
    counts.set(name, { wheel, quantity: (counts.get(name)?.quantity ?? 0) + 1 });
  }
  return [...counts.values()];
}
