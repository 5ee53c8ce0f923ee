import path from 'node:path';
import { type BrowserWindow, dialog } from 'electron';
import { en } from '../../core/src/en.ts';
import { EXTENSION, LARGEST_FILE_BYTES } from '../../core/src/file/envelope.ts';
import type { OpenedFile, Saved, SavedAs, Theirs } from './contract.ts';
import { backUp, backupOf, digestAt, digestOf, driveOf, keepAside, onSameDrive, readText, writeWhole } from './disk.ts';
import { isGone } from './diskFailure.ts';
import { makeTurns } from './inTurn.ts';
import { placeChosen, shownName, suggestedName } from './names.ts';
import { isOurs, type Place, placeAt, placeOf, tokenFor } from './places.ts';
import { forget, pathOfRecent, remember } from './recent.ts';

const filters = () => [{ name: en`Shop files`, extensions: [EXTENSION.slice(1)] }];
const inTurn = makeTurns();

export async function openFile(window: BrowserWindow): Promise<OpenedFile | null> {
  const answer = await dialog.showOpenDialog(window, { title: en`Open a shop file`, filters: filters(), properties: ['openFile'] });
  const [file] = answer.filePaths;
  return answer.canceled || file === undefined ? null : openPlace(file);
}

export async function openRecentFile(token: string): Promise<OpenedFile> {
  const file = pathOfRecent(token);
  try {
    return await openPlace(file);
  } catch (error) {
    if (isGone(error)) await forget(file);
    throw error;
  }
}

export async function openPlace(file: string): Promise<OpenedFile> {
  const { text, digest } = await readText(file, LARGEST_FILE_BYTES);
  await remember(file);
  const token = tokenFor({ path: file, digest, good: null, tried: null, drive: await driveOf(file) });
  return { name: shownName(file), text, token, backup: await backupOf(file) };
}

/** The page alone can tell whether a version opens: until it has said so, that version does not become the backup. */
export async function opens(token: string, seen: string | null): Promise<void> {
  const place = placeOf(token);
  place.digest = seen ?? place.digest;
  place.good = place.digest;
}

export function save(token: string, text: string, seen: string | null): Promise<Saved> {
  const place = placeOf(token);
  return inTurn(async () => {
    const present = await digestAt(place.path);
    if (present !== null && !isOurs(place, present) && present !== seen) return { theirs: await theirs(place.path, present) };
    return { aside: await put(place, present, text) };
  });
}

export async function saveAs(window: BrowserWindow, name: string, text: string): Promise<SavedAs | null> {
  const answer = await dialog.showSaveDialog(window, {
    title: en`Save the shop file`,
    defaultPath: suggestedName(name, EXTENSION),
    filters: filters(),
  });
  if (answer.canceled || answer.filePath === '') return null;
  const file = await placeChosen(answer.filePath, EXTENSION);
  return inTurn(async () => {
    const present = await digestAt(file);
    const place = placeAt(file, present);
    const aside = await put(place, present, text);
    await remember(file);
    return { name: shownName(file), token: tokenFor(place), aside };
  });
}

/** Writes, and loses nobody's work: the last version that opened becomes the backup, what a stranger wrote is kept aside. */
async function put(place: Place, present: string | null, text: string): Promise<string | null> {
  if (present === null) await onSameDrive(place.path, place.drive);
  const aside = present === null || isOurs(place, present) ? null : shownName(await keepAside(place.path));
  if (present !== null && present === place.good) await backUp(place.path);
  place.tried = digestOf(text);
  await writeWhole(place.path, text);
  place.digest = place.tried;
  place.drive = await driveOf(place.path);
  return aside;
}

async function theirs(file: string, present: string): Promise<Theirs> {
  try {
    const { text, digest } = await readText(file, LARGEST_FILE_BYTES);
    return { text, what: en`${shownName(file)} was changed by somebody else since it was opened.`, seen: digest };
  } catch (error) {
    return { text: null, what: error instanceof Error ? error.message : path.basename(file), seen: present };
  }
}
