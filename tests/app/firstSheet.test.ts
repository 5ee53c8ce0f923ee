import { mkdtempSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { PDFDocument } from 'pdf-lib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { settled, tabTo } from './journey.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** What is typed, field by field; invented figures. A choice from a list or a pair of buttons counts as a field too. */
const MACHINE = [
  ['machines.0.motor.speed', '90'],
  ['machines.0.stages.0.driver.teeth', '21'],
  ['machines.0.stages.0.driven.teeth', '30'],
  ['machines.0.stages.0.pitches', '66'],
  ['machines.0.stages.0.centre', '250 to 263'],
  ['machines.0.stages.0.takeUp', '0.5'],
  ['machines.0.A.pumps.0.displacement', '12'],
  ['machines.0.B.pumps.0.displacement', '6'],
  ['racks.0.pieces', '08B: 15-20, 22-25, 27, 28, 30, 32, 35'],
] as const;
const MATERIAL = [
  ['materials.0.ratio.basis', ' '],
  ['materials.0.ratio.parts', '100:38.9'],
  ['materials.0.limits.low', '-2'],
  ['materials.0.limits.high', '2'],
  ['materials.0.limits.definition', '%'],
  ['materials.0.A.density.value', '1.16'],
  ['materials.0.A.density.at', '25'],
  ['materials.0.B.density.value', '0.97'],
  ['materials.0.B.density.at', '25'],
  ['materials.0.A.runAt', '42'],
  ['materials.0.B.runAt', '25'],
] as const;

async function type(page: Page, fields: readonly (readonly [string, string])[]): Promise<void> {
  for (const [place, text] of fields) {
    await tabTo(page, place);
    if (await page.evaluate(() => document.activeElement instanceof HTMLInputElement && document.activeElement.type === 'text')) {
      await page.keyboard.press('Control+a');
    }
    await page.keyboard.type(text);
    if (place === 'racks.0.pieces') await page.keyboard.press('Enter');
  }
}

test('from an empty shop to a printed sheet by keyboard alone, in at most 25 typed fields', async () => {
  expect(MACHINE.length + MATERIAL.length).toBeLessThanOrEqual(25);
  const out = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-first-')), 'sheet.pdf');
  const app = await launch(browser, { save: [out] });
  try {
    const { page } = app;
    await page.getByRole('button', { name: 'Start empty' }).waitFor();
    await page.keyboard.press('n');
    await expect.poll(() => page.locator('[data-place="machines.0.motor.speed"]').count()).toBe(1);
    await type(page, MACHINE);
    await page.keyboard.press('Alt+2');
    await type(page, MATERIAL);
    await page.keyboard.press('Alt+3');
    await settled(page);
    const first = page.locator('[data-rank="1"]');
    // 100 : 38.9 by weight at 0.97 and 1.16 g/cm³, no expansion given: 2.1496 by volume; 15 : 7 is the nearest pair of this rack.
    expect(await first.getAttribute('data-ratio')).toBe('15/7');

    await page.keyboard.press('p');
    await expect.poll(() => page.locator('.paper-holder').count()).toBe(1);
    for (let steps = 0; steps < 60; steps += 1) {
      if ((await page.evaluate(() => document.activeElement?.textContent)) === 'Save as PDF') break;
      await page.keyboard.press('Tab');
    }
    await page.keyboard.press('Enter');
    await expect.poll(() => page.getByText('Kept as sheet 0001').count()).toBe(1);
    await expect.poll(() => written(out)).toBe(true);
    expect((await PDFDocument.load(readFileSync(out))).getPageCount()).toBe(1);
  } finally {
    await app.close();
  }
});

function written(file: string): boolean {
  try {
    return readFileSync(file).subarray(-6).toString().includes('EOF');
  } catch {
    return false;
  }
}
