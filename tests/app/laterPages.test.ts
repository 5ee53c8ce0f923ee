import { EventEmitter, once } from 'node:events';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { startBrowser } from './browser.ts';
import { openDemo } from './journey.ts';

const ROOT = path.resolve(import.meta.dirname, '../../dist/renderer');
const TYPES: Readonly<Record<string, string>> = { '.js': 'text/javascript', '.css': 'text/css', '.html': 'text/html' };
const ADDRESS = 'http://localhost:1/';

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(() => page.context().close());

/** The built app in a plain browser, where whatever a pattern names is kept back until `give` is called. */
async function opened(kept: RegExp, keepBack: 'late' | 'lost'): Promise<{ give: () => void }> {
  const bell = new EventEmitter();
  const may = once(bell, 'given');
  page = await browser.newPage({ locale: 'en-US' });
  await page.route(`${ADDRESS}**`, async (route) => {
    const name = new URL(route.request().url()).pathname;
    if (kept.test(name)) {
      if (keepBack === 'lost') return route.abort();
      await may;
    }
    const file = path.join(ROOT, name === '/' ? 'index.html' : name);
    return route.fulfill({ body: readFileSync(file), contentType: TYPES[path.extname(file)] ?? 'application/octet-stream' });
  });
  await page.goto(ADDRESS);
  return { give: () => void bell.emit('given') };
}
const here = () => page.locator('nav [aria-current="page"]').textContent();

test('a page whose file is still on its way leaves the one before in place, then opens', async () => {
  const { give } = await opened(/MachinePage-.*\.js$/, 'late');
  await openDemo(page);
  await page.keyboard.press('Alt+1');
  await page.getByRole('slider').or(page.locator('[data-rank="1"]')).first().waitFor();
  expect(await here()).toContain('Options');
  give();
  await expect.poll(here).toContain('Machine');
  expect(await page.locator('[data-place="machines.0.name"]').count()).toBe(1);
});

test('whoever goes elsewhere in the meantime is not taken back', async () => {
  const { give } = await opened(/MachinePage-.*\.js$/, 'late');
  await openDemo(page);
  await page.keyboard.press('Alt+1');
  await page.keyboard.press('Alt+2');
  await expect.poll(here).toContain('Material');
  const loaded = page.waitForResponse(/MachinePage-.*\.js$/);
  give();
  await loaded;
  await page.keyboard.press('Alt+3');
  await expect.poll(here).toContain('Options');
  await page.keyboard.press('Alt+1');
  await expect.poll(here).toContain('Machine');
});

test('a page whose file is lost says so and leaves the work as it is', async () => {
  await opened(/MachinePage-.*\.js$/, 'lost');
  await openDemo(page);
  await page.keyboard.press('Alt+1');
  await expect.poll(() => page.locator('.notice').textContent()).toContain('The page could not be loaded');
  expect(await here()).toContain('Options');
  expect(await page.locator('[data-rank="1"]').count()).toBe(1);
});

test('an example that is lost says so', async () => {
  await opened(/\.ratiowright$/, 'lost');
  await page.getByRole('button', { name: 'Open the invented example' }).click();
  await expect.poll(() => page.locator('.notice').textContent()).toMatch(/fetch/i);
});

test('once the window is idle all pages are there: without the server they open', async () => {
  await opened(/never/, 'late');
  const last = page.waitForResponse(/SheetPage-.*\.js$/);
  await openDemo(page);
  await last;
  await page.unrouteAll();
  await page.route(`${ADDRESS}**`, (route) => route.abort());
  for (const [key, name] of [
    ['Alt+1', 'Machine'],
    ['Alt+2', 'Material'],
    ['Alt+4', 'Reach'],
    ['Alt+5', 'Sheet'],
    ['Alt+3', 'Options'],
  ] as const) {
    await page.keyboard.press(key);
    await expect.poll(here).toContain(name);
  }
});
