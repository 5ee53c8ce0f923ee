import { mkdtempSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import axe from 'axe-core';
import { PDFDocument } from 'pdf-lib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { FIELD_PAGES } from '../../core/src/help/fields/index.ts';
import { FIRST_CHANGE } from '../../core/src/help/firstChange.ts';
import { PAGE_HELP } from '../../core/src/help/pageHelp.ts';
import { WORDS } from '../../core/src/help/words/index.ts';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { launchDemo, tabTo } from './journey.ts';

let browser: Browser;
let app: Launched;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(() => app.close());

async function opened(key: string | null, choices: Parameters<typeof launch>[1] = {}): Promise<void> {
  app = await launchDemo(browser, choices, key);
  page = app.page;
}
const help = () => page.locator('.help');
const head = () => page.locator('.help h2').first().textContent();
const walk = async () => ((await page.locator('.walk p').textContent()) ?? '').replaceAll('\u00A0', ' ').trim();
const openFolds = () =>
  page.evaluate(() => {
    for (const fold of document.querySelectorAll('main details')) if (fold instanceof HTMLDetailsElement) fold.open = true;
  });

/** Every box in sight takes the cursor in turn; those that help has no line for, or that are not described by it. */
const boxesWithoutHelp = () =>
  page.evaluate(() => {
    const boxes = [...document.querySelectorAll<HTMLElement>('main input, main select, main textarea, nav select')].filter(
      (box) => box.checkVisibility() && box.getAttribute('type') !== 'file' && !box.hasAttribute('disabled'),
    );
    const without = boxes.filter((box) => {
      box.focus();
      const line = document.querySelector('#help-line');
      return line === null || !box.getAttribute('aria-describedby')?.split(' ').includes('help-line') || document.activeElement !== box;
    });
    return { count: boxes.length, without: without.map((box) => box.outerHTML.slice(0, 120)) };
  });

describe('beside the page', () => {
  test('F1 opens it in a box, and it follows the cursor by keyboard alone; Esc closes it, and the cursor stays', async () => {
    await opened('Alt+1');
    await tabTo(page, 'machines.0.motor.speed');
    await page.keyboard.press('F1');
    await expect.poll(head).toBe('Motor speed');
    await tabTo(page, 'machines.0.stages.0.takeUp');
    expect(await head()).toBe('Take-up');
    expect(((await help().textContent()) ?? '').replaceAll('\u00A0', ' ')).toContain('at least 0 pitches, at most 100 pitches');
    const described = () => page.locator('[data-place="machines.0.stages.0.takeUp"]').getAttribute('aria-describedby');
    expect(await described()).toMatch(/-hint help-line$/);
    await page.keyboard.press('Escape');
    expect(await help().count()).toBe(0);
    expect(await described()).toMatch(/-hint$/);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-place'))).toBe('machines.0.stages.0.takeUp');
  });

  test.each([
    ['machine', 'Alt+1'],
    ['material', 'Alt+2'],
    ['options', 'Alt+3'],
    ['reach', 'Alt+4'],
    ['sheet', 'Alt+5'],
    ['check', 'Alt+6'],
  ] as const)('%s: its own line first, then one for every box', async (name, key) => {
    const { title, what } = PAGE_HELP[name];
    await opened(key);
    await page.locator('main').waitFor();
    await page.keyboard.press('F1');
    await expect.poll(head).toBe(title);
    expect(await help().textContent()).toContain(what);
    if (name === 'reach') await page.getByRole('button', { name: 'Make the quote page' }).waitFor();
    await openFolds();
    const found = await boxesWithoutHelp();
    expect(found.without).toEqual([]);
    expect(found.count).toBeGreaterThan(3);
  });

  test('what comes only when it is asked for has its lines too', async () => {
    await opened('Alt+2');
    await page.keyboard.press('F1');
    await help().waitFor();
    await page.locator('[name="pick.material"]').selectOption({ index: 1 });
    await page.locator('[data-place="materials.1.chemistry.index"]').waitFor();
    expect((await boxesWithoutHelp()).without).toEqual([]);
    await page.getByRole('button', { name: 'Paste a list' }).click();
    await page.locator('textarea').waitFor();
    expect((await boxesWithoutHelp()).without).toEqual([]);
    await page.locator('nav').getByRole('button', { name: 'Reach' }).click();
    await page.getByRole('button', { name: 'Make the quote page' }).click();
    await page.locator('.quotefields').waitFor();
    expect((await boxesWithoutHelp()).without).toEqual([]);
    await page.locator('nav').getByRole('button', { name: 'Ratio check' }).click();
    await page.locator('[data-place$=".runBy"]').selectOption('time');
    await page.locator('[data-place$=".weighing"]').selectOption('gross');
    await openFolds();
    await page.locator('[data-place$=".volumes"]').check();
    expect((await boxesWithoutHelp()).without).toEqual([]);
  });

  test('limits whose definition is asked for are shown by each reading, in figures of this material', async () => {
    await opened('Alt+2');
    await page.keyboard.press('F1');
    await tabTo(page, 'materials.0.limits.definition');
    await expect.poll(head).toBe('These limits are');
    // 38.9 · 0.98 to 38.9 · 1.02; 38.9 ± 2.
    const rows = await page.locator('.help tbody tr').allTextContents();
    expect(rows[0]).toBe('% of B per A38.12 to 39.68');
    expect(rows[3]).toBe('parts of B36.90 to 40.90');
    await page.locator('[data-place="materials.0.limits.high"]').fill('3');
    await tabTo(page, 'materials.0.limits.definition');
    expect((await page.locator('.help tbody tr').allTextContents())[3]).toBe('parts of B36.90 to 41.90');
  });

  test('the page keeps its width for itself, and help lies beside it', async () => {
    await opened('Alt+1');
    await page.setViewportSize({ width: 1366, height: 768 });
    await page.keyboard.press('F1');
    await help().waitFor();
    const [main, beside] = [await page.locator('main').boundingBox(), await help().boundingBox()];
    expect((main?.x ?? 0) + (main?.width ?? 0)).toBeLessThanOrEqual((beside?.x ?? 0) + 0.5);
    expect((beside?.x ?? 0) + (beside?.width ?? 0)).toBeLessThanOrEqual(1366);
  });

  test('at 320 px nothing scrolls sideways, and a box with the cursor is not left under help', async () => {
    await opened('Alt+2');
    await page.setViewportSize({ width: 320, height: 640 });
    await page.keyboard.press('F1');
    await help().waitFor();
    for (const place of ['materials.0.limits.low', 'materials.0.limits.definition', 'materials.0.name']) {
      await page.locator(`[data-place="${place}"]`).focus();
      const [box, beside] = [await page.locator(`[data-place="${place}"]`).boundingBox(), await help().boundingBox()];
      expect((box?.y ?? 0) + (box?.height ?? 0), place).toBeLessThanOrEqual((beside?.y ?? 0) + 0.5);
    }
    const wide = await page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);
    expect(wide).toBe(false);
  });

  for (const scheme of ['light', 'dark'] as const) {
    test(`${scheme}: axe-core finds nothing in any part of help, nor in the first change`, async () => {
      await opened('Alt+1');
      await page.emulateMedia({ colorScheme: scheme });
      await page.keyboard.press('F1');
      await page.locator('[data-place="machines.0.motor.speed"]').focus();
      await page.evaluate(axe.source);
      const violations = () =>
        page.evaluate(async () => {
          const runner = (window as unknown as { axe: typeof axe }).axe;
          return (await runner.run()).violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
        });
      expect(await violations()).toEqual([]);
      await page.getByRole('button', { name: 'First change' }).click();
      for (const part of ['Words', 'Keys']) {
        await help().getByRole('button', { name: part }).click();
        expect(await violations(), part).toEqual([]);
      }
    });
  }
});

