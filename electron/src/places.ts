import { randomUUID } from 'node:crypto';

/** A file on disk as this window knows it. Each opening has one of its own, so that a refused one changes nothing for the others. */
export interface Place {
  readonly path: string;
  /** Digest of what was last read or written there: another one on the disk says that somebody else wrote. Null: never yet. */
  digest: string | null;
  /** Digest of the version that is known to open. */
  good: string | null;
  /** Digest of what was last begun to be written: it may lie there though the disk did not confirm it. */
  tried: string | null;
  /** The drive it was on, as the system numbers it; null: not known. */
  drive: number | null;
}

/** Only places that came from a dialog, from the recent list, from the system or from kept work; the page knows their tokens. */
const places = new Map<string, Place>();

export function tokenFor(place: Place): string {
  const token = randomUUID();
  places.set(token, place);
  return token;
}

export function placeOf(token: string): Place {
  const place = places.get(token);
  if (place === undefined) throw new RangeError('This file was not opened here.');
  return place;
}

/** A place for a path where what lies there, by its digest, may be known from an earlier opening. */
export function placeAt(path: string, present: string | null): Place {
  const known = [...places.values()].find((place) => place.path === path && place.digest === present);
  return { path, digest: known?.digest ?? null, good: known?.good ?? null, tried: null, drive: null };
}

export const isOurs = ({ digest, tried }: Place, present: string): boolean => present === digest || present === tried;
