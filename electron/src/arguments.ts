import { LARGEST_FILE_BYTES } from '../../core/src/file/envelope.ts';
import type { MenuEntry, Paper, Work } from './contract.ts';

// What the page may send, by type and size.

/** A file name of the longest kind, with what the title adds to it. */
const LONGEST_NAME = 300;

function aString(value: unknown, what: string): string {
  if (typeof value !== 'string') throw new RangeError(`${what} must be text.`);
  return value;
}

export function aName(value: unknown): string {
  const name = aString(value, 'A name');
  if (name.length > LONGEST_NAME) throw new RangeError(`A name has ${name.length} characters; more than ${LONGEST_NAME} are not taken.`);
  return name;
}

export function aToken(value: unknown): string {
  const token = aString(value, 'A token');
  if (token.length > LONGEST_NAME) throw new RangeError('A token is too long.');
  return token;
}

/** The longest path that a system takes. */
const LONGEST_PLACE = 32_767;

export function aPlace(value: unknown): string {
  const place = aString(value, 'A place');
  if (place.length > LONGEST_PLACE) throw new RangeError('A place is too long.');
  return place;
}

/** More commands than a menu can show. */
const MOST_ENTRIES = 100;

export function theEntries(value: unknown): readonly MenuEntry[] {
  if (!Array.isArray(value)) throw new RangeError('The commands must be a list.');
  if (value.length > MOST_ENTRIES) throw new RangeError(`There are ${value.length} commands; more than ${MOST_ENTRIES} are not taken.`);
  return value.map(anEntry);
}

function anEntry(value: unknown): MenuEntry {
  if (typeof value !== 'object' || value === null) throw new RangeError('A command must be an object.');
  const field = (name: string): unknown => Reflect.get(value, name);
  const aKey = (name: string) => (field(name) === null ? null : aName(field(name)));
  return {
    id: aName(field('id')),
    title: aName(field('title')),
    key: aKey('key'),
    windowsKey: aKey('windowsKey'),
    enabled: aFlag(field('enabled')),
  };
}

export function aFileText(value: unknown): string {
  const text = aString(value, 'The content of a file');
  const size = Buffer.byteLength(text);
  if (size > LARGEST_FILE_BYTES)
    throw new RangeError(`The file would have ${size} bytes; more than ${LARGEST_FILE_BYTES} are not written.`);
  return text;
}

export function aPaper(value: unknown): Paper {
  if (value !== 'A4' && value !== 'Letter') throw new RangeError('A paper must be A4 or Letter.');
  return value;
}

export function aFlag(value: unknown): boolean {
  if (typeof value !== 'boolean') throw new RangeError('A flag must be true or false.');
  return value;
}

/** The id of kept work, which is the name of its file: it leads nowhere else. */
export function anId(value: unknown): string {
  const id = aString(value, 'An id');
  if (!/^[0-9a-f-]{36}$/.test(id)) throw new RangeError('An id must be one that was given out here.');
  return id;
}

export function aWork(value: unknown): Work {
  if (typeof value !== 'object' || value === null) throw new RangeError('Work must be an object.');
  const of = (key: string): unknown => Reflect.get(value, key);
  return { name: aName(of('name')), token: orNull(aToken)(of('token')), base: aFileText(of('base')), text: aFileText(of('text')) };
}

export const orNull =
  <T>(check: (value: unknown) => T) =>
  (value: unknown): T | null =>
    value === null ? null : check(value);
