import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

// The committed table has two parts, each measured on its own: the search, and below it the window.

const WINDOW = '\n## The window\n';

/** The file with another part about the search. */
export function withSearch(file: string, search: string): string {
  const at = file.indexOf(WINDOW);
  return at < 0 ? search : search + file.slice(at);
}

/** The file with another part about the window. */
export function withWindow(file: string, window: string): string {
  const at = file.indexOf(WINDOW);
  return `${at < 0 ? file : file.slice(0, at)}${WINDOW}\n${window}`;
}

export const textOf = (file: string): string => (existsSync(file) ? readFileSync(file, 'utf8') : '');

export function write(file: string, text: string): void {
  mkdirSync(path.dirname(path.resolve(file)), { recursive: true });
  writeFileSync(file, text);
}
