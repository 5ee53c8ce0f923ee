import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { numberOf, textOf } from '../kill/texts.mjs';

// The built main module saves in a child process that is killed (SIGKILL) at moments left to chance; what lies on the disk then is looked at.

const SAVER = path.resolve(import.meta.dirname, '../kill/saver.mjs');
const KILLS = Number(process.env.KILLS ?? 200);
/** Side by side, each in a folder of its own: most of a round is the start of its child. */
const LANES = 2;
/** From the first write on; a save with its backup and its kept work takes some 10 ms. */
const LATEST_ms = 40;

interface Round {
  /** The last number of which it was said that it was being saved, that it was saved, that it was kept. */
  readonly saving: number;
  readonly saved: number;
  readonly kept: number;
}

/** Starts the child, kills it at a moment left to chance, and returns what it had said. */
async function round(file: string, userData: string, first: number): Promise<Round> {
  const child = spawn(process.execPath, [SAVER, file, userData, String(first)], { stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  let failure = '';
  child.stderr.on('data', (text) => {
    failure += text;
  });
  const over = new Promise<NodeJS.Signals | null>((resolve) => child.on('close', (_code, signal) => resolve(signal)));
  let armed = false;
  child.stdout.on('data', (text) => {
    said += text;
    if (armed) return;
    armed = true;
    setTimeout(() => child.kill('SIGKILL'), Math.random() * LATEST_ms);
  });
  expect(await over, failure).toBe('SIGKILL');
  const last = (word: string) => Math.max(first - 1, ...[...said.matchAll(new RegExp(`^${word} (\\d+)$`, 'gm'))].map(([, n]) => Number(n)));
  return { saving: last('save'), saved: last('saved'), kept: last('kept') };
}

async function lane(kills: number): Promise<{ amid: number; parts: number }> {
  const home = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-kill-'));
  const userData = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-kill-settings-'));
  const [file, backup] = ['shop.ratiowright', 'shop.backup.ratiowright'].map((name) => path.join(home, name));
  if (file === undefined || backup === undefined) throw new Error('no files');
  const read = (place: string) => numberOf(readFileSync(place, 'utf8'));
  writeFileSync(file, textOf(0));
  let [before, amid] = [0, 0];
  const left = new Map<string, number>();
  for (let kill = 0; kill < kills; kill += 1) {
    const { saving, saved, kept } = await round(file, userData, before + 1);
    const now = read(file);
    // The old one or the new one, whole; what was said to be saved is.
    expect([Math.max(saved, before), saving]).toContain(now);
    if (saving > saved) amid += 1;
    if (existsSync(backup)) expect(read(backup)).toBeLessThanOrEqual(now ?? 0);
    const folder = path.join(userData, 'autosave');
    const works = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.work')) : [];
    for (const name of works) {
      const work = JSON.parse(readFileSync(path.join(folder, name), 'utf8'));
      const number = numberOf(work.text) ?? -1;
      expect(numberOf(work.base)).toBe(number - 1);
      // Work that an earlier start left is never touched again.
      if (left.has(name)) expect(number).toBe(left.get(name));
      else expect(number).toBeGreaterThanOrEqual(kept);
      left.set(name, number);
    }
    // Two are enough to see that a new start leaves the earlier ones alone.
    for (const name of [...left.keys()].slice(0, -2)) {
      rmSync(path.join(folder, name));
      left.delete(name);
    }
    before = now ?? before;
  }
  const parts = readdirSync(home).filter((name) => name.endsWith('.part')).length;
  for (const place of [home, userData]) rmSync(place, { recursive: true });
  return { amid, parts };
}

test(`after each of ${KILLS} kills the file is the old one or the new one, whole; so are the backup and the kept work [POSIX rename is atomic, from memory]`, async () => {
  const lanes = await Promise.all(Array.from({ length: LANES }, () => lane(Math.ceil(KILLS / LANES))));
  const sum = (of: 'amid' | 'parts') => lanes.reduce((total, one) => total + one[of], 0);
  console.log(`${KILLS} kills: ${sum('amid')} amid a save, ${sum('parts')} of them while it was being written`);
  // Kills that never fall into a save would show nothing.
  expect(sum('amid')).toBeGreaterThan(KILLS / 10);
  expect(sum('parts')).toBeGreaterThan(0);
}, 300_000);
