import path from 'node:path';

/** Unsaved work as it lies in the program's folder, with the place of its file. */
export interface KeptWork {
  readonly name: string;
  readonly at_ms: number;
  readonly place: { readonly path: string; readonly digest: string | null; readonly good: string | null } | null;
  readonly base: string;
  readonly text: string;
}

const FORMAT = 'ratiowright unsaved work';
const VERSION = 1;

export function keptText({ name, at_ms, place, base, text }: KeptWork): string {
  const at = place === null ? null : { path: place.path, digest: place.digest, good: place.good };
  return JSON.stringify({ format: FORMAT, version: VERSION, name, at_ms, place: at, base, text });
}

/** Null where the text is something else, or of a newer program. */
export function readKept(text: string): KeptWork | null {
  const json: unknown = JSON.parse(text);
  if (!isFields(json) || json.format !== FORMAT || json.version !== VERSION) return null;
  const { name, at_ms, base, text: work } = json;
  const place = placeIn(json.place);
  if (place === undefined || typeof name !== 'string' || typeof at_ms !== 'number') return null;
  return typeof base === 'string' && typeof work === 'string' ? { name, at_ms, place, base, text: work } : null;
}

/** Undefined where it is no place. */
function placeIn(json: unknown): KeptWork['place'] | undefined {
  if (json === null) return null;
  if (!isFields(json)) return undefined;
  const { path: file, digest, good } = json;
  return typeof file === 'string' && path.isAbsolute(file) && isDigest(digest) && isDigest(good) ? { path: file, digest, good } : undefined;
}

const isDigest = (json: unknown): json is string | null => json === null || typeof json === 'string';
const isFields = (json: unknown): json is Readonly<Record<string, unknown>> => typeof json === 'object' && json !== null;
