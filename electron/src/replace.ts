import { randomUUID } from 'node:crypto';
import { type FileHandle, open, readdir, rename, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { en } from '../../core/src/en.ts';
import { codeOf } from './diskFailure.ts';
import { shownName } from './names.ts';

/** What is written before it takes the name it is meant for. */
const PART = '.part';
const IS_PART = /^\.[0-9a-f-]{36}\.part$/;

/** Fills a file beside the target and gives it the target's name: at every moment the old one or the new one lies there, whole. */
export async function replace(target: string, fill: (beside: string) => Promise<void>): Promise<void> {
  const folder = path.dirname(target);
  const beside = path.join(folder, `.${randomUUID()}${PART}`);
  try {
    await fill(beside);
    await renameOver(beside, target);
  } catch (error) {
    await rm(beside, { force: true }).catch(() => undefined);
    throw error;
  }
  try {
    await syncFolder(folder);
  } catch (cause) {
    throw new Error(en`${shownName(target)} was written, but its disk did not confirm that it will stay: save it again.`, { cause });
  }
}

/** Codes under which a scanner or an indexer holds a file for a moment. */
const HELD = ['EBUSY', 'EPERM', 'EACCES'];
const WAITS_ms = [20, 60, 180];

async function renameOver(from: string, to: string): Promise<void> {
  for (const wait_ms of WAITS_ms) {
    try {
      return await rename(from, to);
    } catch (error) {
      if (!HELD.includes(codeOf(error) ?? '')) throw error;
      await new Promise((resolve) => setTimeout(resolve, wait_ms));
    }
  }
  return rename(from, to);
}

/** Codes of file systems that bring no folder to the disk on demand; Windows opens none at all. They keep names safe by themselves. */
const NO_FOLDER_SYNC = ['EINVAL', 'ENOTSUP', 'ENOSYS', 'EISDIR', 'EPERM', 'EACCES', 'EBADF'];

async function syncFolder(folder: string): Promise<void> {
  try {
    await withOpen(folder, 'r', (handle) => handle.sync());
  } catch (error) {
    if (!NO_FOLDER_SYNC.includes(codeOf(error) ?? '')) throw error;
  }
}

export async function withOpen(file: string, flags: string, work: (handle: FileHandle) => Promise<void>): Promise<void> {
  const handle = await open(file, flags);
  try {
    await work(handle);
  } finally {
    await handle.close();
  }
}

/** A write takes seconds at most: what was begun this long ago was cut off. */
const CUT_OFF_ms = 24 * 60 * 60 * 1000;

/** Takes away what writes left in a folder that were cut off. `now_ms` is by the clock that stamps its files, which may be that of a share. */
export async function clearParts(folder: string, now_ms: number, older_ms = CUT_OFF_ms): Promise<void> {
  const names = await readdir(folder).catch(() => []);
  for (const name of names.filter((one) => IS_PART.test(one))) {
    const part = path.join(folder, name);
    const found = await stat(part).catch(() => null);
    if (found !== null && now_ms - found.mtimeMs >= older_ms) await rm(part, { force: true }).catch(() => undefined);
  }
}
