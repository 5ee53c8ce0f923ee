import { mkdtempSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import axe from 'axe-core';
import { PDFDocument } from 'pdf-lib';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { type Paper, SHEET_HEIGHT_mm } from '../../core/src/sheet/pageStyle.ts';
import { quotePageBody } from '../../core/src/sheet/quotePage.ts';
import { wholePage } from '../../core/src/sheet/wholePage.ts';
import { quoted } from '../core/sheet/demoQuote.ts';
import { startBrowser } from './browser.ts';
import { launchDemo } from './journey.ts';
import { lineLengths_pt } from './pdfLines.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** As many materials as a page takes and more, every name as long as a file allows. */
function crowd(file: ShopFile): void {
  const [first] = file.materials;
  if (first === undefined) throw new Error('no material');
  const long = (name: string) => `${name} ${'by the north door, behind the second column, '.repeat(5)}`.slice(0, 200);
  for (let index = 0; index < 14; index += 1) file.materials.push({ ...structuredClone(first), id: `m${index}` });
  file.shop.name = long(file.shop.name);
  for (const row of [...file.materials, ...file.machines]) row.name = long(row.name);
}

const QUOTES = [
  ['Bench 1', {}],
  ['Bench 2', { machine: 'bench-2' }],
  ['seventeen materials with long names', { change: crowd }],
] as const;

// Paper sizes as Chromium prints them; a millimetre is 72/25.4 points [PDF reference: 72 points to the inch].
const SIZES_pt: Readonly<Record<Paper, readonly [number, number]>> = { A4: [594.96, 841.92], Letter: [612, 792] };

describe.each(QUOTES)('%s', (_, wanted) => {
  test.each(['A4', 'Letter'] as const)('is one page of %s, nothing outside what both papers have', async (paper) => {
    const { page: quote, rule } = quoted(wanted);
    const page = await browser.newPage({ locale: 'en-US' });
    await page.setContent(wholePage(quote.title, quotePageBody(quote, rule.svg, rule.height_mm), paper));
    const pdf = await page.pdf({ preferCSSPageSize: true });
    const pages = (await PDFDocument.load(pdf)).getPages();
    expect(pages).toHaveLength(1);
    expect(Math.abs((pages[0]?.getWidth() ?? 0) - SIZES_pt[paper][0])).toBeLessThan(1);
    expect(Math.abs((pages[0]?.getHeight() ?? 0) - SIZES_pt[paper][1])).toBeLessThan(1);
    const bar = (await lineLengths_pt(pdf)).filter((length) => Math.abs((length * 25.4) / 72 - 100) <= 0.5);
    expect(bar).toHaveLength(1);
    await page.emulateMedia({ media: 'print' });
    const { height, wide } = await page.evaluate(() => {
      const sheet = document.querySelector('.sheet')?.getBoundingClientRect();
      if (sheet === undefined) throw new Error('no sheet');
      const beyond = [...document.querySelectorAll('.sheet *')].filter((element) => {
        const box = element.getBoundingClientRect();
        return element.closest('svg') === null && (box.right > sheet.right + 1 || box.left < sheet.left - 1);
      });
      return { height: sheet.height, wide: beyond.map((element) => element.outerHTML.slice(0, 80)) };
    });
    expect(wide).toEqual([]);
    expect((height * 25.4) / 96).toBeLessThanOrEqual(SHEET_HEIGHT_mm + 0.1);
    await page.close();
  });
});

test('in the window: by its key, with the figures of the window that is shown, as PDF, and back', async () => {
  const out = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-quote-')), 'quote.pdf');
  const app = await launchDemo(browser, { save: [out] }, 'Alt+4');
  const { page } = app;
  await page.getByRole('textbox', { name: 'Window from' }).fill('1');
  await expect.poll(() => page.locator('.said').textContent()).toContain('from 1 to 5');
  await page.locator('.hold').focus();
  await page.keyboard.press('q');
  await page.locator('.paper-holder').waitFor();
  await page.getByRole('textbox', { name: 'Number' }).fill('0031');
  await expect.poll(() => page.locator('.paper-holder .sheet').textContent()).toContain('Quote page 0031');
  await expect.poll(() => page.locator('.paper-holder .sheet').textContent()).toContain('Adding 1 wheel');
  const words = ((await page.locator('.paper-holder .sheet').textContent()) ?? '').replaceAll('\u00A0', ' ');
  for (const said of ['191 ratios', '95.42 % of the window', '7.14 %', 'invented example', 'to be proved by a ratio check'])
    expect(words).toContain(said);
  await page.evaluate(axe.source);
  const found = await page.evaluate(async () => {
    const runner = (window as unknown as { axe: typeof axe }).axe;
    return (await runner.run()).violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
  });
  expect(found).toEqual([]);
  await page.getByRole('button', { name: 'Save as PDF' }).click();
  await expect
    .poll(async () => {
      try {
        return (await PDFDocument.load(readFileSync(out))).getPageCount();
      } catch {
        return 0;
      }
    })
    .toBe(1);
  await page.getByRole('button', { name: 'Back to reach' }).click();
  expect(await page.getByRole('textbox', { name: 'Window from' }).inputValue()).toBe('1');
  await app.close();
});
