import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { startBrowser } from './browser.ts';
import { openDemo, renameMachine } from './journey.ts';

// The built page in a plain browser, without a shell; each test has a browser profile of its own.

const ROOT = path.resolve(import.meta.dirname, '../../dist/renderer');
const TYPES: Readonly<Record<string, string>> = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css' };
let browser: Browser;
let context: BrowserContext;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  context = await browser.newContext({ locale: 'en-US' });
  await context.route('**/*', async (route) => {
    const { pathname } = new URL(route.request().url());
    const file = pathname === '/' ? 'index.html' : pathname.slice(1);
    await route.fulfill({
      contentType: TYPES[path.extname(file)] ?? 'application/octet-stream',
      body: readFileSync(path.join(ROOT, file)),
    });
  });
});
afterEach(() => context.close());

async function start(): Promise<Page> {
  const page = await context.newPage();
  await page.goto('http://localhost:1/');
  return page;
}
/** What the browser's own database holds; one that the page has not made yet is not made here, or it would lack its tables. */
const kept = (page: Page): Promise<readonly { readonly text: string }[]> =>
  page.evaluate(async () => {
    const made = (await indexedDB.databases()).some(({ name }) => name === 'ratiowright');
    if (!made) return [];
    return new Promise((resolve, reject) => {
      const opening = indexedDB.open('ratiowright', 1);
      opening.onerror = () => reject(opening.error);
      opening.onsuccess = () => {
        const rows = opening.result.transaction('works').objectStore('works').getAll();
        rows.onsuccess = () => resolve(rows.result);
        rows.onerror = () => reject(rows.error);
      };
    });
  });

test('work outlives a page that is closed; while it is open, another page is not offered it', async () => {
  const first = await start();
  await openDemo(first);
  await renameMachine(first, 'In the browser');
  await expect.poll(async () => (await kept(first))[0]?.text ?? '').toContain('In the browser');

  const beside = await start();
  await openDemo(beside);
  expect(await beside.getByRole('dialog').count()).toBe(0);
  // The browser lets go of a closed page's lock a little later; a page that starts before that takes it for open still.
  const locks = () => beside.evaluate(async () => (await navigator.locks.query()).held?.length ?? 0);
  const held = await locks();
  await first.close();
  await expect.poll(locks).toBeLessThan(held);
  await beside.close();

  const next = await start();
  const dialog = next.getByRole('dialog');
  await expect.poll(() => dialog.textContent()).toContain('example.ratiowright was left unsaved');
  expect(await dialog.locator('li').allTextContents()).toEqual(['name: “Bench 1” → “In the browser”']);
  await dialog.getByRole('button', { name: 'Go on with it' }).click();
  // Keys are not heard before the question is closed and the file is open.
  await next.locator('.optiontable').waitFor();
  await expect.poll(() => dialog.count()).toBe(0);
  await next.keyboard.press('Alt+1');
  await expect.poll(() => next.locator('[data-place="machines.0.name"]').inputValue()).toBe('In the browser');
  // Saved as a download, it need not be kept.
  await next.evaluate(() => Object.assign(window, { showSaveFilePicker: undefined }));
  const downloading = next.waitForEvent('download');
  await next.keyboard.press('Control+s');
  expect(readFileSync(await (await downloading).path(), 'utf8')).toContain('In the browser');
  await expect.poll(() => kept(next)).toEqual([]);
});
