import { PDFDocument } from 'pdf-lib';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { RatioCheckRow } from '../../core/src/file/ratioCheckRow.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { checkRecordBody } from '../../core/src/sheet/checkRecordPage.ts';
import { type Paper, SHEET_HEIGHT_mm } from '../../core/src/sheet/pageStyle.ts';
import { wholePage } from '../../core/src/sheet/wholePage.ts';
import { inFull, recorded } from '../core/sheet/demoRecord.ts';
import { inch } from '../core/sheet/demoSheet.ts';
import { startBrowser } from './browser.ts';
import { lineLengths_pt } from './pdfLines.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** As many catches as a check holds, every word as long as a file allows. */
function crowd(file: ShopFile, row: RatioCheckRow): void {
  inFull(file, row);
  const long = (name: string) => `${name} ${'by the north door, behind the second column, '.repeat(5)}`.slice(0, 200);
  file.shop.name = long(file.shop.name);
  for (const one of [...file.materials, ...file.machines]) one.name = long(one.name);
  for (const machine of file.machines) for (const side of [machine.A, machine.B]) for (const pump of side.pumps) pump.name = long('Pump');
  row.by = long('Somebody');
  row.note = long('Note');
  row.catches = Array.from({ length: 50 }, (_, index) => structuredClone(row.catches[index % 3 === 2 ? 0 : index % 4] ?? { A: {}, B: {} }));
}

const alone = (_: ShopFile, row: RatioCheckRow): void => {
  row.catches = row.catches.slice(0, 1);
};

const RECORDS = [
  ['the first check', {}],
  ['the third check, with a decimal comma', { index: 2, say: inch }],
  ['gross, tare and volumes', { change: inFull }],
  ['one catch', { change: alone }],
  ['fifty catches and long names', { change: crowd }],
] as const;

// Paper sizes as Chromium prints them; a millimetre is 72/25.4 points [PDF reference: 72 points to the inch].
const SIZES_pt: Readonly<Record<Paper, readonly [number, number]>> = { A4: [594.96, 841.92], Letter: [612, 792] };

describe.each(RECORDS)('%s', (_, wanted) => {
  test.each(['A4', 'Letter'] as const)('is one page of %s, nothing outside what both papers have', async (paper) => {
    const { record, charts } = recorded(wanted);
    const page = await browser.newPage({ locale: 'en-US' });
    const body = checkRecordBody(
      record,
      charts.map(({ svg }) => svg),
    );
    await page.setContent(wholePage(record.title, body, paper));
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

test('the workings follow on pages of their own', async () => {
  const { record, charts, working } = recorded({ index: 1 });
  const page = await browser.newPage({ locale: 'en-US' });
  const body = checkRecordBody(
    record,
    charts.map(({ svg }) => svg),
    working,
  );
  await page.setContent(wholePage(record.title, body, 'A4'));
  expect((await PDFDocument.load(await page.pdf({ preferCSSPageSize: true }))).getPageCount()).toBeGreaterThan(1);
  await page.close();
});

test('black on white, texts in the pictures too, whatever the screen is set to; every picture says what it shows', async () => {
  const { record, charts } = recorded({ index: 2 });
  const page = await browser.newPage({ locale: 'en-US', colorScheme: 'dark' });
  const body = checkRecordBody(
    record,
    charts.map(({ svg }) => svg),
  );
  await page.setContent(wholePage(record.title, body, 'A4'));
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  const found = await page.evaluate(() => ({
    colours: [...new Set([...document.querySelectorAll('body *')].map((element) => getComputedStyle(element).color))],
    drawn: [...new Set([...document.querySelectorAll('svg text')].map((element) => getComputedStyle(element).fill))],
    verdict_px: Number.parseFloat(getComputedStyle(document.querySelector('.verdict b') ?? document.body).fontSize),
    body_px: Number.parseFloat(getComputedStyle(document.querySelector('.sheet') ?? document.body).fontSize),
    named: [...document.querySelectorAll('.trend')].map((picture) => picture.getAttribute('aria-label')?.slice(0, 10)),
  }));
  expect(found.colours).toEqual(['rgb(0, 0, 0)']);
  expect(found.drawn).toEqual(['rgb(0, 0, 0)']);
  expect(found.verdict_px / found.body_px).toBeGreaterThan(2);
  expect(found.named).toEqual(['Delivery o', 'Delivery o', 'Off-ratio,']);
  await page.close();
});
