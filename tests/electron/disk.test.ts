import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { backUp, keepAside, writeWhole } from '../../electron/src/disk.ts';
import { disk } from './faultyDisk.ts';

vi.mock('node:fs/promises', async (original) => {
  const { faulty } = await import('./faultyDisk.ts');
  return faulty(await original<typeof import('node:fs/promises')>());
});

let home: string;
let file: string;
let backup: string;
beforeEach(() => {
  home = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-disk-'));
  file = path.join(home, 'shop.ratiowright');
  backup = path.join(home, 'shop.backup.ratiowright');
  disk.reset();
});
const folder = () => path.basename(home);
const parts = () => readdirSync(home).filter((name) => name.endsWith('.part'));
/** As a save of a version that opens does it. */
async function saveWithBackup(): Promise<void> {
  await backUp(file);
  await writeWhole(file, 'new');
}

test('a file is written beside, brought to the disk, and only then given the name; the name is brought to the disk too [POSIX rename, fsync, from memory]', async () => {
  await writeWhole(file, 'text');
  const writing = disk.steps.filter((step) => !/^(?:stat|access|realpath|readdir) /.test(step));
  expect(writing).toEqual([
    'open beside',
    'write beside',
    'sync beside',
    'close beside',
    'rename beside',
    `open ${folder()}`,
    ...(process.platform === 'win32' ? [] : [`sync ${folder()}`, `close ${folder()}`]),
  ]);
  expect(readFileSync(file, 'utf8')).toBe('text');
  expect(readdirSync(home)).toEqual(['shop.ratiowright']);
});

test('a backup is brought to the disk before it takes the place of the one before [POSIX fsync, from memory]', async () => {
  writeFileSync(file, 'old');
  await backUp(file);
  const at = (step: string) => disk.steps.indexOf(step);
  expect(at('sync beside')).toBeGreaterThan(at('copy shop.ratiowright'));
  expect(at('rename beside')).toBeGreaterThan(at('sync beside'));
  expect(readFileSync(backup, 'utf8')).toBe('old');
});

describe('every call of a save fails once, with every kind of failure', () => {
  test.each(['EIO', 'ENOSPC', 'EACCES', 'EROFS', 'EBUSY', 'ENODEV'])(
    '%s',
    async (code) => {
      let held = 0;
      for (let at = 0, reached = true; reached; at += 1) {
        disk.reset();
        writeFileSync(file, 'old');
        writeFileSync(backup, 'older');
        disk.failAt = at;
        disk.code = code;
        const said = await saveWithBackup().then(
          () => 'saved',
          (error: Error) => error.message,
        );
        const failed = disk.steps[at] ?? 'none';
        reached = failed !== 'none';
        const [now, kept] = [readFileSync(file, 'utf8'), readFileSync(backup, 'utf8')];
        if (said === 'saved') expect([now, kept], failed).toEqual(['new', 'old']);
        else {
          held += 1;
          expect(said, failed).toMatch(
            /^shop(?:\.backup)?\.ratiowright was (?:not saved: .*left as it was\.|written, but its disk did not)/,
          );
          // The sentence is true of the file it names.
          expect(['old', 'older'], failed).toContain(kept);
          expect(now, failed).toBe(said.startsWith('shop.ratiowright was written') ? 'new' : 'old');
        }
        expect(parts(), failed).toEqual([]);
        disk.reset();
        await saveWithBackup();
        expect(readFileSync(file, 'utf8')).toBe('new');
      }
      expect(held).toBeGreaterThan(10);
    },
    60_000,
  );
});