describe('words and keys', () => {
  test('the slash looks up a word, and is typed where text is typed', async () => {
    await opened('Alt+1');
    await tabTo(page, 'machines.0.name');
    await page.keyboard.press('/');
    expect(await help().count()).toBe(0);
    await page.evaluate(() => (document.activeElement instanceof HTMLElement ? document.activeElement.blur() : undefined));
    await page.keyboard.press('/');
    await expect.poll(() => page.evaluate(() => document.activeElement?.closest('.help') !== null)).toBe(true);
    expect(await page.locator('.help .words dt').count()).toBe(WORDS.length);
    await page.keyboard.type('b-le');
    expect(await page.locator('.help .words dt').allTextContents()).toEqual(['B-lean']);
    await page.keyboard.type('x');
    expect(await help().textContent()).toContain('No word here holds “b-lex”.');
    await page.keyboard.press('Escape');
    expect(await help().count()).toBe(0);
  });

  test('the list of keys is that of the commands and of the pages', async () => {
    await opened('Alt+3');
    await page.keyboard.press('F1');
    await help().getByRole('button', { name: 'Keys' }).click();
    const text = (await help().textContent()) ?? '';
    for (const words of [
      'Ctrl SSave',
      'Alt 4Reach',
      'F1Help',
      '/Look up a word',
      'Pput the chosen option on the sheet',
      'Shift Delremove this stage',
    ])
      expect(text).toContain(words);
    // Each key that stands on a button of this page stands in the list.
    const shown = await page.locator('main kbd').allTextContents();
    const listed = await page.locator('.help kbd').allTextContents();
    expect(shown.length).toBeGreaterThan(4);
    expect(shown.filter((key) => !listed.includes(key))).toEqual([]);
  });
});

test.each([
  ['A4', 210, 297],
  ['Letter', 215.9, 279.4],
] as const)('all of help prints as one document on %s [ISO 216; ANSI/ASME Y14.1, from memory]', async (paper, width_mm, height_mm) => {
  const out = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-help-')), 'help.pdf');
  await opened('Alt+5', { save: [out] });
  await page.getByRole('radio', { name: paper }).check();
  await page.keyboard.press('F1');
  await page.getByRole('button', { name: 'Save help as PDF' }).click();
  await expect.poll(() => isWhole(out)).toBe(true);
  const pdf = await PDFDocument.load(readFileSync(out));
  expect(pdf.getPageCount()).toBeGreaterThan(4);
  for (const { width, height } of pdf.getPages().map((one) => one.getSize())) {
    expect(Math.abs((width * 25.4) / 72 - width_mm)).toBeLessThan(0.5);
    expect(Math.abs((height * 25.4) / 72 - height_mm)).toBeLessThan(0.5);
  }
  await expect.poll(() => page.locator('.helppaper').count()).toBe(0);
  expect(await page.locator('main.desk').isVisible()).toBe(true);
});

