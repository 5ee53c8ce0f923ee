import { mkdtempSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { expect, test } from 'vitest';
import { startBrowser } from './browser.ts';
import { launchDemo } from './journey.ts';
import { lineLengths_pt } from './pdfLines.ts';

const POINTS_PER_mm = 72 / 25.4;

// Acceptance of a printed scale bar: 100 mm within 1 mm, whatever the screen is scaled to [requirement of the field, no source].
test.each([1, 1.25, 1.5, 2])('a screen scaled by %d: one page of A4, and the 100 mm bar measures 100 mm', async (scale) => {
  const browser = await startBrowser([`--force-device-scale-factor=${scale}`]);
  const out = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-scale-')), 'sheet.pdf');
  const app = await launchDemo(browser, { save: [out] }, 'Alt+5');
  try {
    const { page } = app;
    await page.locator('.paper-holder').waitFor();
    await page.getByRole('radio', { name: 'A4' }).check();
    await page.getByRole('button', { name: 'Save as PDF' }).click();
    await page.getByText('Kept as sheet 0002').waitFor();
    await expect.poll(() => whole(out)).toBe(true);
    const pdf = readFileSync(out);
    const pages = (await PDFDocument.load(pdf)).getPages();
    expect(pages.map((one) => Math.round(one.getWidth() / POINTS_PER_mm))).toEqual([210]);
    const lengths = (await lineLengths_pt(pdf)).map((length) => length / POINTS_PER_mm);
    expect(lengths.filter((mm) => Math.abs(mm - 100) <= 1)).toHaveLength(1);
  } finally {
    await app.close();
    await browser.close();
  }
});

function whole(file: string): boolean {
  try {
    return readFileSync(file).subarray(-6).toString().includes('EOF');
  } catch {
    return false;
  }
}
