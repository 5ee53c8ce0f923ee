import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import axe from 'axe-core';
import { PDFDocument } from 'pdf-lib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { readShopFile, type ShopFile } from '../../core/src/index.ts';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { openDemo, openOffered, pick, settled, tabTo } from './journey.ts';

let browser: Browser;
let app: Launched;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(() => app.close());

const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-checks-'));
const FIRST = [
  ['244.6', '101.9'],
  ['244.1', '101.6'],
  ['244.4', '101.8'],
] as const;

async function opened(choices: Parameters<typeof launch>[1] = {}): Promise<void> {
  app = await launch(browser, choices);
  page = app.page;
  await openDemo(page);
  await page.keyboard.press('Alt+6');
  await page.locator('main.check').waitFor();
}
const plain = async (selector: string) => ((await page.locator(selector).textContent()) ?? '').replaceAll('\u00A0', ' ');
const navSmall = () => page.locator('nav small').first().textContent();
const verdict = () => plain('.verdict .v');
const cell = (index: number, column: string) => page.locator(`tr[data-catch="${index}"] [data-column="${column}"]`);
const said = (index: number) => plain(`tr[data-catch="${index}"] + tr.said`);
const keep = () => page.getByRole('button', { name: 'Keep this ratio check' });

/** By keyboard alone, from the first cell on: Enter goes on, and after the last cell makes a new catch. */
async function typeFirst(): Promise<void> {
  await tabTo(page, 'unfinishedChecks.0.catches.0.A.net');
  for (const text of FIRST.flat()) {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
}
const saved = (file: string): ShopFile => {
  const read = readShopFile(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.findings[0].what);
  return read.value;
};

test('the three kept checks of the demo with their verdicts, and what the first catch should give', async () => {
  await opened();
  const rows = page.locator('[data-check^="check-"]');
  expect(await rows.evaluateAll((all) => all.map((row) => row.textContent?.replaceAll('\u00A0', ' ')))).toEqual([
    '2026-11-09U40 elastomer2.06 % B-leanNot provenRead',
    '2026-10-12U40 elastomer1.18 % B-leanPassRead',
    '2026-09-15U40 elastomer0.50 % B-leanPassRead',
  ]);
  const facts = await plain('.before .facts');
  expect(facts).toContain('Expected of A244.3 g');
  expect(facts).toContain('Smallest catch worth makingA 47.6 g, B 19.9 g');
  await expect.poll(() => page.locator('.trends svg').count()).toBe(3);
});

test('the first check typed by keyboard alone: 0.50 % B-lean, pass; kept, and one undo brings it back', async () => {
  const file = path.join(folder, 'kept.ratiowright');
  await opened({ save: [file] });
  await typeFirst();
  await expect.poll(verdict).toBe('Pass 0.50 % B-lean');
  expect(await page.locator('tr[data-catch]').count()).toBe(4);
  await expect.poll(() => page.locator('[data-cause="cause.wrongTeeth"]').textContent()).toBe('ruled out');
  await tabUntil('Keep this ratio check');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('[data-check="check-0004"]').count()).toBe(1);
  await page.keyboard.press('Control+s');
  await expect.poll(() => navSmall()).toContain('· saved');
  const { ratioChecks, unfinishedChecks } = saved(file);
  expect(unfinishedChecks).toBeUndefined();
  expect(ratioChecks[3]).toMatchObject({ id: 'check-0004', machine: 'bench-1', material: 'u40', changeSheet: 'sheet-0001' });
  expect(ratioChecks[3]?.terms).toEqual(ratioChecks[0]?.terms);
  expect(ratioChecks[3]?.catches).toEqual(ratioChecks[0]?.catches);

  await page.keyboard.press('Control+z');
  await expect.poll(() => page.locator('[data-check="check-0004"]').count()).toBe(0);
  await expect.poll(verdict).toBe('Pass 0.50 % B-lean');
  expect(await cell(2, 'B.net').inputValue()).toBe('101.8');
});

