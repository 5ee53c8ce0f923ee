import { copyFileSync, mkdtempSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { PDFDocument } from 'pdf-lib';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type {} from '../../renderer/src/host/desktop.ts';
import { type Launched, launch } from '../harness/launch.ts';
import { preventable } from '../harness/window.ts';
import { startBrowser } from './browser.ts';

let browser: Browser;
let app: Launched;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(() => app.close());

const folder = () => mkdtempSync(path.join(os.tmpdir(), 'ratiowright-shell-'));
const logged = (what: string) => app.stage.log.filter(([first]) => first === what);

test('the window shows the built page over its own scheme, without an error', async () => {
  app = await launch(browser);
  const errors: string[] = [];
  app.page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  app.page.on('pageerror', (error) => errors.push(error.message));
  await app.page.reload();
  expect(await app.page.title()).toContain('Ratiowright');
  expect(app.window.webContents.getURL()).toBe('app://ratiowright/');
  expect(errors).toEqual([]);
});

test('printing shows the dialog of the system, with the paper of the printer; giving up is no failure, a failure is told', async () => {
  app = await launch(browser, { printFailures: ['Print job canceled', 'Print job failed'] });
  const print = () =>
    app.page.evaluate(() =>
      window.shell?.print().then(
        () => 'done',
        (error: Error) => error.message,
      ),
    );
  expect(await print()).toBe('done');
  expect(await print()).toBe('The page was not printed: Print job failed.');
  expect(await print()).toBe('done');
  expect(logged('print')[0]?.[1]).toEqual({ printBackground: true, usePrinterDefaultPageSize: true });
});

test('PDF pages are A4 210 x 297 mm [ISO 216] and Letter 8.5 x 11 in [ANSI Y14.1], in points of 1/72 in [all from memory]', async () => {
  const [a4, letter] = ['a4.pdf', 'letter.PDF'].map((name) => path.join(folder(), name));
  app = await launch(browser, { save: [a4 ?? '', letter ?? ''] });
  await app.page.evaluate(async () => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('@page { size: auto; margin: 12mm }');
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return [await window.shell?.savePdf('change sheet', 'A4'), await window.shell?.savePdf('change sheet.pdf', 'Letter')];
  });
  for (const [file, width, height] of [
    [a4, (210 / 25.4) * 72, (297 / 25.4) * 72],
    [letter, 8.5 * 72, 11 * 72],
  ] as const) {
    const size = (await PDFDocument.load(readFileSync(file ?? ''))).getPage(0).getSize();
    // The engine rounds the page to whole device units, less than a point.
    expect(Math.abs(size.width - width)).toBeLessThan(1);
    expect(Math.abs(size.height - height)).toBeLessThan(1);
  }
  expect(logged('save-dialog').map(([, options]) => options)).toEqual(
    ['change sheet.pdf', 'change sheet.pdf'].map((defaultPath) =>
      expect.objectContaining({ defaultPath, filters: [{ name: 'PDF', extensions: ['pdf'] }] }),
    ),
  );
  expect(logged('printToPDF')[0]?.[1]).toMatchObject({ preferCSSPageSize: true, printBackground: true, generateTaggedPDF: true });
  // Electron's own A4 is 0.1 mm off, which that point lets pass.
  expect(logged('printToPDF')[0]?.[1]).toMatchObject({
    pageSize: { width: expect.closeTo(210 / 25.4, 9), height: expect.closeTo(297 / 25.4, 9) },
  });
});

test('a PDF that could not be saved says why, and the next one is saved', async () => {
  const home = folder();
  const [nowhere, file] = [path.join(home, 'gone', 'sheet.pdf'), path.join(home, 'sheet.pdf')];
  app = await launch(browser, { save: [nowhere, file] });
  const savePdf = () => app.page.evaluate(() => window.shell?.savePdf('sheet', 'A4').catch((error: Error) => error.message));
  expect(await savePdf()).toBe('sheet.pdf was not saved: its folder or drive is no longer there. What is on the disk was left as it was.');
  expect(await savePdf()).toBe(true);
  expect((await PDFDocument.load(readFileSync(file))).getPageCount()).toBeGreaterThan(0);
});

test('a size set by the style sheet of the page wins over the paper asked for [CSS Paged Media, from memory]', async () => {
  const file = path.join(folder(), 'wide.pdf');
  app = await launch(browser, { save: [file] });
  const done = await app.page.evaluate(async () => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('@page { size: 200mm 100mm; margin: 0 }');
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return [await window.shell?.savePdf('wide', 'A4'), await window.shell?.savePdf('wide', 'A4')];
  });
  expect(done).toEqual([true, false]);
  const { width, height } = (await PDFDocument.load(readFileSync(file))).getPage(0).getSize();
  expect(Math.abs(width - (200 / 25.4) * 72)).toBeLessThan(1);
  expect(Math.abs(height - (100 / 25.4) * 72)).toBeLessThan(1);
});

const DEMO = path.resolve(import.meta.dirname, '../examples/demo.ratiowright');

/** A copy of the invented example under a name of its own. */
function demo(name: string): string {
  const file = path.join(folder(), name);
  copyFileSync(DEMO, file);
  return file;
}
const handedOver = () => app.page.evaluate(() => window.shell?.handedOver());

test('a file named on the command line is opened by the page as it starts, once', async () => {
  app = await launch(browser, { args: ['--some-switch=x.ratiowright', demo('bench.ratiowright')] });
  await expect.poll(() => app.window.title).toBe('bench.ratiowright – Ratiowright');
  expect(await handedOver()).toBeNull();
});

test('a file handed over as an address is opened [%U of the Desktop Entry Specification, from memory]', async () => {
  app = await launch(browser, { args: [pathToFileURL(demo('bänk 1 #2.ratiowright')).href] });
  await expect.poll(() => app.window.title).toBe('bänk 1 #2.ratiowright – Ratiowright');
});

test.each(['file://elsewhere/x.ratiowright', 'file:///a%2Fb.ratiowright'])(
  '%s names no file of this machine: the app starts empty',
  async (address) => {
    app = await launch(browser, { args: [address] });
    await expect.poll(() => app.window.title).toBe('Ratiowright');
    expect(await handedOver()).toBeNull();
  },
);

test('a second start hands its file over and brings the window to the front', async () => {
  const file = demo('Other.RATIOWRIGHT');
  app = await launch(browser);
  await expect.poll(() => app.window.title).toBe('Ratiowright');
  app.window.minimized = true;
  app.standIn.app.emit('second-instance', preventable({}), ['program', 'Other.RATIOWRIGHT'], path.dirname(file));
  expect([app.window.minimized, app.window.focused]).toEqual([false, 1]);
  expect(logged('send')).toEqual([['send', 'command', 'file.handedOver']]);
  await expect.poll(() => app.window.title).toBe('Other.RATIOWRIGHT – Ratiowright');
  app.standIn.app.emit('second-instance', preventable({}), ['program'], path.dirname(file));
  expect([app.window.focused, logged('send').length]).toEqual([2, 1]);
});

test('a file handed over by an event of the system is opened by the page', async () => {
  app = await launch(browser);
  await expect.poll(() => app.window.title).toBe('Ratiowright');
  const event = preventable({});
  app.standIn.app.emit('open-file', event, demo('mac.ratiowright'));
  expect(event.defaultPrevented).toBe(true);
  await expect.poll(() => app.window.title).toBe('mac.ratiowright – Ratiowright');
  expect(await handedOver()).toBeNull();
});
