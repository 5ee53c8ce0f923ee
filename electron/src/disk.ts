import { createHash, randomUUID } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { access, constants, copyFile, open, readFile, realpath, rename, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { isGone, spoken } from './diskFailure.ts';

/** What lay at a place, and the digest by which a later change shows. */
interface Reading {
  readonly text: string;
  readonly digest: string;
}

/** Reads a text file; refuses what is too large before reading it, and what is no text, so that saving cannot spoil it. */
export async function readText(file: string, largest_bytes: number): Promise<Reading> {
  const name = path.basename(file);
  const bytes = await spoken(file, 'opened', async () => {
    const found = await stat(file);
    if (!found.isFile()) throw new Error(`${name} is not a file.`);
    if (found.size > largest_bytes) throw new Error(`${name} has ${found.size} bytes; more than ${largest_bytes} are not read.`);
    return readFile(file);
  });
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), digest: digestOf(bytes) };
  } catch {
    throw new Error(`${name} is not a text file.`);
  }
}

export const digestOf = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex');

/** Digest of what lies at a place; null where nothing does. */
export function digestAt(file: string): Promise<string | null> {
  return spoken(file, 'opened', async () => {
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

/** Writes a file whole or not at all: a crash or a full disk leaves what was there before. */
export function writeWhole(file: string, content: string | Uint8Array): Promise<void> {
  return spoken(file, 'saved', async () => {
    const target = await realpath(file).catch(() => file);
    const mode = await modeOf(target);
    await replace(target, (beside) => writeThrough(beside, content, mode));
  });
}

/** As `writeWhole`; what was there before stays beside it as the one backup. */
export async function writeWithBackup(file: string, content: string): Promise<void> {
  await spoken(file, 'saved', async () => {
    const target = await realpath(file).catch(() => file);
    if ((await modeOf(target)) !== null) await replace(backupOf(target), (beside) => copyFile(target, beside));
  });
  await writeWhole(file, content);
}

/** A name that the open dialog shows. */
function backupOf(file: string): string {
  const { dir, name, ext } = path.parse(file);
  return path.join(dir, `${name}.backup${ext}`);
}

/** Null where there is no file yet. A rename would replace a read-only file, so it is asked beforehand. */
async function modeOf(file: string): Promise<number | null> {
  const found = await stat(file).catch(() => null);
  if (found === null) return null;
  await access(file, constants.W_OK);
  if ((found.mode & 0o222) === 0) throw Object.assign(new Error('read-only'), { code: 'EACCES' });
  return found.mode & 0o777;
}

async function replace(target: string, fill: (beside: string) => Promise<void>): Promise<void> {
  const folder = path.dirname(target);
  const beside = path.join(folder, `.${randomUUID()}.part`);
  try {
    await fill(beside);
    await rename(beside, target);
  } catch (error) {
    await rm(beside, { force: true }).catch(() => undefined);
    throw error;
  }
  await syncFolder(folder);
}

/** The content must be on the disk before the new name is, or a power cut could leave the name with nothing behind it. */
async function writeThrough(file: string, content: string | Uint8Array, mode: number | null): Promise<void> {
  const handle = await open(file, 'wx');
  try {
    if (mode !== null) await handle.chmod(mode);
    await handle.writeFile(content);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Windows does not open folders, and keeps names safe by itself. */
async function syncFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}
