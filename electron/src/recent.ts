import { randomUUID } from 'node:crypto';
import { rm } from 'node:fs/promises';
import path from 'node:path';
import { app } from 'electron';
import { en } from '../../core/src/en.ts';
import type { RecentFile } from './contract.ts';
import { keepAside, readText, writeWhole } from './disk.ts';
import { isGone } from './diskFailure.ts';
import { makeTurns } from './inTurn.ts';
import { shownName } from './names.ts';

const MOST = 10;
const LARGEST_LIST_BYTES = 1024 * 1024;

/** Tokens of the files listed, so that the page can ask for one without naming its path. */
const tokens = new Map<string, string>();

/** Under which name a list that could not be read was kept, until somebody is told. */
let keptAs: string | null = null;
const inTurn = makeTurns();

/** Rejects once where the list was damaged. */
export async function recentFiles(): Promise<readonly RecentFile[]> {
  const listed = new Map([...tokens].map(([token, file]) => [file, token]));
  const list = await inTurn(readList);
  const aside = keptAs;
  keptAs = null;
  if (aside !== null) throw new Error(en`The list of recent files could not be read. It was kept as ${aside}, and a new list is begun.`);
  return list.map((file) => {
    const token = listed.get(file) ?? randomUUID();
    tokens.set(token, file);
    return { name: shownName(file), token };
  });
}

export function pathOfRecent(token: string): string {
  const file = tokens.get(token);
  if (file === undefined) throw new RangeError('This file is not in the list of recent files.');
  return file;
}

export const recentPlaces = (): Promise<readonly string[]> => inTurn(readList);

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

/** The list is a convenience: where it cannot be written, work goes on without it. */
async function change(next: (list: readonly string[]) => readonly string[]): Promise<void> {
  await inTurn(async () => {
    const list = next(await readList());
    await writeWhole(listFile(), JSON.stringify(list, null, 2)).catch(() => undefined);
  });
  await heard();
}

async function readList(): Promise<readonly string[]> {
  try {
    const { text } = await readText(listFile(), LARGEST_LIST_BYTES);
    return listIn(JSON.parse(text));
  } catch (error) {
    if (!isGone(error)) keptAs = await putAside();
    return [];
  }
}

function listIn(json: unknown): readonly string[] {
  if (!Array.isArray(json)) throw new RangeError('the list of recent files is no list');
  const entries: readonly unknown[] = json;
  return entries
    .map((entry) => {
      if (typeof entry !== 'string' || !path.isAbsolute(entry)) throw new RangeError('a recent file has no place');
      return entry;
    })
    .slice(0, MOST);
}

/** A damaged list is not written over. Null where the folder cannot be written, and so nothing is lost either. */
async function putAside(): Promise<string | null> {
  try {
    const name = await keepAside(listFile());
    await rm(listFile());
    return name;
  } catch {
    return null;
  }
}
