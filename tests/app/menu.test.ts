import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { MenuItemConstructorOptions } from 'electron';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { type Launched, launch, submenu } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { openDemo, settled } from './journey.ts';

// The keys of each platform in brackets are those its own guides name [from memory].

let browser: Browser;
let app: Launched;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
const platform = process.platform;
const as = (name: NodeJS.Platform) => Object.defineProperty(process, 'platform', { value: name });
afterEach(async () => {
  as(platform);
  await app.close();
});

const DEMO = path.resolve(import.meta.dirname, '../examples/demo.ratiowright');
const items = (menu: string) => submenu(app.standIn.menu(), menu);
const words = (menu: string) => items(menu).flatMap(({ label }) => label ?? []);
const item = (menu: string, id: string) => items(menu).find((one) => one.id === id);
const again = (): readonly MenuItemConstructorOptions[] => {
  const list = items('File').find(({ label }) => label === 'Open again')?.submenu;
  return Array.isArray(list) ? list : [];
};
const told = () => expect.poll(() => words('Page').length).toBe(6);

test('the native menu shows the commands of the page, those that can be run now, and follows what is open', async () => {
  app = await launch(browser);
  await told();
  expect(words('File')).toEqual([
    'Open the invented example',
    'Start empty',
    'Open a file',
    'Save',
    'Save as',
    'Print the sheet',
    'Open again',
    'Quit',
  ]);
  expect(words('Edit').slice(0, 2)).toEqual(['Undo', 'Redo']);
  expect(words('Page')).toEqual(['Machine', 'Material', 'Options', 'Reach', 'Sheet', 'Ratio check']);
  expect(words('Help')).toEqual(['About and licences', 'Help', 'Look up a word']);
  const enabled = () => ['file.open', 'file.save', 'start.empty'].map((id) => item('File', id)?.enabled);
  expect(enabled()).toEqual([true, false, true]);
  await openDemo(app.page);
  await expect.poll(enabled).toEqual([true, true, false]);
  expect(item('Edit', 'edit.undo')?.enabled).toBe(false);
  expect(items('File').filter(({ id }) => id === 'file.handedOver' || id === 'file.saveAndClose')).toEqual([]);
});

test('a click in the native menu runs the command, as its key does', async () => {
  app = await launch(browser);
  await told();
  app.menuClick('File', 'Open the invented example');
  await settled(app.page);
  app.menuClick('Page', 'Machine');
  await expect.poll(() => app.page.locator('main.machine').count()).toBe(1);
  await app.page.keyboard.press('Alt+3');
  await expect.poll(() => app.page.locator('main.options').count()).toBe(1);
});

test.each([
  ['linux', 'CommandOrControl+Shift+Z', 'quit', false],
  ['win32', 'Ctrl+Y', 'quit', false],
  ['darwin', 'CommandOrControl+Shift+Z', 'close', true],
] as const)('on %s the keys and roles are those of the platform', async (name, redo, end, appMenu) => {
  as(name);
  app = await launch(browser);
  await told();
  expect(item('Edit', 'edit.redo')?.accelerator).toBe(redo.replace(/^Ctrl/, 'CommandOrControl'));
  expect([item('File', 'file.saveAs')?.accelerator, item('Page', 'page.reach')?.accelerator]).toEqual([
    'CommandOrControl+Shift+S',
    'Alt+4',
  ]);
  const menu = app.standIn.menu();
  expect(menu.some(({ role }) => role === 'appMenu')).toBe(appMenu);
  expect(items('File').at(-1)?.role).toBe(end);
  const roles = [...menu, ...items('Edit'), ...items('View')].flatMap(({ role }) => role ?? []);
  expect(roles).toEqual(expect.arrayContaining(['cut', 'copy', 'paste', 'selectAll', 'resetZoom', 'togglefullscreen', 'windowMenu']));
  // A letter alone would be taken from whoever types; and what the page hears itself the menu only shows.
  expect(item('File', 'start.demo')).not.toHaveProperty('accelerator');
  const all = menu.flatMap(({ label }) => (label === undefined ? [] : items(label)));
  expect(all.filter(({ accelerator, registerAccelerator }) => accelerator !== undefined && registerAccelerator !== false)).toEqual([]);
});

