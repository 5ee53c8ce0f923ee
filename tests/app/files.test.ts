import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { LARGEST_FILE_BYTES } from '../../core/src/file/envelope.ts';
import type {} from '../../renderer/src/host/desktop.ts';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';

let browser: Browser;
let app: Launched;
let home: string;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
beforeEach(() => {
  home = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-files-'));
});
afterEach(() => app.close());

const place = (name: string, content?: string | Uint8Array) => {
  const file = path.join(home, name);
  if (content !== undefined) writeFileSync(file, content);
  return file;
};
const options = (dialog: string) => app.stage.log.filter(([what]) => what === dialog).map(([, given]) => given);
const open = () => app.page.evaluate(() => window.shell?.open());
const openFailure = () =>
  app.page.evaluate(() =>
    window.shell?.open().then(
      () => 'opened',
      (error: Error) => error.message,
    ),
  );
const save = (token: string, text: string) =>
  app.page.evaluate(
    ([to, what]) =>
      window.shell?.save(to ?? '', what ?? '').then(
        () => 'saved',
        (error: Error) => error.message,
      ),
    [token, text],
  );
const saveAs = (name: string, text: string) =>
  app.page.evaluate(([as, what]) => window.shell?.saveAs(as ?? '', what ?? '').catch((error: Error) => error.message), [name, text]);
const recent = () => app.page.evaluate(() => window.shell?.recent());
const openRecent = (token: string) =>
  app.page.evaluate((what) => window.shell?.openRecent(what).catch((error: Error) => error.message), token);

test('opening shows shop files only, and gives name, text and a token that is no path', async () => {
  app = await launch(browser, { open: [place('shop.ratiowright', 'text ü')] });
  const opened = await open();
  expect(opened).toEqual({ name: 'shop.ratiowright', text: 'text ü', token: expect.stringMatching(/^[0-9a-f-]{36}$/) });
  expect(options('open-dialog')).toEqual([
    expect.objectContaining({ filters: [{ name: 'Shop files', extensions: ['ratiowright'] }], properties: ['openFile'] }),
  ]);
  expect(await open()).toBeNull();
});

test('a byte-order mark is no part of the text, and saving over such a file is no conflict', async () => {
  const file = place('bom.ratiowright', '\ufefftext');
  app = await launch(browser, { open: [file] });
  const opened = await open();
  expect(opened?.text).toBe('text');
  expect(await save(opened?.token ?? '', 'new')).toBe('saved');
  expect(readFileSync(file, 'utf8')).toBe('new');
});

test('saving writes where the file came from and keeps one backup of what was there', async () => {
  const file = place('shop.ratiowright', 'first');
  app = await launch(browser, { open: [file] });
  const token = (await open())?.token ?? '';
  for (const text of ['second', 'third']) expect(await save(token, text)).toBe('saved');
  expect(readFileSync(file, 'utf8')).toBe('third');
  expect(readFileSync(path.join(home, 'shop.backup.ratiowright'), 'utf8')).toBe('second');
  expect(readdirSync(home).sort()).toEqual(['shop.backup.ratiowright', 'shop.ratiowright']);
});

test('two saves asked for at once are done in their order, though the first takes longer', async () => {
  const file = place('shop.ratiowright', 'first');
  app = await launch(browser, { open: [file] });
  const token = (await open())?.token;
  const call = app.stage.handlers.get('save');
  const event = { sender: app.window.webContents, senderFrame: { url: 'app://ratiowright/', parent: null } };
  const long = 'x'.repeat(LARGEST_FILE_BYTES);
  expect(await Promise.all([call?.(event, token, long), call?.(event, token, 'last')])).toEqual([{ ok: true }, { ok: true }]);
  expect(readFileSync(file, 'utf8')).toBe('last');
  expect(readFileSync(path.join(home, 'shop.backup.ratiowright')).length).toBe(LARGEST_FILE_BYTES);
});

test('a token that was not given out is refused, and so is one of the recent list that was not opened', async () => {
  const file = place('shop.ratiowright', 'text');
  app = await launch(browser, { open: [file] });
  await open();
  const listed = (await recent())?.[0]?.token ?? '';
  for (const token of [listed, file, 'no-token']) expect(await save(token, 'bad')).toBe('This file was not opened here.');
  expect(await openRecent(file)).toBe('This file is not in the list of recent files.');
  expect(readFileSync(file, 'utf8')).toBe('text');
});

test('a file that somebody else changed since is not overwritten; one that vanished is written again', async () => {
  const file = place('shop.ratiowright', 'mine');
  app = await launch(browser, { open: [file] });
  const token = (await open())?.token ?? '';
  writeFileSync(file, 'THEM');
  expect(await save(token, 'new')).toContain('was changed by somebody else');
  expect(readFileSync(file, 'utf8')).toBe('THEM');
  rmSync(file);
  expect(await save(token, 'new')).toBe('saved');
  expect(readFileSync(file, 'utf8')).toBe('new');
});

