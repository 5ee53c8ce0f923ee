import { existsSync, mkdtempSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import axe from 'axe-core';
import { PDFDocument } from 'pdf-lib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { dateAfter } from '../../core/src/days.ts';
import type { QuoteRecord } from '../../core/src/file/quoteRecord.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { CUSTOMER_LENGTH, quoteBody } from '../../core/src/quote/quote.ts';
import { type Paper, SHEET_HEIGHT_mm } from '../../core/src/sheet/pageStyle.ts';
import { wholePage } from '../../core/src/sheet/wholePage.ts';
import { quoted } from '../core/quote/demoQuote.ts';
import { inch } from '../core/sheet/demoSheet.ts';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { openDemo } from './journey.ts';
import { lineLengths_pt } from './pdfLines.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

const long = (name: string) => `${name} ${'by the north door, behind the second column, '.repeat(5)}`.slice(0, 200);

/** As many materials as a page takes and more, every name as long as a file allows. */
function crowd(file: ShopFile, more = 14): void {
  const [first] = file.materials;
  if (first === undefined) throw new Error('no material');
  for (let index = 0; index < more; index += 1) file.materials.push({ ...structuredClone(first), id: `m${index}` });
  file.shop.name = long(file.shop.name);
  for (const row of [...file.materials, ...file.machines]) row.name = long(row.name);
}

const QUOTES = [
  ['Bench 1', {}],
  ['Bench 2', { machine: 'bench-2' }],
  ['seventeen materials with long names', { change: crowd }],
  [
    'twelve materials with long names, in inches with a decimal comma, a long customer and a long note',
    {
      machine: 'bench-2',
      say: inch,
      change: (file: ShopFile) => crowd(file, 9),
      customer: long('Pellow Boats').slice(0, CUSTOMER_LENGTH),
      note: long('For the second line'),
      validUntil: '2026-12-24',
    },
  ],
] as const;

// Paper sizes as Chromium prints them; a millimetre is 72/25.4 points [PDF reference: 72 points to the inch].
const SIZES_pt: Readonly<Record<Paper, readonly [number, number]>> = { A4: [594.96, 841.92], Letter: [612, 792] };

describe.each(QUOTES)('%s', (_, wanted) => {
  test.each(['A4', 'Letter'] as const)('is one page of %s, nothing outside what both papers have', async (paper) => {
    const quote = quoted(wanted);
    const page = await browser.newPage({ locale: 'en-US' });
    await page.setContent(wholePage(quote.page.title, quoteBody(quote), paper));
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

/** The day as the window has it. */
function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}

/** The quote page of the demo, from 1 to 5. */
async function opened(save: readonly string[] = []): Promise<Launched> {
  const app = await launch(browser, { save });
  const { page } = app;
  await openDemo(page);
  await page.keyboard.press('Alt+4');
  await page.getByRole('textbox', { name: 'Window from' }).fill('1');
  await expect.poll(() => page.locator('.said').textContent()).toContain('from 1 to 5');
  await page.locator('.hold').focus();
  await page.keyboard.press('q');
  await page.locator('.paper-holder').waitFor();
  await expect.poll(() => onPaper(page)).toContain('With 1 wheel added');
  return app;
}
const onPaper = async (page: Page) => ((await page.locator('.paper-holder .sheet').textContent()) ?? '').replaceAll('\u00A0', ' ');
const quotesIn = (place: string): readonly QuoteRecord[] => {
  const read = readShopFile(readFileSync(place, 'utf8'));
  if (!read.ok) throw new Error('what was saved does not open');
  return read.value.quotePages ?? [];
};
const temporary = (name: string) => path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-quote-')), name);
const pageCount = async (place: string) => {
  try {
    return (await PDFDocument.load(readFileSync(place))).getPageCount();
  } catch {
    return 0;
  }
};

test('in the window: by its key, with the figures of the window that is shown, as PDF, and back', async () => {
  const out = temporary('quote.pdf');
  const app = await opened([out]);
  const { page } = app;
  const words = await onPaper(page);
  for (const said of ['191 ratios', '95.42 % of the window', '7.14 %', 'invented example', 'to be proved by a ratio check'])
    expect(words).toContain(said);
  await page.evaluate(axe.source);
  const troubles = () =>
    page.evaluate(async () => {
      const runner = (window as unknown as { axe: typeof axe }).axe;
      return (await runner.run()).violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
    });
  expect(await troubles()).toEqual([]);
  await page.getByRole('button', { name: 'Save as PDF' }).click();
  await expect.poll(() => pageCount(out)).toBe(1);
  // Printing keeps it, so the list of kept ones stands beneath.
  await page.locator('[data-quote="0001"]').waitFor();
  expect(await troubles()).toEqual([]);
  await page.getByRole('button', { name: 'Back to reach' }).click();
  expect(await page.getByRole('textbox', { name: 'Window from' }).inputValue()).toBe('1');
  await app.close();
});

test('customer, note and days stand on the page at once, what does not fit is said, and all of it stays while other pages are looked at', async () => {
  const app = await opened();
  const { page } = app;
  const [customer, note, days] = ['For (customer)', 'Note', 'Holds for, days'].map((name) => page.getByRole('textbox', { name }));
  await customer?.fill('Pellow Boats');
  await note?.fill('For the second line.');
  await days?.fill('30');
  await expect.poll(() => onPaper(page)).toContain('for Pellow Boats');
  expect(await onPaper(page)).toContain('For the second line.');
  const until = dateAfter(today(), 30);
  expect(await onPaper(page)).toContain(`Valid until ${until}, unless`);
  expect(await page.locator('.quotefields output').textContent()).toBe(`until ${until}`);
  await customer?.fill('n'.repeat(61));
  await days?.fill('0');
  const said = await page.locator('.quotefields').textContent();
  expect(said).toContain('At most 60 characters, not 61.');
  expect(said).toContain('"0" is not a whole number from 1 to 3650.');
  expect(await onPaper(page)).toContain('for Pellow Boats');
  await customer?.fill('Pellow Boats');
  await days?.fill('30');
  await page.keyboard.press('Alt+1');
  await page.locator('main.desk').waitFor({ state: 'detached' });
  await page.keyboard.press('Alt+4');
  await page.locator('.hold').focus();
  await page.keyboard.press('q');
  await expect
    .poll(() => page.locator('.quotefields input').evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).value)))
    .toEqual(['Pellow Boats', 'For the second line.', '30']);
  await app.close();
});

test('the window itself scrolls neither way, wide or narrow, also with a kept quote beneath the page', async () => {
  const app = await opened();
  const { page } = app;
  await page.getByRole('button', { name: 'Keep this quote' }).click();
  await page.locator('[data-quote]').waitFor();
  const beyond = () =>
    page.evaluate(() => {
      const { scrollWidth, scrollHeight } = document.documentElement;
      return [scrollWidth - innerWidth, window.matchMedia('(max-width: 700px)').matches ? 0 : scrollHeight - innerHeight];
    });
  for (const width of [1280, 320]) {
    await page.setViewportSize({ width, height: 800 });
    await expect.poll(beyond).toEqual([0, 0]);
  }
  const cut = await page
    .locator('.tools button, .quotefields input, .kept h2')
    .evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().right > 321).map((one) => one.textContent));
  expect(cut).toEqual([]);
  await app.close();
});

