import { copyFileSync, existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { openDemo, openOffered, renameMachine } from './journey.ts';

// A page that is ended without a word stands for a crash: nothing of it is asked any more.

const DEMO = path.resolve(import.meta.dirname, '../examples/demo.ratiowright');
let browser: Browser;
let app: Launched;
let home: string;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
beforeEach(() => {
  home = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-work-'));
});
afterEach(() => app.close());

const demoFile = (name = 'bench.ratiowright') => {
  const file = path.join(home, name);
  copyFileSync(DEMO, file);
  return file;
};
const kept = () => {
  const folder = path.join(app.stage.userData, 'autosave');
  return existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.work')) : [];
};
const keptText = (): string => {
  const [name] = kept();
  return name === undefined ? '' : JSON.parse(readFileSync(path.join(app.stage.userData, 'autosave', name), 'utf8')).text;
};
const nav = () => app.page.locator('nav small').first().textContent();
const asked = () => app.page.getByRole('dialog');
const button = (name: string) => app.page.getByRole('button', { name, exact: true });

async function open(file: string, userData?: string): Promise<void> {
  app = await launch(browser, { open: [file], ...(userData !== undefined && { userData }) });
  await openOffered(app.page, path.basename(file));
}
/** Ends the page and starts again on the same settings. */
async function crash(): Promise<void> {
  const { userData } = app.stage;
  await app.close();
  app = await launch(browser, { userData });
}

test('work that was not saved is offered at the next start, with its name, its time and what it changes, and goes on where it was', async () => {
  const file = demoFile();
  await open(file);
  await renameMachine(app.page, 'Bench 1, new motor');
  await expect.poll(keptText).toContain('Bench 1, new motor');
  await crash();
  await expect.poll(() => asked().textContent()).toContain('bench.ratiowright was left unsaved');
  expect(await asked().textContent()).toMatch(/It was kept on \d{4}-\d\d-\d\d, \d\d:\d\d\./);
  expect(await asked().locator('h3').allTextContents()).toEqual(['Machine Bench 1']);
  expect(await asked().locator('li').allTextContents()).toEqual(['name: “Bench 1” → “Bench 1, new motor”']);
  await button('Go on with it').click();
  await expect.poll(nav).toBe('bench.ratiowright · not saved');
  await app.page.keyboard.press('Control+s');
  await expect.poll(nav).toBe('bench.ratiowright · saved');
  expect(readFileSync(file, 'utf8')).toContain('Bench 1, new motor');
  await expect.poll(kept).toEqual([]);
  // Undo goes back to what was on the disk before.
  await button('Undo').click();
  await app.page.keyboard.press('Alt+1');
  await expect.poll(() => app.page.locator('[data-place="machines.0.name"]').inputValue()).toBe('Bench 1');
});

test('work that no file ever held is offered too, and saving asks for a place', async () => {
  app = await launch(browser);
  await openDemo(app.page);
  // An example that nobody touched is not worth keeping.
  expect(kept()).toEqual([]);
  await renameMachine(app.page, 'Mine');
  await expect.poll(keptText).toContain('"Mine"');
  await crash();
  await expect.poll(() => asked().textContent()).toContain('it never had one');
  await button('Go on with it').click();
  await expect.poll(nav).toBe('example.ratiowright · not saved');
  expect(app.stage.log.filter(([what]) => what === 'save-dialog')).toEqual([]);
  await app.page.keyboard.press('Control+s');
  await expect.poll(() => app.stage.log.filter(([what]) => what === 'save-dialog').length).toBe(1);
});

test('what is not decided is offered again; what is thrown away is gone', async () => {
  await open(demoFile());
  await renameMachine(app.page, 'Undecided');
  await expect.poll(kept).toHaveLength(1);
  await crash();
  await button('Decide later').click();
  await expect.poll(() => asked().count()).toBe(0);
  await crash();
  await expect.poll(() => asked().textContent()).toContain('Undecided');
  await button('Throw it away').click();
  await expect.poll(kept).toEqual([]);
  await crash();
  await app.page.getByRole('button', { name: 'Start empty' }).waitFor();
  expect(await app.page.evaluate(() => window.shell?.autosaves())).toEqual({ works: [], unreadable: [] });
});

test('work is dropped once it is saved, undone, or given up on closing', async () => {
  const file = demoFile();
  await open(file);
  await renameMachine(app.page, 'Saved');
  await expect.poll(kept).toHaveLength(1);
  await app.page.keyboard.press('Control+s');
  await expect.poll(kept).toEqual([]);
  await renameMachine(app.page, 'Undone');
  await expect.poll(kept).toHaveLength(1);
  await button('Undo').click();
  await expect.poll(kept).toEqual([]);
  await renameMachine(app.page, 'Given up');
  await expect.poll(kept).toHaveLength(1);
  app.stage.answers.message.push({ response: 1, checkboxChecked: false });
  app.window.close();
  await expect.poll(() => app.window.destroyed).toBe(true);
  expect(kept()).toEqual([]);
});

test('work whose file another person changed in the meantime is still told from theirs', async () => {
  const file = demoFile();
  await open(file);
  await renameMachine(app.page, 'Mine');
  await expect.poll(kept).toHaveLength(1);
  writeFileSync(file, readFileSync(file, 'utf8').replace('"Bench 2"', '"Theirs"'));
  await crash();
  await expect.poll(() => asked().textContent()).toContain('Somebody else changed its file since: saving will show what.');
  expect(await asked().locator('li').allTextContents()).toEqual(['name: “Bench 1” → “Mine”']);
  await button('Go on with it').click();
  await expect.poll(nav).toBe('bench.ratiowright · not saved');
  await app.page.keyboard.press('Control+s');
  await expect
    .poll(() => asked().locator('.sides section').first().locator('li').allTextContents())
    .toEqual(['name: “Bench 2” → “Theirs”']);
  expect(await asked().locator('.sides section').last().locator('li').allTextContents()).toEqual(['name: “Bench 1” → “Mine”']);
});

test('work that lies on the disk already is not offered', async () => {
  const file = demoFile();
  await open(file);
  await renameMachine(app.page, 'Saved in time');
  await expect.poll(keptText).toContain('Saved in time');
  writeFileSync(file, keptText());
  await crash();
  await expect.poll(kept).toEqual([]);
  expect(await asked().count()).toBe(0);
});

test('kept work that is damaged is kept aside under another name and told, and the rest is still offered', async () => {
  await open(demoFile());
  await renameMachine(app.page, 'Whole');
  await expect.poll(kept).toHaveLength(1);
  const folder = path.join(app.stage.userData, 'autosave');
  const id = '0123abcd-0123-4567-89ab-0123456789ab';
  writeFileSync(path.join(folder, `${id}.work`), '{"format":"ratiowright unsaved work","ver');
  writeFileSync(path.join(folder, `.${id}.part`), 'half');
  await crash();
  await expect.poll(() => asked().textContent()).toContain('Whole');
  expect(await app.page.locator('.notice p').textContent()).toBe(
    `Unsaved work of an earlier start could not be read. It was kept in the program's own folder as ${id}.work.unreadable.`,
  );
  expect(readdirSync(folder).filter((name) => name.startsWith('.') || name.startsWith(id))).toEqual([`${id}.work.unreadable`]);
});

test('where unsaved work cannot be kept, that is said once', async () => {
  const userData = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-settings-'));
  // A file lies where the folder should be made.
  writeFileSync(path.join(userData, 'autosave'), '');
  await open(demoFile(), userData);
  await renameMachine(app.page, 'One');
  const notice = app.page.locator('.notice p');
  await expect.poll(() => notice.textContent()).toContain('Unsaved work is not kept against a crash: ');
  await app.page.getByRole('button', { name: 'Close' }).click();
  const asks = () => app.stage.log.filter(([, call]) => call === 'autosave').length;
  const before = asks();
  await renameMachine(app.page, 'Two');
  await expect.poll(asks).toBeGreaterThan(before);
  expect(await notice.count()).toBe(0);
});