async function tabUntil(words: string): Promise<void> {
  for (let steps = 0; steps < 40; steps += 1) {
    if ((await page.evaluate(() => document.activeElement?.textContent)) === words) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${words}`);
}

test('what is typed stays: over other pages, in the saved file, and undo takes it back cell by cell', async () => {
  const file = path.join(folder, 'unfinished.ratiowright');
  await opened({ save: [file] });
  await cell(0, 'A.net').fill('244.6');
  await cell(0, 'B.net').fill('101,9x');
  await page.keyboard.press('Alt+3');
  await settled(page);
  await page.keyboard.press('Alt+6');
  expect([await cell(0, 'B.net').inputValue(), await cell(0, 'B.net').getAttribute('aria-invalid')]).toEqual(['101,9x', 'true']);
  await page.keyboard.press('Control+s');
  await expect.poll(() => navSmall()).toContain('· saved');
  expect(saved(file).unfinishedChecks?.[0]?.catches[0]).toEqual({ A: { net: '244.6' }, B: { net: '101,9x' } });
  await page.keyboard.press('Control+z');
  await expect.poll(() => cell(0, 'B.net').inputValue()).toBe('');
  expect(await cell(0, 'A.net').inputValue()).toBe('244.6');
});

describe('what is wrong stands at its catch, and the others are judged', () => {
  test('zero, below zero, no number, a thousand times too much, other units', async () => {
    await opened();
    await typeFirst();
    for (const [text, what] of [
      ['0', 'it must be above 0'],
      ['-5', 'must be at least 0 g'],
      ['heavy', 'is not a number'],
      ['1000000', 'far from the 244.3 g that is to be expected'],
    ] as const) {
      await cell(3, 'A.net').fill(text);
      await cell(3, 'B.net').fill('101.7');
      await expect.poll(() => said(3)).toContain(what);
      expect(await cell(3, 'A.net').getAttribute('aria-invalid')).toBe('true');
      expect(await verdict()).toBe('Pass so far 0.50 % B-lean');
      expect(await plain('.verdict')).toContain('Catch 4 does not count until it is put right.');
      expect(await keep().isDisabled()).toBe(true);
      await page.locator('button.against').click();
      await expect
        .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-place')))
        .toBe('unfinishedChecks.0.catches.3.A.net');
    }
    await cell(3, 'A.net').fill('0.2443 kg');
    await expect.poll(() => plain('.general')).toContain('Side A is written down in g and kg');
    expect([await keep().isDisabled(), await page.locator('tr.said:visible').count()]).toEqual([false, 0]);
  });

  test('a missing tare; net is worked out; a catch is left out with its reason', async () => {
    await opened();
    await page.getByRole('combobox', { name: 'Written down is' }).selectOption('gross');
    await cell(0, 'A.gross').fill('444.6');
    await expect.poll(() => said(0)).toContain('the tare is missing: weigh the empty cup');
    expect(await cell(0, 'A.tare').getAttribute('aria-invalid')).toBe('true');
    for (const [index, [a, b]] of FIRST.entries()) {
      await cell(index, 'A.gross').fill(String(Number(a) + 200));
      await cell(index, 'A.tare').fill('200');
      await cell(index, 'B.gross').fill(`${Number(b) + 200}`);
      await cell(index, 'B.tare').fill('0,2 kg');
    }
    await expect.poll(verdict).toBe('Pass 0.50 % B-lean');
    expect(await plain('tr[data-catch="0"]')).toContain('244.6');
    await page.getByRole('button', { name: 'Leave out: catch 3' }).click();
    await expect.poll(() => said(2)).toContain('say why');
    await page.keyboard.type('spilled');
    await expect.poll(() => said(2)).not.toContain('say why');
    expect([await verdict(), await keep().isDisabled()]).toEqual(['Pass 0.51 % B-lean', false]);
  });
});

test('cells of a spreadsheet are pasted, a CSV file is read whole or not at all', async () => {
  await opened();
  await cell(0, 'A.net').focus();
  await page.evaluate(
    (text) => {
      const data = new DataTransfer();
      data.setData('text/plain', text);
      document.activeElement?.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
    },
    FIRST.map((line) => line.join('\t')).join('\n'),
  );
  await expect.poll(verdict).toBe('Pass 0.50 % B-lean');

  const csv = async (text: string) => {
    const file = path.join(folder, 'catches.csv');
    writeFileSync(file, text);
    await page.getByLabel('CSV file of catches').setInputFiles(file);
  };
  await csv('A net g;B net g\n244,5;100,4\n243,2;heavy\n');
  await expect.poll(() => plain('.notice')).toContain('Line 3, B net');
  expect(await verdict()).toBe('Pass 0.50 % B-lean');
  await csv('A net g;B net g\n244,5;100,4\n243,2;98,6\n244,9;101,3\n');
  await expect.poll(verdict).toBe('Not proven 2.06 % B-lean');
  await page.keyboard.press('Control+z');
  await expect.poll(verdict).toBe('Pass 0.50 % B-lean');
});

test('a kept check is read by its own terms, deleted with undo, and its record is printed on one page', async () => {
  const out = path.join(folder, 'record.pdf');
  await opened({ save: [out] });
  await page.getByRole('button', { name: 'Read the ratio check of 2026-11-09' }).click();
  await expect.poll(verdict).toBe('Not proven 2.06 % B-lean');
  await expect.poll(() => page.locator('[data-cause="cause.agree"]').textContent()).toBe('likely');
  expect(await page.getByRole('button', { name: 'Use these deliveries' }).isDisabled()).toBe(true);
  await page.getByRole('button', { name: 'Delete this check' }).click();
  await expect.poll(() => page.locator('[data-check="check-0003"]').count()).toBe(0);
  await page.keyboard.press('Control+z');
  await expect.poll(() => page.locator('[data-check="check-0003"]').count()).toBe(1);

  await page.getByRole('button', { name: 'Read the ratio check of 2026-11-09' }).click();
  await page.getByRole('button', { name: 'Print check record' }).click();
  await page.locator('.paper-holder').waitFor();
  await page.getByRole('button', { name: 'Save as PDF' }).click();
  await expect.poll(() => pagesOf(out)).toBe(1);
});

async function pagesOf(file: string): Promise<number> {
  try {
    return (await PDFDocument.load(readFileSync(file))).getPageCount();
  } catch {
    return 0;
  }
}

test('deliveries of a stable check are kept with the pumps, and counted where the options are shown as measured', async () => {
  await opened();
  await page.getByRole('button', { name: 'Read the ratio check of 2026-10-12' }).click();
  await page.getByRole('button', { name: 'Use these deliveries' }).click();
  await expect.poll(() => plain('.side')).toContain('These deliveries are kept with the pumps.');
  await expect.poll(() => plain('.side')).toContain('the closest that can be built is 17 to 24, 0.006 % B-lean');
  await page.getByRole('button', { name: 'Show options as measured' }).click();
  await settled(page);
  await expect.poll(() => page.locator('[data-rank="1"]').getAttribute('data-ratio')).not.toBeNull();
  await expect.poll(() => plain('[data-rank="1"]')).toContain('17');
  await expect.poll(() => plain('.settings summary')).toContain('delivery as measured');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect.poll(() => plain('.settings summary')).not.toContain('delivery as measured');
});

test('the band carries what was measured of just what it shows', async () => {
  await opened();
  expect(await plain('.band')).not.toContain('Measured');
  await page.getByRole('button', { name: 'Show U40 elastomer' }).click();
  await expect.poll(() => plain('.band')).toContain('Measured 2026-11-092.9132 : 1 2.06 % B-lean, not proven');
  expect(await page.locator('.rule .measured').count()).toBe(1);
  await typeFirst();
  await expect.poll(() => plain('.band')).toContain('0.50 % B-lean, pass');
});

test('without any sheet what is fitted now is proved; where the plan is not complete it says what is missing', async () => {
  const bare = path.join(folder, 'bare.ratiowright');
  const json = JSON.parse(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
  json.changeSheets = [];
  json.ratioChecks = [];
  delete json.machines[1].motor.speed;
  writeFileSync(bare, JSON.stringify(json));
  app = await launch(browser, { open: [bare] });
  page = app.page;
  await openOffered(page, 'bare.ratiowright');
  await settled(page);
  await page.keyboard.press('Alt+6');
  await page.locator('main.check').waitFor();
  expect(await page.getByRole('combobox', { name: 'What is proved' }).locator('option').allTextContents()).toEqual([
    'What is fitted now: 21 to 30',
  ]);
  expect(await plain('.kept')).toContain('None of this machine yet.');
  await pick(page, 'Alt+1', 'machine', 1);
  await page.keyboard.press('Alt+6');
  await expect.poll(() => plain('main.check')).toContain('The plan is not complete');
  expect(await page.locator('.find dd').first().textContent()).toContain('motor');
});

for (const scheme of ['light', 'dark'] as const)
  test(`${scheme}: axe-core finds nothing with catches, faults and an opened check in sight`, async () => {
    await opened();
    await page.emulateMedia({ colorScheme: scheme });
    await typeFirst();
    await cell(3, 'A.net').fill('heavy');
    await page.getByRole('button', { name: 'Leave out: catch 3' }).click();
    await expect.poll(() => page.locator('[data-cause]').count()).toBe(8);
    expect(await violations()).toEqual([]);
    await page.getByRole('button', { name: 'Read the ratio check of 2026-11-09' }).click();
    expect(await violations()).toEqual([]);
  });

async function violations(): Promise<readonly string[]> {
  // Evaluated by the test driver, so the page's own content policy stays in force.
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const runner = (window as unknown as { axe: typeof axe }).axe;
    return (await runner.run()).violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
  });
}

test('at 320 px nothing but the tables is wider than the window', async () => {
  await opened();
  await typeFirst();
  await page.setViewportSize({ width: 320, height: 800 });
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
});