test('a quote is kept once, in one undo step; the kept one prints as it was, whatever becomes of the machine', async () => {
  const [shop, pdf, later] = [temporary('kept.ratiowright'), temporary('again.pdf'), temporary('later.ratiowright')];
  const app = await opened([shop, pdf, later]);
  const { page } = app;
  const keep = page.getByRole('button', { name: 'Keep this quote' });
  await page.getByRole('textbox', { name: 'For (customer)' }).fill('Pellow Boats');
  await keep.click();
  await page.locator('[data-quote="0001"]').waitFor();
  expect(await keep.isDisabled()).toBe(true);
  expect(await page.locator('.tools').textContent()).toContain('Kept as quote page 0001.');
  const asKept = await onPaper(page);
  expect(asKept).toContain('Quote page 0001');

  // Undo takes just that away, and redo brings it back.
  await page.locator('main').focus();
  await page.keyboard.press('Control+z');
  await expect.poll(() => page.locator('[data-quote]').count()).toBe(0);
  expect(await keep.isDisabled()).toBe(false);
  await page.keyboard.press('Control+Shift+z');
  await page.locator('[data-quote="0001"]').waitFor();

  // Another customer makes another quote with the next number.
  await page.getByRole('textbox', { name: 'For (customer)' }).fill('Pellow Moulds');
  await expect.poll(() => onPaper(page)).toContain('Quote page 0002');
  await keep.click();
  await expect
    .poll(() => page.locator('[data-quote]').evaluateAll((rows) => rows.map((row) => row.getAttribute('data-quote'))))
    .toEqual(['0002', '0001']);
  await page.keyboard.press('Control+s');
  await expect
    .poll(() => (existsSync(shop) ? quotesIn(shop).map(({ customer }) => customer) : []))
    .toEqual(['Pellow Boats', 'Pellow Moulds']);

  // The machine gets another name; the first quote is shown and printed as it was.
  await page.keyboard.press('Alt+1');
  await page.getByRole('textbox', { name: 'Name' }).first().fill('Bench of another name');
  await page.keyboard.press('Alt+4');
  await page.locator('.hold').focus();
  await page.keyboard.press('q');
  await expect.poll(() => onPaper(page)).toContain('What Bench of another name can mix');
  await page.getByRole('button', { name: 'Show quote page 0001' }).click();
  await expect.poll(() => onPaper(page)).toBe(asKept);
  expect(await page.getByRole('button', { name: 'Print quote page 0001' }).count()).toBe(1);
  await page.getByRole('button', { name: 'Save as PDF' }).click();
  await expect.poll(() => pageCount(pdf)).toBe(1);
  // Printing it again keeps nothing new.
  expect(await page.locator('[data-quote]').count()).toBe(2);
  await page.getByRole('button', { name: 'Back to the new quote' }).click();
  await expect.poll(() => onPaper(page)).toContain('Quote page 0003');
  await app.close();
});

test('what was kept can be printed again while the plan is not complete', async () => {
  const app = await opened();
  const { page } = app;
  await page.getByRole('button', { name: 'Keep this quote' }).click();
  await page.locator('[data-quote]').waitFor();
  const asKept = await onPaper(page);
  await page.keyboard.press('Alt+1');
  const speed = page.locator('[data-place="machines.0.motor.speed"]').first();
  await speed.fill('');
  await page.keyboard.press('Alt+4');
  await page.getByRole('button', { name: /^Kept quote pages/ }).click();
  await page.getByText('The plan is not complete yet').waitFor();
  expect(await page.getByRole('button', { name: 'Keep this quote' }).isDisabled()).toBe(true);
  await page.getByRole('button', { name: 'Show quote page 0001' }).click();
  await expect.poll(() => onPaper(page)).toBe(asKept);
  expect(await page.getByRole('button', { name: 'Print quote page 0001' }).isEnabled()).toBe(true);
  await app.close();
});
