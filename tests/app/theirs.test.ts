import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import axe from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { type Launched, launch } from '../harness/launch.ts';
import { preventable } from '../harness/window.ts';
import { startBrowser } from './browser.ts';
import { openOffered, renameMachine } from './journey.ts';

// Two people, one file on a share: one has it open, the other writes to it. And what becomes of work that cannot be saved.

const DEMO = path.resolve(import.meta.dirname, '../examples/demo.ratiowright');
let browser: Browser;
let app: Launched;
let home: string;
let file: string;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  home = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-share-')), 'share');
  mkdirSync(home);
  file = path.join(home, 'bench.ratiowright');
  copyFileSync(DEMO, file);
  app = await launch(browser, { open: [file], save: [path.join(home, 'mine.ratiowright')] });
  await openOffered(app.page, 'bench.ratiowright');
  await renameMachine(app.page, 'Mine');
});
afterEach(() => app.close());

const content = (name = 'bench.ratiowright'): string => readFileSync(path.join(home, name), 'utf8');
const nav = () => app.page.locator('nav small').first().textContent();
const notice = () => app.page.locator('.notice p').textContent();
const dialog = () => app.page.getByRole('dialog');
const linesOf = (name: string) => dialog().getByRole('region', { name }).locator('li').allTextContents();
const choose = (name: string) => dialog().getByRole('button', { name, exact: true }).click();
/** Somebody else writes to the file; then the person saves. */
async function meet(...changes: readonly (readonly [string, string])[]): Promise<void> {
  writeFileSync(
    file,
    changes.reduce((text, [from, to]) => text.replace(from, to), content()),
  );
  await app.page.keyboard.press('Control+s');
  await dialog().waitFor();
}
const THEIRS = ['"Bench 2"', '"Their bench"'] as const;

test('what they and what you changed stands side by side, and what both changed is marked; nothing is written before the answer', async () => {
  await meet(['"Bench 1"', '"Theirs"'], THEIRS);
  expect(await linesOf('What they changed')).toEqual(['name: “Bench 1” → “Theirs” changed by both', 'name: “Bench 2” → “Their bench”']);
  expect(await linesOf('What you changed')).toEqual(['name: “Bench 1” → “Mine” changed by both']);
  expect(content()).toContain('"Theirs"');
  // Keys do not go past the question.
  await app.page.keyboard.press('Control+s');
  expect(await dialog().count()).toBe(1);
  await app.page.keyboard.press('Escape');
  await expect.poll(() => dialog().count()).toBe(0);
  expect(await nav()).toBe('bench.ratiowright · not saved');
  expect(content()).toContain('"Theirs"');
  expect(readdirSync(home)).toEqual(['bench.ratiowright']);
});

test('keeping mine keeps theirs aside', async () => {
  await meet(THEIRS);
  await choose('Keep mine, theirs set aside');
  await expect.poll(nav).toBe('bench.ratiowright · saved');
  expect(await notice()).toBe('Saved. The file that somebody else had left there was kept as bench.aside 1.ratiowright.');
  expect(content()).toContain('"Mine"');
  expect(content('bench.aside 1.ratiowright')).toContain('"Their bench"');
});

test('taking theirs opens it, saved, and undo brings mine back', async () => {
  await meet(THEIRS);
  await choose('Take theirs');
  await expect.poll(nav).toBe('bench.ratiowright · saved');
  expect(await notice()).toBe('Theirs is open now. Undo brings yours back.');
  await app.page.keyboard.press('Alt+1');
  const name = app.page.locator('[data-place="machines.0.name"]');
  await expect.poll(() => name.inputValue()).toBe('Bench 1');
  await app.page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect.poll(() => name.inputValue()).toBe('Mine');
  await app.page.keyboard.press('Control+s');
  await expect.poll(nav).toBe('bench.ratiowright · saved');
  expect(content('bench.backup.ratiowright')).toContain('"Their bench"');
});

test('saving mine under another name leaves theirs where it is', async () => {
  await meet(THEIRS);
  await choose('Save mine under another name');
  await expect.poll(nav).toBe('mine.ratiowright · saved');
  expect([content(), content('mine.ratiowright')]).toEqual([expect.stringContaining('"Their bench"'), expect.stringContaining('"Mine"')]);
  expect(readdirSync(home).sort()).toEqual(['bench.ratiowright', 'mine.ratiowright']);
});

