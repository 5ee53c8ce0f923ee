import path from 'node:path';
import { PDFDocument } from 'pdf-lib';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serve } from '../../build/serve.mjs';
import { startBrowser } from './browser.ts';
import { openDemo } from './journey.ts';

let browser: Browser;
let address: string;
beforeAll(async () => {
  browser = await startBrowser();
  address = await serve(path.resolve(import.meta.dirname, '../../dist/renderer'), 0);
});
afterAll(() => browser.close());

// Widths in points of 1/72 in: 210 mm [ISO 216] and 8.5 in [ANSI Y14.1], both from memory.
test.each([
  ['en-US', 'Letter', 612],
  ['de-DE', 'A4', 595],
  ['en-GB', 'A4', 595],
] as const)('%s: what is printed is on %s, %i points wide, until another paper is chosen', async (locale, paper, width_pt) => {
  const context = await browser.newContext({ locale });
  const page = await context.newPage();
  await page.goto(address);
  await openDemo(page);
  await page.keyboard.press('Alt+5');
  await page.locator('.paper-holder').waitFor();
  expect(await page.getByRole('radio', { name: paper }).isChecked()).toBe(true);
  const [first] = (await PDFDocument.load(await page.pdf({ preferCSSPageSize: true }))).getPages();
  expect(Math.abs((first?.getWidth() ?? 0) - width_pt)).toBeLessThan(1);
  const other = paper === 'A4' ? 'Letter' : 'A4';
  await page.getByRole('radio', { name: other }).check();
  await page.reload();
  await openDemo(page);
  await page.keyboard.press('Alt+5');
  expect(await page.getByRole('radio', { name: other }).isChecked()).toBe(true);
  await context.close();
});