test.each([
  ['Linux x86_64', 'Ctrl+O', 'Ctrl+Shift+S', 'Ctrl+Shift+Z'],
  ['Win32', 'Ctrl+O', 'Ctrl+Shift+S', 'Ctrl+Y'],
  ['MacIntel', '⌘O', '⇧⌘S', '⇧⌘Z'],
])('on %s the page writes its keys as the platform does [guides of Apple and Microsoft]', async (name, open, saveAs, redo) => {
  app = await launch(browser);
  const { page } = app;
  await page.addInitScript((is) => Object.defineProperty(navigator, 'platform', { get: () => is }), name);
  await page.reload();
  await page.locator('.ways').waitFor();
  expect(await page.locator('.ways kbd').allTextContents()).toEqual(['D', 'N', open]);
  const title = (command: string) => page.getByRole('navigation').getByRole('button', { name: command, exact: true }).getAttribute('title');
  expect([await title('Save as'), await title('Redo')]).toEqual([saveAs, redo]);
});

test('redo hears the keys of every platform, and pages open on a Mac too, where Alt types other signs', async () => {
  app = await launch(browser);
  await openDemo(app.page);
  await app.page.evaluate(() =>
    window.dispatchEvent(new KeyboardEvent('keydown', { key: '¡', code: 'Digit1', altKey: true, cancelable: true })),
  );
  await expect.poll(() => app.page.locator('main.machine').count()).toBe(1);
  const speed = app.page.locator('[data-place="machines.0.motor.speed"]');
  const before = await speed.inputValue();
  await speed.fill('80');
  await speed.press('Enter');
  await speed.blur();
  for (const redo of ['Control+y', 'Control+Shift+z']) {
    await app.page.keyboard.press('Control+z');
    await expect.poll(() => speed.inputValue()).toBe(before);
    await app.page.keyboard.press(redo);
    await expect.poll(() => speed.inputValue()).toBe('80');
  }
});

test('the files used last stand in the menu and in the list of the system; one that is gone leaves it, and it can be emptied', async () => {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-menu-'));
  const files = ['first & only.ratiowright', 'second.ratiowright'].map((name) => path.join(folder, name));
  for (const file of files) copyFileSync(DEMO, file);
  app = await launch(browser, { open: files });
  await told();
  expect(again()).toEqual([{ label: 'No files yet', enabled: false }]);
  for (const file of files) {
    await app.page.evaluate(() => window.shell?.open());
    await expect.poll(() => app.stage.log).toContainEqual(['recent-document', file]);
  }
  const shown = () => again().flatMap(({ label }) => label ?? []);
  const [first = '', second = ''] = files;
  await expect.poll(shown).toEqual([second, first.replace('&', '&&'), 'Empty this list']);
  const click = (index: number) => Reflect.apply(again()[index]?.click ?? (() => undefined), undefined, []);
  click(1);
  await expect.poll(() => app.window.title).toBe('first & only.ratiowright – Ratiowright');
  rmSync(second);
  await expect.poll(() => shown()[0]).toContain('first');
  click(1);
  await expect
    .poll(() => app.page.locator('body').textContent())
    .toContain('second.ratiowright was not opened: it is no longer where it was.');
  await expect.poll(() => shown().length).toBe(2);
  click(again().length - 1);
  await expect.poll(shown).toEqual(['No files yet']);
  expect(app.stage.log).toContainEqual(['no-recent-documents']);
});

test('files opened at the same moment all come into the list, and the menu sent last is the one that stays', async () => {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-menu-'));
  const files = Array.from({ length: 8 }, (_one, index) => path.join(folder, `shop${index}.ratiowright`));
  for (const file of files) copyFileSync(DEMO, file);
  app = await launch(browser, { open: files });
  await told();
  await app.page.evaluate((count) => Promise.all(Array.from({ length: count }, () => window.shell?.open())), files.length);
  expect((await app.page.evaluate(() => window.shell?.recent()))?.map(({ name }) => name).sort()).toEqual(
    files.map((file) => path.basename(file)),
  );
  const entry = (id: string) => [{ id: `page.${id}`, title: id, key: null, windowsKey: null, enabled: true }];
  await app.page.evaluate(
    (lists) => Promise.all(lists.map((list) => window.shell?.menu(list))),
    Array.from({ length: 20 }, (_one, index) => entry(String(index))),
  );
  expect(words('Page')).toEqual(['19']);
});