test('a stranger who writes the same content with another hand is no conflict, and theirs becomes the backup', async () => {
  writeFileSync(file, JSON.stringify(JSON.parse(content())));
  await app.page.keyboard.press('Control+s');
  await expect.poll(nav).toBe('bench.ratiowright · saved');
  expect(content('bench.backup.ratiowright')).not.toContain('\n');
});

test('a file that became unreadable is never written over: it can be set aside, not taken', async () => {
  writeFileSync(file, '{"format": "ratiowright shop file", "version": 1,,');
  await app.page.keyboard.press('Control+s');
  await dialog().waitFor();
  expect(await dialog().textContent()).toContain('opened. The file is damaged: line 1, column 50 should have a name in quotation marks.');
  expect(await dialog().getByRole('button', { name: 'Take theirs' }).count()).toBe(0);
  await choose('Keep mine, theirs set aside');
  await expect.poll(nav).toBe('bench.ratiowright · saved');
  expect(content('bench.aside 1.ratiowright')).toBe('{"format": "ratiowright shop file", "version": 1,,');
});

test('a file that is damaged is not opened, and the message names the backup; the one that is open stays', async () => {
  await app.page.keyboard.press('Control+s');
  await expect.poll(nav).toBe('bench.ratiowright · saved');
  writeFileSync(file, '{"format":');
  app.stage.answers.open.push({ canceled: false, filePaths: [file] });
  await app.page.keyboard.press('Control+o');
  await expect
    .poll(notice)
    .toBe(
      'bench.ratiowright was not opened. the file: The file is damaged: line 1, column 11 should have a value. The last version that opened lies beside it as bench.backup.ratiowright.',
    );
  expect(await nav()).toBe('bench.ratiowright · saved');
  expect([content(), content('bench.backup.ratiowright')]).toEqual(['{"format":', readFileSync(DEMO, 'utf8')]);
});

test('what the system hands over while a question is open waits for the answer', async () => {
  await meet(THEIRS);
  const other = path.join(home, 'other.ratiowright');
  copyFileSync(DEMO, other);
  app.standIn.app.emit('second-instance', preventable({}), ['program', other], home);
  await choose('Go back');
  await expect.poll(() => dialog().textContent()).toContain('bench.ratiowright is not saved. If another file takes its place');
  await choose('Lose the changes');
  await expect.poll(nav).toBe('other.ratiowright · saved');
});

test('a drive that vanished is told, the work is still in the window, and saving goes on once it is back', async () => {
  rmSync(home, { recursive: true });
  await app.page.keyboard.press('Control+s');
  await expect
    .poll(notice)
    .toBe(
      'bench.ratiowright was not saved: its folder or drive is no longer there. What is on the disk was left as it was. Your work is still in this window: save it again, or under another name or in another place.',
    );
  expect(await nav()).toBe('bench.ratiowright · not saved');
  expect(await app.page.locator('[data-place="machines.0.name"]').inputValue()).toBe('Mine');
  mkdirSync(home);
  await app.page.keyboard.press('Control+s');
  await expect.poll(nav).toBe('bench.ratiowright · saved');
  expect(content()).toContain('"Mine"');
});

test('what is typed while a save is under way is not taken for saved', async () => {
  // The answer of the disk is held back until something more is typed.
  let go: () => void = () => undefined;
  const held = new Promise<void>((resolve) => {
    go = resolve;
  });
  const save = app.stage.handlers.get('save');
  let called = false;
  app.stage.handlers.set('save', async (...args) => {
    called = true;
    await held;
    return save?.(...args);
  });
  await app.page.keyboard.press('Control+s');
  await expect.poll(() => called).toBe(true);
  await renameMachine(app.page, 'Later');
  go();
  await expect.poll(content).toContain('"Mine"');
  await app.page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect.poll(content).toContain('"Later"');
  await expect.poll(nav).toBe('bench.ratiowright · saved');
});

test('axe finds nothing in the comparison, in light and dark; at 320 px nothing scrolls sideways', async () => {
  await meet(['"Bench 1"', '"Theirs"'], THEIRS);
  const { page } = app;
  await page.evaluate(axe.source);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    const found = await page.evaluate(async () => {
      const runner = (window as unknown as { axe: typeof axe }).axe;
      const { violations } = await runner.run('dialog');
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`);
    });
    expect(found).toEqual([]);
  }
  await page.setViewportSize({ width: 320, height: 640 });
  expect(await dialog().evaluate((box) => box.scrollWidth - box.clientWidth)).toBeLessThanOrEqual(0);
});