test('save as proposes a plain name, adds the extension and gives a token to save to', async () => {
  app = await launch(browser, { save: [place('fresh')] });
  expect(await saveAs('../a:b\u0007?.ratiowright', 'one')).toEqual({ name: 'fresh.ratiowright', token: expect.any(String) });
  expect(options('save-dialog')).toEqual([
    expect.objectContaining({ defaultPath: 'ab.ratiowright', filters: [{ name: 'Shop files', extensions: ['ratiowright'] }] }),
  ]);
  const token = (await recent())?.[0]?.token ?? '';
  expect(await openRecent(token)).toMatchObject({ name: 'fresh.ratiowright', text: 'one' });
  expect(await saveAs('...', 'two')).toBeNull();
  expect(options('save-dialog')[1]).toMatchObject({ defaultPath: 'untitled.ratiowright' });
  expect(readdirSync(home)).toEqual(['fresh.ratiowright']);
});

test('save as does not replace a file that the dialog did not ask about', async () => {
  const file = place('shop.ratiowright', 'kept');
  app = await launch(browser, { save: [place('shop'), file] });
  expect(await saveAs('shop', 'new')).toBe('shop.ratiowright is there already. To replace it, choose it by its whole name.');
  expect(readFileSync(file, 'utf8')).toBe('kept');
  expect(await saveAs('shop', 'new')).toMatchObject({ name: 'shop.ratiowright' });
  expect(readFileSync(file, 'utf8')).toBe('new');
});

test('what cannot be opened says why: too large, no text, a folder, gone', async () => {
  const large = place('large.ratiowright', '');
  truncateSync(large, LARGEST_FILE_BYTES + 1);
  // More than Node reads at all: the size must be asked first.
  const huge = place('huge.ratiowright', '');
  truncateSync(huge, 2 ** 31 + 1);
  const directory = place('folder.ratiowright');
  mkdirSync(directory);
  app = await launch(browser, {
    open: [large, huge, place('bytes.ratiowright', Uint8Array.of(0x7b, 0xff, 0xfe)), directory, place('gone.ratiowright')],
  });
  expect(await openFailure()).toBe('large.ratiowright has 33554433 bytes; more than 33554432 are not read.');
  expect(await openFailure()).toBe('huge.ratiowright has 2147483649 bytes; more than 33554432 are not read.');
  expect(await openFailure()).toBe('bytes.ratiowright is not a text file.');
  expect(await openFailure()).toBe('folder.ratiowright is not a file.');
  expect(await openFailure()).toBe('gone.ratiowright was not opened: it is no longer where it was.');
  expect(await recent()).toEqual([]);
});

test('a folder that is gone is told when saving', async () => {
  mkdirSync(path.join(home, 'inner'));
  const file = place('inner/shop.ratiowright', 'text');
  app = await launch(browser, { open: [file] });
  const token = (await open())?.token ?? '';
  rmSync(path.join(home, 'inner'), { recursive: true });
  expect(await save(token, 'new')).toBe('shop.ratiowright was not saved: its folder is no longer there.');
});

test('the ten files used last are kept, the newest first, each once, until the next start', async () => {
  const names = Array.from({ length: 12 }, (_, index) => `shop${index}.ratiowright`);
  const files = names.map((name) => place(name, name));
  app = await launch(browser, { open: [...files, files[5] ?? ''] });
  for (let count = 0; count < 13; count += 1) await open();
  const expected = ['shop5', 'shop11', 'shop10', 'shop9', 'shop8', 'shop7', 'shop6', 'shop4', 'shop3', 'shop2'].map(
    (name) => `${name}.ratiowright`,
  );
  expect((await recent())?.map(({ name }) => name)).toEqual(expected);
  const { userData } = app.stage;
  await app.close();
  app = await launch(browser, { userData });
  const list = await recent();
  expect(list?.map(({ name }) => name)).toEqual(expected);
  expect(JSON.stringify(list)).not.toContain(home);
  expect(await openRecent(list?.[2]?.token ?? '')).toMatchObject({ name: 'shop10.ratiowright', text: 'shop10.ratiowright' });
});

test('a recent file that is gone says so and leaves the list', async () => {
  const file = place('shop.ratiowright', 'text');
  app = await launch(browser, { open: [file] });
  await open();
  const token = (await recent())?.[0]?.token ?? '';
  rmSync(file);
  expect(await openRecent(token)).toBe('shop.ratiowright was not opened: it is no longer where it was.');
  expect(await recent()).toEqual([]);
});

test('a damaged list of recent files counts as empty and is replaced', async () => {
  const userData = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-settings-'));
  const file = place('shop.ratiowright', 'text');
  for (const damaged of ['{', '7', '["relative", 7, null]']) {
    writeFileSync(path.join(userData, 'recent.json'), damaged);
    app = await launch(browser, { userData, open: [file] });
    expect(await recent()).toEqual([]);
    await open();
    expect((await recent())?.length).toBe(1);
    await app.close();
  }
  expect(existsSync(path.join(userData, 'recent.backup.json'))).toBe(false);
});