test('what is printed holds every page, box, word, step and key', async () => {
  await opened('Alt+1');
  await page.keyboard.press('F1');
  // The dialog of the system would close at once; the document is read while it would be open.
  const printed = page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        new MutationObserver((_, watch) => {
          const paper = document.querySelector('.helppaper');
          if (paper === null) return;
          watch.disconnect();
          resolve(paper.textContent ?? '');
        }).observe(document.body, { childList: true, subtree: true });
      }),
  );
  await page.getByRole('button', { name: 'Print all of help' }).click();
  const text = await printed;
  for (const { title, lines } of FIELD_PAGES) {
    expect(text).toContain(title);
    for (const { means, found } of lines) for (const words of [means, found]) expect(text).toContain(words);
  }
  for (const { means } of WORDS) expect(text).toContain(means);
  for (const { what } of FIRST_CHANGE) expect(text).toContain(what);
  for (const { what } of Object.values(PAGE_HELP)) expect(text).toContain(what);
  expect(text).toContain('put the chosen option on the sheet');
});

describe('the first change', () => {
  test('from the start page to the kept ratio check by keyboard and buttons, and it changes nothing by itself', async () => {
    const out = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-walk-')), 'sheet.pdf');
    app = await launch(browser, { save: [out] });
    page = app.page;
    await page.getByRole('button', { name: 'Start empty' }).waitFor();
    await page.keyboard.press('F1');
    await expect.poll(head).toBe('Start');
    await page.getByRole('button', { name: 'First change' }).click();
    await expect.poll(walk).toContain('Step 2 of 12. Open the Material page.');
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Show me where' }).click();
    await expect.poll(walk).toContain('Step 3 of 12.');
    await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('name'))).toBe('pick.material');
    // Nothing was changed so far.
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);

    await page.keyboard.press('Alt+3');
    await expect.poll(walk).toContain('Step 4 of 12.');
    await choose('21 to 23');
    await expect.poll(walk).toContain('Step 5 of 12.');
    await choose('23 to 25');
    await expect.poll(walk).toContain('Step 6 of 12.');
    await page.locator('tr[tabindex="0"]').focus();
    await page.keyboard.press('w');
    await expect.poll(walk).toContain('Step 7 of 12.');
    await page.keyboard.press('p');
    await expect.poll(walk).toContain('Step 8 of 12.');
    await page.getByRole('button', { name: 'Save as PDF' }).click();
    await expect.poll(walk).toContain('Step 9 of 12.');
    await page.getByRole('button', { name: 'Mark as fitted' }).click();
    await expect.poll(walk).toContain('Step 10 of 12.');
    await page.getByRole('button', { name: 'Show me where' }).click();
    await expect.poll(walk).toContain('Step 11 of 12.');
    await page.getByRole('button', { name: 'Show me where' }).click();
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-place')))
      .toBe('unfinishedChecks.0.catches.0.A.net');
    for (const text of ['275.4', '107.1', '275.6', '107.2', '275.3', '107.0']) {
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    }
    await expect.poll(walk).toContain('Step 12 of 12.');
    await expect.poll(() => page.locator('.verdict .v').textContent()).toContain('Pass');
    await page.getByRole('button', { name: 'Keep this ratio check' }).click();
    await expect.poll(walk).toContain('That was a whole change');
    await page.locator('.walk').getByRole('button', { name: 'Close' }).click();
    expect(await page.locator('.walk').count()).toBe(0);
  });

  test('it can be left at any step, and begun again', async () => {
    await opened('Alt+3');
    await page.keyboard.press('F1');
    await page.getByRole('button', { name: 'First change' }).click();
    await expect.poll(walk).toContain('Step 2 of 12.');
    await page.getByRole('button', { name: 'Leave the first change' }).click();
    expect(await page.locator('.walk').count()).toBe(0);
    await page.getByRole('button', { name: 'First change' }).click();
    await expect.poll(walk).toContain('Step 2 of 12.');
  });
});

/** By keyboard, in the list: arrows to the row with these teeth, then Enter. */
async function choose(teeth: string): Promise<void> {
  await page.locator('tr[tabindex="0"]').focus();
  await page.keyboard.press('Home');
  for (let steps = 0; steps < 20; steps += 1) {
    const row = await page.evaluate(() => document.activeElement?.textContent ?? '');
    if (row.replaceAll('\u00A0', ' ').includes(teeth)) break;
    await page.keyboard.press('ArrowDown');
  }
  await page.keyboard.press('Enter');
}

function isWhole(file: string): boolean {
  try {
    return readFileSync(file).subarray(-6).toString().includes('EOF');
  } catch {
    return false;
  }
}