const LEFT = 'What is on the disk was left as it was.';
test.each([
  ['open', 'EACCES', 'it or its folder is read-only'],
  ['open', 'EROFS', 'its disk is read-only'],
  ['open', 'ENOENT', 'its folder or drive is no longer there'],
  ['open', 'ENODEV', 'its drive or share is no longer there'],
  ['open', 'ESTALE', 'its drive or share is no longer there'],
  ['open', 'ETIMEDOUT', 'its share does not answer'],
  ['open', 'ENAMETOOLONG', 'its name or its path is longer than the disk takes'],
  ['open', 'EINVAL', 'the disk does not take its name'],
  ['write', 'ENOSPC', 'the disk is full'],
  ['write', 'EDQUOT', 'the disk space of this account is used up'],
  ['write', 'EFBIG', 'it is larger than its disk takes'],
  ['sync', 'EIO', 'its disk or the connection to it failed'],
  ['rename', 'EPERM', 'it or its folder is read-only'],
  ['rename', 'EBUSY', 'another program holds it'],
  ['write', 'EUNKNOWN', 'the system says EUNKNOWN'],
])(
  'a %s that fails with %s says why in words, and leaves the old file and nothing beside it [names of POSIX errno.h, from memory]',
  async (kind, code, reason) => {
    writeFileSync(file, 'old');
    disk.failing.set(kind, code);
    await expect(writeWhole(file, 'new')).rejects.toThrow(`shop.ratiowright was not saved: ${reason}. ${LEFT}`);
    expect(readFileSync(file, 'utf8')).toBe('old');
    expect(parts()).toEqual([]);
  },
);

test('a file that another program holds for a moment is waited for', async () => {
  writeFileSync(file, 'old');
  disk.failing.set('rename', 'EBUSY');
  disk.times.set('rename', 2);
  await writeWhole(file, 'new');
  expect(disk.steps.filter((step) => step === 'rename beside')).toHaveLength(3);
  expect(readFileSync(file, 'utf8')).toBe('new');
});

test('a disk that brings no folder to itself on demand is no failure [EINVAL of fsync, POSIX, from memory]', async () => {
  for (const text of ['first', 'second']) {
    disk.reset();
    await writeWhole(file, text);
  }
  disk.failAt = disk.steps.indexOf(`open ${folder()}`);
  disk.code = 'EINVAL';
  disk.steps.length = 0;
  await writeWhole(file, 'third');
  expect(disk.steps[disk.failAt]).toBe(`open ${folder()}`);
  expect(readFileSync(file, 'utf8')).toBe('third');
});

test('a read-only file is not replaced, though its folder would allow it', async () => {
  writeFileSync(file, 'old');
  chmodSync(file, 0o444);
  await expect(writeWhole(file, 'new')).rejects.toThrow('shop.ratiowright was not saved: it or its folder is read-only.');
  expect(readFileSync(file, 'utf8')).toBe('old');
});

test('the rights of a file stay as they were', async () => {
  writeFileSync(file, 'old');
  chmodSync(file, 0o660);
  const before = statSync(file).mode;
  await writeWhole(file, 'new');
  expect(statSync(file).mode).toBe(before);
});

test('a link keeps pointing at its file, and the backup lies beside that', async () => {
  mkdirSync(path.join(home, 'real'));
  const target = path.join(home, 'real', 'target.ratiowright');
  writeFileSync(target, 'old');
  symlinkSync(target, file);
  await saveWithBackup();
  expect(readFileSync(target, 'utf8')).toBe('new');
  expect(readdirSync(path.join(home, 'real')).sort()).toEqual(['target.backup.ratiowright', 'target.ratiowright']);
  expect(readdirSync(home).sort()).toEqual(['real', 'shop.ratiowright']);
});

test('what is kept aside takes no name that is taken', async () => {
  for (const text of ['one', 'two']) {
    writeFileSync(file, text);
    await keepAside(file);
  }
  expect(readFileSync(path.join(home, 'shop.aside 1.ratiowright'), 'utf8')).toBe('one');
  expect(readFileSync(path.join(home, 'shop.aside 2.ratiowright'), 'utf8')).toBe('two');
});

test('what a write left that was cut off more than a day ago is taken away at the next; what may still be written, and what is not ours, stays', async () => {
  const id = '0123abcd-0123-4567-89ab-0123456789ab';
  const [old, fresh, other] = [`.${id}.part`, `.${id.replace('0', '1')}.part`, 'download.part'].map((name) => path.join(home, name));
  for (const one of [old, fresh, other]) writeFileSync(one ?? '', 'half');
  const yesterday = new Date(Date.now() - 25 * 60 * 60 * 1000);
  for (const one of [old, other]) utimesSync(one ?? '', yesterday, yesterday);
  await writeWhole(file, 'text');
  expect([old, fresh, other].map((one) => existsSync(one ?? ''))).toEqual([false, true, true]);
});
