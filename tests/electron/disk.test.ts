import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import type { FileHandle } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { beforeEach, expect, test, vi } from 'vitest';
import { writeWhole, writeWithBackup } from '../../electron/src/disk.ts';

// The real disk, with a record of what was asked of it and with failures put in: what a crash or a full disk leaves cannot be waited for.

type Step = 'open' | 'write' | 'sync' | 'close' | 'rename' | 'copy';
const disk = vi.hoisted(() => ({ steps: [] as string[], failing: new Map<string, string>() }));

vi.mock('node:fs/promises', async (original) => {
  const real = await original<typeof import('node:fs/promises')>();
  const { basename, extname } = await import('node:path');
  const step = (kind: Step, file: string) => {
    disk.steps.push(`${kind} ${extname(file) === '.part' ? 'beside' : basename(file)}`);
    const code = disk.failing.get(kind);
    if (code !== undefined) throw Object.assign(new Error(code), { code });
  };
  const watched = (handle: FileHandle, file: string): FileHandle =>
    Object.assign(Object.create(handle), {
      chmod: (mode: number) => handle.chmod(mode),
      async writeFile(content: string) {
        if (disk.failing.has('write')) await handle.writeFile(content.slice(0, 1));
        step('write', file);
        await handle.writeFile(content);
      },
      async sync() {
        step('sync', file);
        await handle.sync();
      },
      async close() {
        step('close', file);
        await handle.close();
      },
    });
  return {
    ...real,
    async open(file: string, flags: string) {
      step('open', file);
      return watched(await real.open(file, flags), file);
    },
    async rename(from: string, to: string) {
      step('rename', from);
      await real.rename(from, to);
    },
    async copyFile(from: string, to: string) {
      step('copy', from);
      await real.copyFile(from, to);
    },
  };
});

let home: string;
let file: string;
beforeEach(() => {
  home = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-disk-'));
  file = path.join(home, 'shop.ratiowright');
  disk.steps.length = 0;
  disk.failing.clear();
});
const folder = () => path.basename(home);

test('a file is written beside, brought to the disk, and only then given the name; the name is brought to the disk too [POSIX rename, fsync, from memory]', async () => {
  await writeWhole(file, 'text');
  expect(disk.steps).toEqual([
    'open beside',
    'write beside',
    'sync beside',
    'close beside',
    'rename beside',
    ...(process.platform === 'win32' ? [] : [`open ${folder()}`, `sync ${folder()}`, `close ${folder()}`]),
  ]);
  expect(readFileSync(file, 'utf8')).toBe('text');
  expect(readdirSync(home)).toEqual(['shop.ratiowright']);
});

test.each([
  ['open', 'EACCES', 'shop.ratiowright was not saved: it or its folder is read-only. What is on the disk was left as it was.'],
  ['open', 'EROFS', 'shop.ratiowright was not saved: it or its folder is read-only. What is on the disk was left as it was.'],
  ['write', 'ENOSPC', 'shop.ratiowright was not saved: the disk is full. What is on the disk was left as it was.'],
  ['write', 'EDQUOT', 'shop.ratiowright was not saved: the disk is full. What is on the disk was left as it was.'],
  ['sync', 'EIO', 'shop.ratiowright was not saved: the system says EIO. What is on the disk was left as it was.'],
  ['rename', 'EPERM', 'shop.ratiowright was not saved: it or its folder is read-only. What is on the disk was left as it was.'],
  ['copy', 'ENOSPC', 'shop.ratiowright was not saved: the disk is full. What is on the disk was left as it was.'],
])('a %s that fails with %s leaves the old file and nothing beside it, and says so', async (kind, code, sentence) => {
  writeFileSync(file, 'old');
  disk.failing.set(kind, code);
  await expect(writeWithBackup(file, 'new')).rejects.toThrow(sentence);
  expect(readFileSync(file, 'utf8')).toBe('old');
  expect(readdirSync(home).filter((name) => name.endsWith('.part'))).toEqual([]);
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
  await writeWithBackup(file, 'new');
  expect(readFileSync(target, 'utf8')).toBe('new');
  expect(readdirSync(path.join(home, 'real')).sort()).toEqual(['target.backup.ratiowright', 'target.ratiowright']);
  expect(readdirSync(home).sort()).toEqual(['real', 'shop.ratiowright']);
});

test('a first save leaves no backup', async () => {
  await writeWithBackup(file, 'first');
  expect(readdirSync(home)).toEqual(['shop.ratiowright']);
});
