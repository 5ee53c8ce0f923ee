import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

// The program's own text, as the wall tests read it.

export const ROOT = path.resolve(import.meta.dirname, '../..');

/** Folders that are made or fetched, not written. */
const NOT_OURS = new Set(['node_modules', 'dist', 'release', '.git']);

/** Every file under a folder of the project, as a path from its root with forward slashes. */
export function filesUnder(folder: string, ending = ''): readonly string[] {
  return readdirSync(path.join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const place = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (entry.isDirectory()) return NOT_OURS.has(entry.name) ? [] : filesUnder(place, ending);
    return entry.isFile() && place.endsWith(ending) ? [place] : [];
  });
}

export const textOf = (place: string): string => readFileSync(path.join(ROOT, place), 'utf8');

/** Without comments, which may name what the code must not. */
export const codeOf = (place: string): string => withoutComments(textOf(place));

export function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|[^:'"`])\/\/.*$/gm, '$1');
}

/** Without what stands in quotation marks. */
export const withoutStrings = (code: string): string => code.replace(/'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"/g, "''");
