import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { PDFDocument } from 'pdf-lib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { readShopFile } from '../../core/src/index.ts';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { launchDemo, openDemo } from './journey.ts';
import { lineLengths_pt } from './pdfLines.ts';

let browser: Browser;
let app: Launched;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(() => app.close());

const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-pages-'));
const POINTS_PER_mm = 72 / 25.4;

async function demo(choices: Parameters<typeof launch>[1] = {}): Promise<Page> {
  app = await launchDemo(browser, choices);
  return app.page;
}

test('all pages together ask the network for nothing and log no error', async () => {
  app = await launch(browser);
  const errors: string[] = [];
  app.page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) errors.push(message.text());
  });
  app.page.on('pageerror', (error) => errors.push(error.message));
  await openDemo(app.page);
  for (const key of ['1', '2', '3', '4', '6', '5']) await app.page.keyboard.press(`Alt+${key}`);
  await expect.poll(() => app.page.locator('.paper-holder').count()).toBe(1);
  expect(errors).toEqual([]);
  expect(app.stage.log.filter(([what]) => what === 'network' || what === 'cancelled')).toEqual([]);
});

describe('the printed sheet', () => {
  for (const [paper, width, height] of [
    ['A4', 210, 297],
    ['Letter', 215.9, 279.4],
  ] as const) {
    test(`${paper}: one page of that size, and the 100 mm bar measures 100 mm in the PDF`, async () => {
      const out = path.join(folder, `${paper}.pdf`);
      const page = await demo({ save: [out] });
      await page.keyboard.press('Alt+5');
      await page.getByRole('radio', { name: paper }).check();
      await page.getByRole('button', { name: 'Save as PDF' }).click();
      await expect.poll(() => page.getByText('Kept as sheet 0002').count()).toBe(1);
      await expect.poll(() => readable(out)).toBe(true);
      const pdf = readFileSync(out);
      const pages = (await PDFDocument.load(pdf)).getPages();
      expect(pages).toHaveLength(1);
      expect(pages[0]?.getWidth()).toBeCloseTo(width * POINTS_PER_mm, -0.5);
      expect(pages[0]?.getHeight()).toBeCloseTo(height * POINTS_PER_mm, -0.5);
      const bars = (await lineLengths_pt(pdf)).map((length) => length / POINTS_PER_mm).filter((mm) => Math.abs(mm - 100) <= 0.5);
      expect(bars.length).toBeGreaterThan(0);
    });
  }

  test('what is printed is kept with its number; marking it as fitted moves the wheels; one undo takes that back', async () => {
    const out = path.join(folder, 'kept.pdf');
    const saved = path.join(folder, 'kept.ratiowright');
    const page = await demo({ save: [out, saved] });
    await page.keyboard.press('Alt+5');
    await page.getByRole('button', { name: 'Save as PDF' }).click();
    await expect.poll(() => page.getByText('Kept as sheet 0002').count()).toBe(1);
    await page.getByRole('button', { name: 'Mark as fitted' }).click();
    await page.keyboard.press('Control+s');
    await expect.poll(() => readable(saved)).toBe(true);
    const file = shop(saved);
    const stage = file.machines[0]?.stages[0];
    expect([stage?.driver.teeth, stage?.driven.teeth, stage?.pitches, stage?.centreNow]).toEqual([
      23,
      25,
      64,
      { value: '253.97', unit: 'mm' },
    ]);
    const left = (teeth: number) =>
      file.racks[0]?.pieces.filter((piece) => piece.size === '08B' && piece.teeth === teeth).map((piece) => piece.quantity);
    // 23 and 25 are taken; 21 had no row and gets one; 30 goes back to its own.
    expect([left(23), left(25), left(21), left(30)]).toEqual([[0], [0], [1], [2]]);
    expect(file.changeSheets.map((sheet) => [sheet.number, sheet.fittedOn !== undefined, sheet.lines.length > 30])).toEqual([
      ['0001', true, true],
      ['0002', true, true],
    ]);

    // What was on before the change, so that a ratio check can tell whether it was made.
    expect(file.changeSheets[1]?.before).toEqual({ pumps: { A: 'pa12', B: 'pb6' }, teeth: [{ driver: 21, driven: 30 }] });

    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+s');
    await expect.poll(() => shop(saved).machines[0]?.stages[0]?.driver.teeth).toBe(21);
    expect(shop(saved).changeSheets).toHaveLength(2);
  });
});

test('a damaged file is refused with its place, and the open one stays; a wrong number stays in its box with what was expected', async () => {
  const damaged = path.join(folder, 'damaged.ratiowright');
  const json = JSON.parse(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
  json.machines[0].motor.speed.value = 'fast';
  writeFileSync(damaged, JSON.stringify(json));
  const page = await demo({ open: [damaged] });
  await page.keyboard.press('Control+o');
  await expect.poll(() => page.locator('.notice').textContent()).toContain('machine 1, motor, speed');
  expect(await page.locator('[data-rank="1"]').getAttribute('data-ratio')).toBe('50/23');

  await page.keyboard.press('Alt+1');
  const speed = page.locator('[data-place="machines.0.motor.speed"]');
  await speed.fill('90x');
  expect([await speed.inputValue(), await speed.getAttribute('aria-invalid')]).toEqual(['90x', 'true']);
  // The wheel over a box scrolls the page and never changes the value; the last good one stays in use.
  await speed.fill('91');
  await speed.hover();
  await page.mouse.wheel(0, 200);
  expect(await speed.inputValue()).toBe('91');
});

test('Ctrl P from any page prints the sheet and keeps it', async () => {
  const page = await demo();
  await page.keyboard.press('Control+p');
  await expect.poll(() => page.getByText('Kept as sheet 0002').count()).toBe(1);
  expect(app.stage.log.filter(([what, call]) => what === 'invoke' && call === 'print')).toHaveLength(1);
});

test('a file that was saved before is offered at the next start, and opens with one press', async () => {
  const saved = path.join(folder, 'again.ratiowright');
  const userData = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-user-'));
  const first = await demo({ save: [saved], userData });
  await first.keyboard.press('Control+s');
  // The page says so once the shell is done, its list of recent files included.
  await expect.poll(() => first.locator('nav small').first().textContent()).toContain('again.ratiowright · saved');
  await app.close();
  app = await launch(browser, { userData });
  await app.page.getByRole('button', { name: 'again.ratiowright' }).click();
  await expect.poll(() => app.page.locator('nav small').first().textContent()).toContain('again.ratiowright · saved');
});

function readable(file: string): boolean {
  try {
    return readFileSync(file).length > 0;
  } catch {
    return false;
  }
}

function shop(file: string) {
  const outcome = readShopFile(readFileSync(file, 'utf8'));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings));
  return outcome.value;
}
