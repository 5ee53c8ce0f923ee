import { copyFileSync, mkdtempSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { openDemo, settled } from './journey.ts';

let browser: Browser;
let app: Launched;
let file: string;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
beforeEach(() => {
  file = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-drop-')), 'dropped.ratiowright');
  copyFileSync(path.resolve(import.meta.dirname, '../examples/demo.ratiowright'), file);
});
afterEach(() => app.close());

/** What a drop brings to the page: whether its default, to show the file instead of the app, was prevented. */
const drop = (page: Page, names: readonly string[], content: string) =>
  page.evaluate(
    ([all, text]) => {
      const dataTransfer = new DataTransfer();
      for (const name of all) dataTransfer.items.add(new File([text], name));
      const send = (kind: string) => !document.body.dispatchEvent(new DragEvent(kind, { dataTransfer, bubbles: true, cancelable: true }));
      return [send('dragover'), send('drop')];
    },
    [names, content] as const,
  );
const listening = (page: Page) => expect.poll(() => drop(page, [], '')).toEqual([false, false]);
const ready = async (page: Page) => {
  await listening(page);
  await expect.poll(() => drop(page, ['a.txt', 'b.txt'], '')).toEqual([true, true]);
};
const text = () => app.page.locator('body').textContent();

test('a shop file dropped on the window is opened from its place, and saved there', async () => {
  app = await launch(browser, { droppable: { 'dropped.ratiowright': file } });
  await ready(app.page);
  expect(await drop(app.page, ['dropped.ratiowright'], 'what the page itself would read')).toEqual([true, true]);
  await settled(app.page);
  expect(app.window.title).toBe('dropped.ratiowright – Ratiowright');
  await app.page.keyboard.press('Alt+1');
  const speed = app.page.locator('[data-place="machines.0.motor.speed"]');
  await speed.fill('81');
  await speed.press('Enter');
  await app.page.keyboard.press('Control+s');
  await expect.poll(() => readFileSync(file, 'utf8')).toContain('"81"');
});

test('several files, or one that is no shop file, are refused in words, and a file that has no place too', async () => {
  app = await launch(browser, { droppable: { 'rack.csv': path.join(path.dirname(file), 'rack.csv') } });
  await ready(app.page);
  await expect.poll(text).toContain('Several files were dropped, and none was opened: drop one shop file at a time.');
  await drop(app.page, ['rack.csv'], 'text');
  await expect.poll(text).toContain('rack.csv was not opened: only shop files (.ratiowright) are.');
  await drop(app.page, ['made.ratiowright'], 'text');
  await expect.poll(text).toContain('What was dropped is no file on this computer.');
});

test('a drop asks before it takes the place of work that is not saved', async () => {
  app = await launch(browser, { droppable: { 'dropped.ratiowright': file } });
  await openDemo(app.page);
  await ready(app.page);
  await app.page.keyboard.press('Alt+1');
  const speed = app.page.locator('[data-place="machines.0.motor.speed"]');
  await speed.fill('81');
  await speed.press('Enter');
  await drop(app.page, ['dropped.ratiowright'], '');
  await app.page.getByRole('button', { name: 'Keep this file' }).click();
  expect(await speed.inputValue()).toBe('81');
  await drop(app.page, ['dropped.ratiowright'], '');
  await app.page.getByRole('button', { name: 'Lose the changes' }).click();
  await expect.poll(() => app.window.title).toBe('dropped.ratiowright – Ratiowright');
});
