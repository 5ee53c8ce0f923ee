import { randomUUID } from 'node:crypto';
import path from 'node:path';
import { app } from 'electron';
import type { RecentFile } from './contract.ts';
import { readText, writeWhole } from './disk.ts';

const MOST = 10;
const LARGEST_LIST_BYTES = 1024 * 1024;

/** Tokens of the files listed, so that the page can ask for one without naming its path. */
const tokens = new Map<string, string>();

export async function recentFiles(): Promise<readonly RecentFile[]> {
  const listed = new Map([...tokens].map(([token, file]) => [file, token]));
  return (await readList()).map((file) => {
    const token = listed.get(file) ?? randomUUID();
    tokens.set(token, file);
    return { name: path.basename(file), token };
  });
}

export function pathOfRecent(token: string): string {
  const file = tokens.get(token);
  if (file === undefined) throw new RangeError('This file is not in the list of recent files.');
  return file;
}

export const recentPlaces = (): Promise<readonly string[]> => readList();

/** The system keeps a list of its own, behind the icon of the program. */
export async function remember(file: string): Promise<void> {
  app.addRecentDocument(file);
  await change((list) => [file, ...list.filter((other) => other !== file)].slice(0, MOST));
}

export const forget = (file: string): Promise<void> => change((list) => list.filter((other) => other !== file));

export async function emptyList(): Promise<void> {
  app.clearRecentDocuments();
  await change(() => []);
}

let heard: () => Promise<void> = async () => undefined;

/** Tells one listener, the menu, that the list is another one. */
export function onListChange(listener: () => Promise<void>): void {
  heard = listener;
}

const listFile = (): string => path.join(app.getPath('userData'), 'recent.json');

/** The list is a convenience: where it is missing, damaged or cannot be written, work goes on without it. */
function change(next: (list: readonly string[]) => readonly string[]): Promise<void> {
  turn = turn
    .catch(() => undefined)
    .then(async () => {
      const list = next(await readList());
      await writeWhole(listFile(), JSON.stringify(list, null, 2)).catch(() => undefined);
      await heard();
    });
  return turn;
}

/** One change after the other, so that none reads what another is about to write. */
let turn: Promise<void> = Promise.resolve();

async function readList(): Promise<readonly string[]> {
  try {
    const { text } = await readText(listFile(), LARGEST_LIST_BYTES);
    const list: unknown = JSON.parse(text);
    const paths = Array.isArray(list) ? list : [];
    return paths.filter((entry): entry is string => typeof entry === 'string' && path.isAbsolute(entry)).slice(0, MOST);
  } catch {
    return [];
  }
}
