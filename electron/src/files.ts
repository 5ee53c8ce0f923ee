import { randomUUID } from 'node:crypto';
import path from 'node:path';
import { type BrowserWindow, dialog } from 'electron';
import { EXTENSION, LARGEST_FILE_BYTES } from '../../core/src/file/envelope.ts';
import type { OpenedFile } from './contract.ts';
import { digestAt, digestOf, readText, writeWithBackup } from './disk.ts';
import { isGone } from './diskFailure.ts';
import { placeChosen, suggestedName } from './names.ts';
import { forget, pathOfRecent, remember } from './recent.ts';

interface Place {
  readonly path: string;
  /** Digest of what was last read or written there: another one on the disk says that somebody else wrote. */
  digest: string;
}

/** Only places that came from a dialog, from the recent list or from the system; the page knows their tokens. */
const places = new Map<string, Place>();

const FILTERS = [{ name: 'Shop files', extensions: [EXTENSION.slice(1)] }];

export async function openFile(window: BrowserWindow): Promise<OpenedFile | null> {
  const answer = await dialog.showOpenDialog(window, { title: 'Open a shop file', filters: FILTERS, properties: ['openFile'] });
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
  return { name: path.basename(file), text, token: tokenFor(file, digest) };
}

export function save(token: string, text: string): Promise<void> {
  const place = places.get(token);
  if (place === undefined) throw new RangeError('This file was not opened here.');
  return inTurn(async () => {
    const present = await digestAt(place.path);
    if (present !== null && present !== place.digest)
      throw new Error(
        `${path.basename(place.path)} was changed by somebody else since it was opened, and was left as it is. Save yours under another name.`,
      );
    await writeWithBackup(place.path, text);
    place.digest = digestOf(text);
  });
}

export async function saveAs(window: BrowserWindow, name: string, text: string): Promise<Omit<OpenedFile, 'text'> | null> {
  const answer = await dialog.showSaveDialog(window, {
    title: 'Save the shop file',
    defaultPath: suggestedName(name, EXTENSION),
    filters: FILTERS,
  });
  if (answer.canceled || answer.filePath === '') return null;
  const file = await placeChosen(answer.filePath, EXTENSION);
  await inTurn(() => writeWithBackup(file, text));
  await remember(file);
  return { name: path.basename(file), token: tokenFor(file, digestOf(text)) };
}

/** A place keeps its token as long as the window is open. */
function tokenFor(file: string, digest: string): string {
  for (const [token, place] of places) {
    if (place.path !== file) continue;
    place.digest = digest;
    return token;
  }
  const token = randomUUID();
  places.set(token, { path: file, digest });
  return token;
}

let last: Promise<void> = Promise.resolve();

/** One write after the other, so that two saves in a row cannot cross. */
function inTurn(work: () => Promise<void>): Promise<void> {
  const turn = last.then(work);
  last = turn.catch(() => undefined);
  return turn;
}
