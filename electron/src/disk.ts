import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { access, constants, copyFile, readFile, realpath, stat } from 'node:fs/promises';
import path from 'node:path';
import { en } from '../../core/src/en.ts';
import { isGone, spoken } from './diskFailure.ts';
import { namedBeside, shownName } from './names.ts';
import { clearParts, replace, withOpen } from './replace.ts';

/** What lay at a place, and the digest by which a later change shows. */
interface Reading {
  readonly text: string;
  readonly digest: string;
}

/** Reads a text file; refuses what is too large before reading it, and what is no text, so that saving cannot spoil it. */
export async function readText(file: string, largest_bytes: number): Promise<Reading> {
  const name = shownName(file);
  const bytes = await spoken(file, 'opened', async () => {
    const found = await stat(file);
    if (!found.isFile()) throw new Error(en`${name} is not a file.`);
    if (found.size > largest_bytes) throw new Error(en`${name} has ${found.size} bytes; more than ${largest_bytes} are not read.`);
    return readFile(file);
  });
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), digest: digestOf(bytes) };
  } catch {
    throw new Error(en`${name} is not a text file.`);
  }
}

export const digestOf = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex');

/** Digest of what lies at a place, of any size; null where nothing does. */
export function digestAt(file: string): Promise<string | null> {
  return spoken(file, 'saved', async () => {
    const hash = createHash('sha256');
    try {
      for await (const chunk of createReadStream(file)) hash.update(chunk);
    } catch (error) {
      if (isGone(error)) return null;
      throw error;
    }
    return hash.digest('hex');
  });
}

/** The drive that the folder of a file lies on; null where the folder is gone. */
export async function driveOf(file: string): Promise<number | null> {
  return (await stat(path.dirname(file)).catch(() => null))?.dev ?? null;
}

/** Rejects where the folder now lies on another drive: the one before is gone, and only the empty place is left where it was. */
export function onSameDrive(file: string, drive: number | null): Promise<void> {
  return spoken(file, 'saved', async () => {
    const found = await driveOf(file);
    if (drive !== null && found !== null && found !== drive) throw Object.assign(new Error('another drive'), { code: 'ENODEV' });
  });
}

/** Writes a file whole or not at all: a crash or a full disk leaves what was there before. */
export function writeWhole(file: string, content: string | Uint8Array): Promise<void> {
  return spoken(file, 'saved', async () => {
    const target = await targetOf(file);
    const mode = await modeOf(target);
    await replace(target, (beside) => writeThrough(beside, content, mode));
    const written = await stat(target).catch(() => null);
    if (written !== null) await clearParts(path.dirname(target), written.mtimeMs);
  });
}

const BACKUP = 'backup';

/** Keeps a copy of what lies at a place as its one backup, in place of the one before. */
export function backUp(file: string): Promise<void> {
  return copyTo(file, async (target) => namedBeside(target, BACKUP));
}

/** The name of that backup; null where there is none. */
export async function backupOf(file: string): Promise<string | null> {
  const backup = namedBeside(await targetOf(file), BACKUP);
  return (await stat(backup).catch(() => null)) === null ? null : shownName(backup);
}

/** Keeps a copy of what lies at a place under a name that nothing has yet; returns that name. */
export async function keepAside(file: string): Promise<string> {
  let kept = file;
  await copyTo(file, async (target) => {
    for (let number = 1; ; number += 1) {
      kept = namedBeside(target, `aside ${number}`);
      if ((await unlessGone(stat(kept))) === null) return kept;
    }
  });
  return path.basename(kept);
}

function copyTo(file: string, placeOf: (target: string) => Promise<string>): Promise<void> {
  return spoken(file, 'saved', async () => {
    const target = await targetOf(file);
    await modeOf(target);
    await replace(await placeOf(target), async (beside) => {
      await copyFile(target, beside);
      await withOpen(beside, 'r+', (handle) => handle.sync());
    });
  });
}

/** A link keeps pointing at its file: that is what is written. */
const targetOf = async (file: string): Promise<string> => (await unlessGone(realpath(file))) ?? file;

/** Null where there is no file yet. A rename would replace a read-only file, so it is asked beforehand. */
async function modeOf(file: string): Promise<number | null> {
  const found = await unlessGone(stat(file));
  if (found === null) return null;
  await access(file, constants.W_OK);
  if ((found.mode & 0o222) === 0) throw Object.assign(new Error('read-only'), { code: 'EACCES' });
  return found.mode & 0o777;
}

/** Null where nothing lies there: any other failure says nothing about that. */
async function unlessGone<T>(asked: Promise<T>): Promise<T | null> {
  try {
    return await asked;
  } catch (error) {
    if (isGone(error)) return null;
    throw error;
  }
}

/** The content must be on the disk before the new name is, or a power cut could leave the name with nothing behind it. */
function writeThrough(file: string, content: string | Uint8Array, mode: number | null): Promise<void> {
  return withOpen(file, 'wx', async (handle) => {
    if (mode !== null) await handle.chmod(mode);
    await handle.writeFile(content);
    await handle.sync();
  });
}
