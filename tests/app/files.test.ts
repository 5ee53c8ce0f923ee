import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
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
/** What a save came to: `saved`, with the name under which a stranger's file was kept; what a stranger wrote; or why it failed. */
const save = (token: string, text: string, seen: string | null = null) =>
  app.page.evaluate(
    ([to, what, version]) =>
      window.shell?.save(to, what, version).then(
        (saved) => ('theirs' in saved ? saved.theirs : saved.aside === null ? 'saved' : `saved, ${saved.aside}`),
        (error: Error) => error.message,
      ),
    [token, text, seen] as const,
  );
const opens = (token: string, seen: string | null = null) =>
  app.page.evaluate(([to, version]) => window.shell?.opens(to, version), [token, seen] as const);
const saveAs = (name: string, text: string) =>
  app.page.evaluate(([as, what]) => window.shell?.saveAs(as ?? '', what ?? '').catch((error: Error) => error.message), [name, text]);
const recent = () => app.page.evaluate(() => window.shell?.recent());
const openRecent = (token: string) =>
  app.page.evaluate((what) => window.shell?.openRecent(what).catch((error: Error) => error.message), token);

test('opening shows shop files only, and gives name, text and a token that is no path', async () => {
  app = await launch(browser, { open: [place('shop.ratiowright', 'text ü')] });
  const opened = await open();
  expect(opened).toEqual({ name: 'shop.ratiowright', text: 'text ü', token: expect.stringMatching(/^[0-9a-f-]{36}$/), backup: null });
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

test('saving keeps one backup, of the version that is known to open', async () => {
  const file = place('shop.ratiowright', 'first');
  const backup = path.join(home, 'shop.backup.ratiowright');
  app = await launch(browser, { open: [file] });
  const token = (await open())?.token ?? '';
  expect(await save(token, 'second')).toBe('saved');
  // Nobody has said that the first one opens.
  expect(readdirSync(home)).toEqual(['shop.ratiowright']);
  await opens(token);
  for (const text of ['third', 'fourth']) expect(await save(token, text)).toBe('saved');
  expect([readFileSync(file, 'utf8'), readFileSync(backup, 'utf8')]).toEqual(['fourth', 'second']);
  await opens(token);
  expect(await save(token, 'fifth')).toBe('saved');
  expect([readFileSync(file, 'utf8'), readFileSync(backup, 'utf8')]).toEqual(['fifth', 'fourth']);
  expect(readdirSync(home).sort()).toEqual(['shop.backup.ratiowright', 'shop.ratiowright']);
});

test('a file that was opened and refused changes nothing for the one that is open', async () => {
  const file = place('shop.ratiowright', 'good');
  app = await launch(browser, { open: [file, file] });
  const token = (await open())?.token ?? '';
  await opens(token);
  expect(await save(token, 'mine')).toBe('saved');
  await opens(token);
  writeFileSync(file, '{"damaged');
  // The page reads it, refuses it, and goes on with what it has.
  await open();
  expect(await save(token, 'new')).toMatchObject({ text: '{"damaged' });
  expect(readFileSync(file, 'utf8')).toBe('{"damaged');
  expect(readFileSync(path.join(home, 'shop.backup.ratiowright'), 'utf8')).toBe('good');
});

test('two saves asked for at once are done in their order, though the first takes longer', async () => {
  const file = place('shop.ratiowright', 'first');
  app = await launch(browser, { open: [file] });
  const token = (await open())?.token;
  await opens(token ?? '');
  const call = app.stage.handlers.get('save');
  const event = { sender: app.window.webContents, senderFrame: { url: 'app://ratiowright/', parent: null } };
  const long = 'x'.repeat(LARGEST_FILE_BYTES);
  const written = { ok: true, value: { aside: null } };
  expect(await Promise.all([call?.(event, token, long, null), call?.(event, token, 'last', null)])).toEqual([written, written]);
  expect(readFileSync(file, 'utf8')).toBe('last');
  expect(readFileSync(path.join(home, 'shop.backup.ratiowright'), 'utf8')).toBe('first');
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
  await opens(token);
  writeFileSync(file, 'THEM');
  expect(await save(token, 'new')).toEqual({
    text: 'THEM',
    what: 'shop.ratiowright was changed by somebody else since it was opened.',
    seen: expect.stringMatching(/^[0-9a-f]{64}$/),
  });
  expect(readFileSync(file, 'utf8')).toBe('THEM');
  rmSync(file);
  expect(await save(token, 'new')).toBe('saved');
  expect(readFileSync(file, 'utf8')).toBe('new');
});

test('only the version that was seen gives way, and it is kept aside; a later one is held back again', async () => {
  const file = place('shop.ratiowright', 'mine');
  app = await launch(browser, { open: [file] });
  const token = (await open())?.token ?? '';
  await opens(token);
  const seen = async () => {
    const held = await save(token, 'new');
    return typeof held === 'object' ? held.seen : '';
  };
  writeFileSync(file, 'theirs');
  const first = await seen();
  writeFileSync(file, 'theirs again');
  expect(await save(token, 'new', first)).toMatchObject({ text: 'theirs again' });
  expect(await save(token, 'new', await seen())).toBe('saved, shop.aside 1.ratiowright');
  writeFileSync(file, Uint8Array.of(0x7b, 0xff, 0xfe));
  const held = await save(token, 'newer');
  expect(held).toMatchObject({ text: null, what: 'shop.ratiowright is not a text file.' });
  expect(await save(token, 'newer', typeof held === 'object' ? held.seen : '')).toBe('saved, shop.aside 2.ratiowright');
  expect(readFileSync(file, 'utf8')).toBe('newer');
  expect(readFileSync(path.join(home, 'shop.aside 1.ratiowright'), 'utf8')).toBe('theirs again');
  expect([...readFileSync(path.join(home, 'shop.aside 2.ratiowright'))]).toEqual([0x7b, 0xff, 0xfe]);
  expect(readdirSync(home).sort()).toEqual(['shop.aside 1.ratiowright', 'shop.aside 2.ratiowright', 'shop.ratiowright']);
});

test('taking theirs makes their version the one that saving may replace', async () => {
  const file = place('shop.ratiowright', 'mine');
  app = await launch(browser, { open: [file] });
  const token = (await open())?.token ?? '';
  writeFileSync(file, 'theirs');
  const held = await save(token, 'new');
  await opens(token, typeof held === 'object' ? held.seen : '');
  expect(await save(token, 'newer')).toBe('saved');
  expect(readFileSync(path.join(home, 'shop.backup.ratiowright'), 'utf8')).toBe('theirs');
});

test('save as proposes a plain name, adds the extension and gives a token to save to', async () => {
  app = await launch(browser, { save: [place('fresh')] });
  expect(await saveAs('../a:b\u0007?.ratiowright', 'one')).toEqual({ name: 'fresh.ratiowright', token: expect.any(String), aside: null });
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
  // The person has agreed to replace it, but whose work it is nobody knows.
  expect(await saveAs('shop', 'new')).toMatchObject({ name: 'shop.ratiowright', aside: 'shop.aside 1.ratiowright' });
  expect(readFileSync(file, 'utf8')).toBe('new');
  expect(readFileSync(path.join(home, 'shop.aside 1.ratiowright'), 'utf8')).toBe('kept');
});

test('saving under the name of the file that is open is like saving it', async () => {
  const file = place('shop.ratiowright', 'first');
  app = await launch(browser, { open: [file], save: [file] });
  await opens((await open())?.token ?? '');
  expect(await saveAs('shop', 'second')).toMatchObject({ aside: null });
  expect(readdirSync(home).sort()).toEqual(['shop.backup.ratiowright', 'shop.ratiowright']);
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
  expect(await save(token, 'new')).toBe(
    'shop.ratiowright was not saved: its folder or drive is no longer there. What is on the disk was left as it was.',
  );
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

test('a damaged list of recent files is kept aside and told once, and a new one is begun', async () => {
  const userData = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-settings-'));
  const file = place('shop.ratiowright', 'text');
  const told = () =>
    app.page.evaluate(() =>
      window.shell?.recent().then(
        (list) => list.length,
        (error: Error) => error.message,
      ),
    );
  const damages = ['{', '7', '["relative", 7, null]'];
  for (const [index, damaged] of damages.entries()) {
    writeFileSync(path.join(userData, 'recent.json'), damaged);
    app = await launch(browser, { userData, open: [file] });
    const line = `The list of recent files could not be read. It was kept as recent.aside ${index + 1}.json, and a new list is begun.`;
    // The start page asks for the list too: whoever comes first is told.
    await expect.poll(() => app.page.locator('.notice p').textContent()).toBe(line);
    expect(await told()).toBe(0);
    await open();
    expect(await told()).toBe(1);
    expect(readFileSync(path.join(userData, `recent.aside ${index + 1}.json`), 'utf8')).toBe(damaged);
    await app.close();
  }
});

test('names with unusual characters are opened, saved and shown so that they fit one line of a sentence', async () => {
  // What Windows does not take is left out there.
  const names = [
    'ölwechsel – 100 %.ratiowright',
    '🛠️ bench.ratiowright',
    "it's #1 & 'more'.ratiowright",
    'שולחן.ratiowright',
    ...(process.platform === 'win32' ? [] : ['two\nlines\tand "more"?.ratiowright', 'evil\u202etxt.ratiowright']),
  ];
  const shown = [
    'ölwechsel – 100 %.ratiowright',
    '🛠️ bench.ratiowright',
    "it's #1 & 'more'.ratiowright",
    '\u2068שולחן.ratiowright\u2069',
    'two␣lines␣and "more"?.ratiowright',
    'eviltxt.ratiowright',
  ];
  app = await launch(browser, { open: names.map((name) => place(name, 'text')) });
  for (const [index, name] of names.entries()) {
    const opened = await open();
    expect(opened?.name).toBe(shown[index]);
    await opens(opened?.token ?? '');
    expect(await save(opened?.token ?? '', 'new')).toBe('saved');
    expect(readFileSync(path.join(home, name), 'utf8')).toBe('new');
  }
  expect((await recent())?.map(({ name }) => name)).toEqual(shown.slice(0, names.length).reverse());
  expect(readdirSync(home)).toHaveLength(2 * names.length);
});

test('a name as long as the disk takes it has a backup too, under a shortened name [255 bytes, POSIX NAME_MAX on common disks, from memory]', async () => {
  const name = `${'ü'.repeat(120)}.ratiowright`;
  app = await launch(browser, { open: [place(name, 'first')] });
  const token = (await open())?.token ?? '';
  await opens(token);
  expect(await save(token, 'second')).toBe('saved');
  const [backup] = readdirSync(home).filter((one) => one.includes('.backup.'));
  expect(backup).toMatch(/^ü+\.backup\.ratiowright$/);
  expect(Buffer.byteLength(backup ?? '')).toBeLessThanOrEqual(255);
  expect(readFileSync(path.join(home, backup ?? ''), 'utf8')).toBe('first');
});
