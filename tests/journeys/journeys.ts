import { copyFileSync, existsSync, mkdtempSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { PDFDocument } from 'pdf-lib';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { openDemo, openOffered, settled } from '../app/journey.ts';

// What a person does with the desktop app, from start to end: the same on the stand-in (tests/app) and in Electron itself (tests/desktop).

/** How a journey starts: what the dialogs will answer, in their order, and what stands on the command line. */
export interface Setting {
  readonly open?: readonly string[];
  readonly save?: readonly string[];
  readonly message?: readonly number[];
  readonly args?: readonly string[];
  /** The folder of the person's settings; a new one by default. */
  readonly userData?: string;
}

/** The app as it runs, whatever it runs on. */
export interface Running {
  readonly page: Page;
  readonly userData: string;
  title(): Promise<string>;
  /** The lines of a menu as they are shown, with the key beside those that have one. */
  menu(name: string): Promise<readonly (readonly [label: string, key: string | null, enabled: boolean])[]>;
  menuClick(menu: string, item: string): Promise<void>;
  /** Asks the app to quit, as the person would; whether it does is another matter. */
  quit(): Promise<void>;
  closed(): Promise<boolean>;
  bounds(): Promise<{ readonly x: number; readonly y: number; readonly width: number; readonly height: number }>;
  move(bounds: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }): Promise<void>;
  /** A second start of the program with the same settings. */
  startAgain(args: readonly string[], folder: string): Promise<void>;
  /** Ends it whatever it says. */
  end(): Promise<void>;
}

export type Start = (setting?: Setting) => Promise<Running>;

const DEMO = path.resolve(import.meta.dirname, '../examples/demo.ratiowright');

function demoCopy(name = 'bench.ratiowright'): string {
  const file = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-journey-')), name);
  copyFileSync(DEMO, file);
  return file;
}

async function changeSpeed(page: Page, speed: string): Promise<void> {
  await page.keyboard.press('Alt+1');
  const field = page.locator('[data-place="machines.0.motor.speed"]');
  await field.fill(speed);
  await field.press('Enter');
}

const reopened = (name: string, app: Running) => expect.poll(() => app.title()).toBe(`${name} – Ratiowright`);

export const JOURNEYS: Readonly<Record<string, (start: Start) => Promise<void>>> = {
  'open, change, see other options, save, open again, print': async (start) => {
    const file = demoCopy();
    const pdf = path.join(path.dirname(file), 'sheet.pdf');
    const first = await start({ open: [file], save: [pdf] });
    await openOffered(first.page, 'bench.ratiowright');
    await settled(first.page);
    // The demo's answer: pumps of 2 : 1 and 23 to 25 teeth.
    expect(await first.page.locator('[data-rank="1"]').getAttribute('data-ratio')).toBe('50/23');
    await changeSpeed(first.page, '81');
    await expect.poll(() => first.title()).toBe('• bench.ratiowright – Ratiowright');
    await first.page.keyboard.press('Control+s');
    await reopened('bench.ratiowright', first);
    expect(readFileSync(file, 'utf8')).toContain('"81"');
    await first.page.keyboard.press('Alt+5');
    await first.page.getByRole('radio', { name: 'A4' }).check();
    await first.page.getByRole('button', { name: 'Save as PDF' }).click();
    await expect.poll(() => existsSync(pdf)).toBe(true);
    const { width, height } = (await PDFDocument.load(readFileSync(pdf))).getPage(0).getSize();
    // A4 is 210 by 297 mm [ISO 216, from memory], in points of 1/72 in; the engine rounds to whole device units.
    expect(Math.abs(width - (210 / 25.4) * 72)).toBeLessThan(1);
    expect(Math.abs(height - (297 / 25.4) * 72)).toBeLessThan(1);
    // Printing kept the sheet, which is work to be saved too, or the next start would offer it.
    await first.page.keyboard.press('Control+s');
    await reopened('bench.ratiowright', first);
    const { userData } = first;
    await first.end();

    const second = await start({ userData });
    await second.page.getByRole('button', { name: 'bench.ratiowright' }).click();
    await reopened('bench.ratiowright', second);
    await second.page.keyboard.press('Alt+1');
    await expect.poll(() => second.page.locator('[data-place="machines.0.motor.speed"]').inputValue()).toBe('81');
    await second.end();
  },

  'quit with unsaved work: go back, then save': async (start) => {
    const file = demoCopy();
    const app = await start({ open: [file], message: [2, 0] });
    await openOffered(app.page, 'bench.ratiowright');
    await changeSpeed(app.page, '82');
    await expect.poll(() => app.title()).toContain('•');
    await app.quit();
    await app.page.evaluate(() => window.shell?.recent());
    expect(await app.closed()).toBe(false);
    expect(readFileSync(file, 'utf8')).not.toContain('"82"');
    await app.quit();
    await expect.poll(() => app.closed()).toBe(true);
    expect(readFileSync(file, 'utf8')).toContain('"82"');
    await app.end();
  },

  'a file on the command line, and a second start that hands another over': async (start) => {
    const [first, second] = [demoCopy('first.ratiowright'), demoCopy('second.ratiowright')];
    const app = await start({ args: [first] });
    await reopened('first.ratiowright', app);
    await app.startAgain(['second.ratiowright'], path.dirname(second));
    await reopened('second.ratiowright', app);
    await app.end();
  },

  'the native menu: what can be done now, and doing it': async (start) => {
    const app = await start();
    await expect.poll(async () => (await app.menu('Page')).length).toBe(6);
    const save = async () => (await app.menu('File')).find(([label]) => label === 'Save');
    expect(await save()).toEqual(['Save', 'CommandOrControl+S', false]);
    await app.menuClick('File', 'Open the invented example');
    await settled(app.page);
    await expect.poll(save).toEqual(['Save', 'CommandOrControl+S', true]);
    await app.menuClick('Page', 'Reach');
    await expect.poll(() => app.page.locator('main.reach').count()).toBe(1);
    await app.end();
  },

  'the window opens where it stood': async (start) => {
    const app = await start();
    const bounds = { x: 60, y: 50, width: 1000, height: 700 };
    await app.move(bounds);
    const kept = await app.bounds();
    const { userData } = app;
    await app.quit();
    await expect.poll(() => app.closed()).toBe(true);
    await app.end();
    const again = await start({ userData });
    expect(await again.bounds()).toEqual(kept);
    await again.end();
  },

  'About lists the licences': async (start) => {
    const app = await start();
    await expect.poll(async () => (await app.menu('Help')).length).toBeGreaterThan(0);
    await app.menuClick('Help', 'About and licences');
    await app.page.getByRole('dialog').getByText('solid-js').waitFor();
    await app.page.keyboard.press('Escape');
    await openDemo(app.page);
    await app.end();
  },
};
