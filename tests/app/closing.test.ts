import { copyFileSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { openDemo, openOffered } from './journey.ts';

let browser: Browser;
let app: Launched;
let folder: string;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
beforeEach(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-closing-'));
});
afterEach(() => app.close());

const logged = (what: string) => app.stage.log.filter(([first]) => first === what);
const [SAVE, LOSE, BACK] = [0, 1, 2];
const DEMO = path.resolve(import.meta.dirname, '../examples/demo.ratiowright');

/** A shop file that is open and changed. */
async function changed(choices: Parameters<typeof launch>[1]): Promise<string> {
  const file = path.join(folder, 'shop.ratiowright');
  copyFileSync(DEMO, file);
  app = await launch(browser, { ...choices, open: [file] });
  await openOffered(app.page, 'shop.ratiowright');
  await app.page.keyboard.press('Alt+1');
  const speed = app.page.locator('[data-place="machines.0.motor.speed"]');
  await speed.fill('81');
  await speed.press('Enter');
  await expect.poll(() => app.window.edited).toBe(true);
  return file;
}

test.each([
  ['the window', () => app.window.close()],
  ['the program', () => app.standIn.app.quit()],
])('closing %s with unsaved work asks; Escape goes back, and what is lost is lost only when told so', async (_what, close) => {
  const file = await changed({ message: [BACK ?? 2, LOSE ?? 1] });
  const before = readFileSync(file, 'utf8');
  close();
  await expect.poll(() => logged('message').length).toBe(1);
  expect(logged('message')[0]?.[1]).toMatchObject({ buttons: ['Save', 'Close without saving', 'Go back'], defaultId: 0, cancelId: 2 });
  await new Promise(setImmediate);
  expect(app.window.destroyed).toBe(false);
  close();
  await expect.poll(() => app.window.destroyed).toBe(true);
  expect(readFileSync(file, 'utf8')).toBe(before);
});

test('Save saves where the file came from, and then closes', async () => {
  const file = await changed({ message: [SAVE ?? 0] });
  app.standIn.app.quit();
  await expect.poll(() => app.window.destroyed).toBe(true);
  expect(readFileSync(file, 'utf8')).toContain('"81"');
  expect(logged('message')).toHaveLength(1);
});

test('Save asks for a place where there is none; without one the window stays, with the work in it', async () => {
  const place = path.join(folder, 'new.ratiowright');
  app = await launch(browser, { message: [SAVE ?? 0, SAVE ?? 0] });
  await openDemo(app.page);
  await app.page.keyboard.press('Alt+1');
  const speed = app.page.locator('[data-place="machines.0.motor.speed"]');
  await speed.fill('81');
  await speed.press('Enter');
  await expect.poll(() => app.window.edited).toBe(true);
  app.window.close();
  await expect.poll(() => logged('save-dialog').length).toBe(1);
  // The page hears the answer of the dialog and has had its say.
  await app.page.evaluate(() => window.shell?.recent());
  expect([app.window.destroyed, await speed.inputValue()]).toEqual([false, '81']);
  app.stage.answers.save.push({ canceled: false, filePath: place });
  app.window.close();
  await expect.poll(() => app.window.destroyed).toBe(true);
  expect(readFileSync(place, 'utf8')).toContain('"81"');
});

test('where saving fails, the window stays and says why', async () => {
  const file = await changed({ message: [SAVE ?? 0] });
  writeFileSync(file, 'theirs');
  app.window.close();
  await expect.poll(() => app.page.locator('body').textContent()).toContain('was changed by somebody else');
  expect(app.window.destroyed).toBe(false);
  expect(readFileSync(file, 'utf8')).toBe('theirs');
});

test('closing asks once however often it is asked for, and not at all when nothing is unsaved', async () => {
  app = await launch(browser, { message: [BACK ?? 2] });
  await app.page.evaluate(() => window.shell?.unsaved(true, 'a'));
  app.window.close();
  app.window.close();
  await expect.poll(() => logged('message').length).toBe(1);
  await new Promise(setImmediate);
  await app.page.evaluate(() => window.shell?.unsaved(false, 'a'));
  app.window.close();
  expect(app.window.destroyed).toBe(true);
  expect(logged('message')).toHaveLength(1);
});

test('the window opens where it stood, on the screen that is there, and as large as that allows', async () => {
  app = await launch(browser);
  expect(app.window.options).toMatchObject({ width: 1280, height: 860, minWidth: 640, minHeight: 480 });
  expect(app.window.options).not.toHaveProperty('x');
  const { userData } = app.stage;
  const next = async (displays?: readonly { x: number; y: number; width: number; height: number }[]) => {
    app.window.close();
    await app.close();
    app = await launch(browser, { userData, ...(displays === undefined ? {} : { displays }) });
    const { x, y, width, height } = app.window.options;
    return { x, y, width, height };
  };
  app.window.bounds = { x: 300, y: 200, width: 1000, height: 700 };
  app.window.maximized = true;
  expect(await next()).toEqual({ x: 300, y: 200, width: 1000, height: 700 });
  expect(app.window.maximized).toBe(true);
  app.window.bounds = { x: 2000, y: 100, width: 3000, height: 400 };
  app.window.maximized = false;
  const second = { x: 1920, y: 0, width: 1600, height: 900 };
  expect(await next([{ x: 0, y: 0, width: 1920, height: 1040 }, second])).toEqual({ x: 2000, y: 100, width: 1600, height: 480 });
  expect(app.window.maximized).toBe(false);
  // The second screen is gone: the window is not put where nobody sees it.
  expect(await next()).toEqual({ x: undefined, y: undefined, width: 1280, height: 860 });
  // Its title bar would lie above the screen, or all but a corner beside it.
  for (const [x, y] of [
    [100, -40],
    [1900, 100],
    [-900, 100],
    [100, 1030],
  ] as const) {
    app.window.bounds = { x, y, width: 1000, height: 700 };
    expect(await next(), `${x}, ${y}`).toEqual({ x: undefined, y: undefined, width: 1280, height: 860 });
  }
});

test.each(['{', '7', 'null', '{"x":1.5,"y":0,"width":800,"height":600}', '{"x":0,"y":0,"width":"800","height":600}', '{"x":0}'])(
  'a damaged place %s counts as none',
  async (damaged) => {
    writeFileSync(path.join(folder, 'window.json'), damaged);
    app = await launch(browser, { userData: folder });
    const { x, width, height } = app.window.options;
    expect([x, width, height]).toEqual([undefined, 1280, 860]);
  },
);
