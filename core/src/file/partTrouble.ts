import * as v from 'valibot';
import { material, type PartRow } from './material.ts';

/**
 * What the file would refuse about a figure of one part, said while it is typed.
 *
 * @param part  only what is to be looked at, as `{ runAt }`
 * @returns the first thing that is wrong, or null
 * @example partTrouble({ density: { value: { value: '0', unit: 'g/cm3' } } })  // '0 g/cm3 is out of range: it must be above 0 g/cm3.'
 */
export function partTrouble(part: PartRow): string | null {
  const read = v.safeParse(material, { id: 'm', name: '', A: part, B: {} });
  return read.success ? null : `${read.issues[0].message}.`;
}
