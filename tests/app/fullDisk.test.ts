import { spawnSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';

// The built main module in a child process on a disk that is really full. A text has 400 kB: with its backup and the new one, 1200 kB are needed.

const FILLER = path.resolve(import.meta.dirname, '../kill/filler.mjs');
const SMALL_DISK = 'size=1400k';
const folder = () => mkdtempSync(path.join(os.tmpdir(), 'ratiowright-full-'));
/** Runs the child after a line of the shell, in which `$1` is the folder, and further lines before and after its first save. */
function fill(first: string, program: readonly string[], taken_bytes: number, [before, after] = [':', ':']): unknown {
  const [home, userData] = [folder(), folder()];
  const script = `${first} && exec "$2" "$3" "$1" "$4" "$5" "$6" "$7"`;
  const [name = 'sh', ...flags] = [
    ...program,
    'sh',
    '-c',
    script,
    'sh',
    home,
    process.execPath,
    FILLER,
    userData,
    String(taken_bytes),
    before ?? '',
    after ?? '',
  ];
  const { stdout, stderr } = spawnSync(name, flags, { encoding: 'utf8' });
  if (stdout === '') throw new Error(stderr);
  return JSON.parse(stdout);
}
const FULL = 'shop.ratiowright was not saved: the disk is full. What is on the disk was left as it was.';
const WRITTEN = { full: FULL, room: { aside: null } };
const SAVED = { file: 3, backup: 1, names: ['shop.backup.ratiowright', 'shop.ratiowright'] };

const MOUNT = `mount -t tmpfs -o ${SMALL_DISK} tmpfs "$1"`;

/** Whether this account may have a disk of its own: a container may forbid it, and other systems have none such. */
const mayMount = spawnSync('unshare', ['-rm', 'mount', '-t', 'tmpfs', '-o', SMALL_DISK, 'tmpfs', os.tmpdir()]).status === 0;
if (mayMount) {
  test.each([
    ['the new file', 500_000, { file: 1, backup: 1, names: ['ballast', 'shop.backup.ratiowright', 'shop.ratiowright'] }],
    ['the backup', 900_000, { file: 1, backup: 'none', names: ['ballast', 'shop.ratiowright'] }],
  ])(
    'on a disk with no room for %s, the old one stays whole and nothing half is left; with room it is saved',
    (_what, taken_bytes, held) => {
      expect(fill(MOUNT, ['unshare', '-rm'], taken_bytes)).toEqual({ ...WRITTEN, held, last: SAVED });
    },
  );

  test('a disk that became read-only is told, and saved to once it is no longer', () => {
    const remount = (as: string) => `mount -o remount,${as} "$1"`;
    expect(fill(MOUNT, ['unshare', '-rm'], 1, [remount('ro'), remount('rw')])).toEqual({
      full: 'shop.ratiowright was not saved: its disk is read-only. What is on the disk was left as it was.',
      held: { file: 1, backup: 'none', names: ['ballast', 'shop.ratiowright'] },
      room: { aside: null },
      last: SAVED,
    });
  });

  test('a drive that was taken away leaves an empty folder, and nothing is saved into that', () => {
    const gone = 'shop.ratiowright was not saved: its drive or share is no longer there. What is on the disk was left as it was.';
    const empty = { file: 'none', backup: 'none', names: [] };
    expect(fill(MOUNT, ['unshare', '-rm'], 1, ['umount -l "$1"', ':'])).toEqual({ full: gone, held: empty, room: gone, last: empty });
  });
}

if (process.platform !== 'win32')
  test('where no file may be so large, a write that ends in its middle leaves the old one whole [RLIMIT_FSIZE, POSIX, from memory]', () => {
    const large = 'shop.ratiowright was not saved: it is larger than its disk takes. What is on the disk was left as it was.';
    // In blocks of 512 bytes; the first text is written before the limit is met.
    expect(fill('ulimit -f 784', [], 1)).toEqual({
      full: large,
      held: { file: 1, backup: 1, names: ['ballast', 'shop.backup.ratiowright', 'shop.ratiowright'] },
      room: large,
      last: { file: 1, backup: 1, names: ['shop.backup.ratiowright', 'shop.ratiowright'] },
    });
  });
