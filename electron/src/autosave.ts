import { randomUUID } from 'node:crypto';
import { rmSync } from 'node:fs';
import { mkdir, readdir, rename, rm } from 'node:fs/promises';
import path from 'node:path';
import { app } from 'electron';
import { en } from '../../core/src/en.ts';
import { LARGEST_FILE_BYTES } from '../../core/src/file/envelope.ts';
import type { LeftBehind, LeftWork, Work } from './contract.ts';
import { readText, writeWhole } from './disk.ts';
import { makeTurns } from './inTurn.ts';
import { type KeptWork, keptText, readKept } from './keptWork.ts';
import { placeOf, tokenFor } from './places.ts';
import { clearParts } from './replace.ts';

// Work that no file holds yet, kept in the program's own folder: one file for each start, so that a new start never writes over what an earlier one left.

const ENDING = '.work';
/** Two texts of a shop file, with what JSON adds to them. */
const LARGEST_KEPT_bytes = 4 * LARGEST_FILE_BYTES;

let slot: string | null = null;
const inTurn = makeTurns();

const folder = (): string => path.join(app.getPath('userData'), 'autosave');
const fileOf = (id: string): string => path.join(folder(), `${id}${ENDING}`);

export function autosave({ name, token, base, text }: Work): Promise<void> {
  const place = token === null ? null : placeOf(token);
  return inTurn(async () => {
    await mkdir(folder(), { recursive: true });
    slot ??= randomUUID();
    await writeWhole(fileOf(slot), keptText({ name, at_ms: Date.now(), place, base, text }));
  });
}

export function dropAutosave(id: string | null): Promise<void> {
  return inTurn(async () => {
    const dropped = id ?? slot;
    if (dropped !== null) await rm(fileOf(dropped), { force: true });
  });
}

/** The same at the end of a window, after everything that it still asked for; the program may end before any answer. */
export async function endWithoutAutosave(end: () => void): Promise<void> {
  await inTurn(async () => undefined);
  end();
  if (slot !== null) rmSync(fileOf(slot), { force: true });
}

/** What earlier starts left, the newest first. From here on this window keeps its work under an id of its own. */
export function autosaves(): Promise<LeftBehind> {
  return inTurn(async () => {
    slot = null;
    await clearParts(folder(), Number.POSITIVE_INFINITY, 0);
    const names = (await readdir(folder()).catch(() => [])).filter((name) => name.endsWith(ENDING));
    const works: LeftWork[] = [];
    const unreadable: string[] = [];
    for (const name of names) {
      const kept = await readWork(path.join(folder(), name));
      if (kept === null) unreadable.push(await putAside(name));
      else works.push({ id: name.slice(0, -ENDING.length), ...withoutPlace(kept), onDisk: await textAt(kept.place?.path) });
    }
    return { works: works.sort((a, b) => b.at_ms - a.at_ms), unreadable };
  });
}

export function resume(id: string): Promise<string | null> {
  return inTurn(async () => {
    const kept = await readWork(fileOf(id));
    if (kept === null) throw new Error(en`This unsaved work can no longer be read.`);
    slot = id;
    return kept.place === null ? null : tokenFor({ ...kept.place, tried: null, drive: null });
  });
}

const withoutPlace = ({ place: _place, ...work }: KeptWork) => work;

/** Null where it is no kept work. */
async function readWork(file: string): Promise<KeptWork | null> {
  try {
    return readKept((await readText(file, LARGEST_KEPT_bytes)).text);
  } catch {
    return null;
  }
}

/** Nobody's work is taken away because it cannot be read: it only is not looked at again. */
async function putAside(name: string): Promise<string> {
  const aside = `${name}.unreadable`;
  await rename(path.join(folder(), name), path.join(folder(), aside)).catch(() => undefined);
  return aside;
}

async function textAt(file: string | undefined): Promise<string | null> {
  if (file === undefined) return null;
  return readText(file, LARGEST_FILE_BYTES).then(
    ({ text }) => text,
    () => null,
  );
}
