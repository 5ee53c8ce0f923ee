import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { LARGEST_FILE_BYTES } from '../../core/src/file/envelope.ts';
import type { Host } from '../../renderer/src/host/host.ts';
import { startBrowser } from './browser.ts';

// The hosts alone on an empty page. The file handles of the plain browser are real ones, from the browser's private folder, where no dialog is needed.

declare global {
  interface Window {
    host: Host;
    picking: Promise<Host>;
    printed: string[];
    /** What the file pickers answer next, and what they were asked. */
    picks: FileSystemFileHandle[];
    asked: unknown[];
  }
}

const ENTRY = path.resolve(import.meta.dirname, '../../renderer/src/host/pick.ts');
let browser: Browser;
let script: string;
let page: Page;

beforeAll(async () => {
  const built = await build({
    configFile: false,
    logLevel: 'warn',
    build: {
      write: false,
      minify: false,
      lib: { entry: ENTRY, formats: ['iife'], name: 'picked' },
      rolldownOptions: { output: { codeSplitting: false } },
    },
  });
  script = [built].flat().flatMap((one) => ('output' in one ? [one.output[0].code] : []))[0] ?? '';
  browser = await startBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  page = await (await browser.newContext({ locale: 'en-US' })).newPage();
  await page.route('**/*', (route) => route.fulfill({ contentType: 'text/html', body: '<title>App</title>' }));
  await page.goto('http://localhost:1/');
  await page.evaluate(() => {
    window.printed = [];
    window.print = () => void window.printed.push(document.title);
  });
});
afterEach(() => page.context().close());

/** A plain browser, with pickers that answer from the private folder, or without any, as in a browser that has none. */
async function start(pickers: boolean): Promise<void> {
  await page.evaluate((has) => {
    window.picks = [];
    window.asked = [];
    const pick = async (options: unknown) => {
      window.asked.push(options);
      const handle = window.picks.shift();
      if (handle === undefined) throw new DOMException('The user aborted a request.', 'AbortError');
      return handle;
    };
    Object.assign(
      window,
      has
        ? { showOpenFilePicker: async (options: unknown) => [await pick(options)], showSaveFilePicker: pick }
        : { showOpenFilePicker: undefined, showSaveFilePicker: undefined },
    );
  }, pickers);
  await pickIn();
}

/** The host as the app picks it. */
async function pickIn(): Promise<void> {
  await page.addScriptTag({ content: `${script}\nwindow.picking = picked.pickHost();` });
  await page.evaluate(async () => {
    window.host = await window.picking;
  });
}

/** A file of the private folder with its content, as the next pick. */
const pick = (name: string, content: string) =>
  page.evaluate(
    async ([called, text]) => {
      const handle = await (await navigator.storage.getDirectory()).getFileHandle(called, { create: true });
      const stream = await handle.createWritable();
      await stream.write(text);
      await stream.close();
      window.picks.push(handle);
    },
    [name, content] as const,
  );
const contentOf = (name: string) =>
  page.evaluate(async (called) => (await (await (await navigator.storage.getDirectory()).getFileHandle(called)).getFile()).text(), name);

test('with file handles, a file is opened, written back and saved under another name', async () => {
  await start(true);
  await pick('shop.ratiowright', '\ufefffirst');
  const opened = await page.evaluate(() => window.host.open());
  expect(opened).toEqual({ name: 'shop.ratiowright', text: 'first', token: expect.stringMatching(/^[0-9a-f-]{36}$/), backup: null });
  const token = opened?.token ?? '';
  for (const text of ['second', 'third'])
    expect(await page.evaluate(([to, what]) => window.host.save('shop.ratiowright', what, to, null), [token, text] as const)).toEqual({
      name: 'shop.ratiowright',
      token,
      aside: null,
    });
  expect(await contentOf('shop.ratiowright')).toBe('third');
  await pick('other.ratiowright', '');
  const saved = await page.evaluate(() => window.host.saveAs('shop.ratiowright', 'copy'));
  expect(saved).toEqual({ name: 'other.ratiowright', token: expect.any(String), aside: null });
  expect(await page.evaluate((to) => window.host.save('other.ratiowright', 'again', to, null), saved?.token ?? null)).toMatchObject({
    name: 'other.ratiowright',
  });
  expect(await contentOf('other.ratiowright')).toBe('again');
  expect(await contentOf('shop.ratiowright')).toBe('third');
  const types = [{ description: 'Shop file', accept: { 'application/json': ['.ratiowright'] } }];
  expect(await page.evaluate(() => window.asked)).toEqual([{ types }, { suggestedName: 'shop.ratiowright', types }]);
});

test('giving up in a picker is no failure', async () => {
  await start(true);
  expect(
    await page.evaluate(async () => [
      await window.host.open(),
      await window.host.saveAs('a', 'b'),
      await window.host.save('a', 'b', null, null),
    ]),
  ).toEqual([null, null, null]);
});

/** What a save came to: what a stranger wrote, or where what he had left was kept. */
const save = (text: string, token: string, seen: string | null = null) =>
  page.evaluate(([what, to, version]) => window.host.save('shop.ratiowright', what, to, version).catch((error: Error) => error.message), [
    text,
    token,
    seen,
  ] as const);

test('a file that somebody else changed since is not overwritten, whatever its time says; the version that was seen is kept as a download', async () => {
  await start(true);
  await pick('shop.ratiowright', 'mine');
  const token = (await page.evaluate(() => window.host.open()))?.token ?? '';
  await pick('shop.ratiowright', 'them');
  const held = await save('new', token);
  expect(held).toEqual({
    theirs: { text: 'them', what: 'shop.ratiowright was changed by somebody else since it was opened.', seen: expect.any(String) },
  });
  expect(await contentOf('shop.ratiowright')).toBe('them');
  const downloading = page.waitForEvent('download');
  const seen = typeof held === 'object' && held !== null && 'theirs' in held ? held.theirs.seen : '';
  expect(await save('new', token, seen)).toEqual({ name: 'shop.ratiowright', token, aside: 'shop.aside.ratiowright' });
  const download = await downloading;
  expect([download.suggestedFilename(), readFileSync(await download.path(), 'utf8')]).toEqual(['shop.aside.ratiowright', 'them']);
  expect(await contentOf('shop.ratiowright')).toBe('new');
});

test('their version, once taken, is the one that saving replaces', async () => {
  await start(true);
  await pick('shop.ratiowright', 'mine');
  const token = (await page.evaluate(() => window.host.open()))?.token ?? '';
  await pick('shop.ratiowright', 'them');
  const held = await save('new', token);
  const seen = typeof held === 'object' && held !== null && 'theirs' in held ? held.theirs.seen : '';
  await page.evaluate(([to, version]) => window.host.opens(to, version), [token, seen] as const);
  expect(await save('new', token)).toMatchObject({ aside: null });
});

test.each([
  ['NotAllowedError', 'the browser may not write to it'],
  ['QuotaExceededError', 'the disk is full'],
  ['NoModificationAllowedError', 'it is read-only, or another program holds it'],
  ['NotFoundError', 'its folder or drive is no longer there'],
  ['UnheardOfError', 'the browser says UnheardOfError'],
])('a browser that fails with %s says so, and what is on the disk stays [File System Standard, from memory]', async (failure, reason) => {
  await start(true);
  await pick('shop.ratiowright', 'mine');
  const token = (await page.evaluate(() => window.host.open()))?.token ?? '';
  await page.evaluate((name) => {
    FileSystemFileHandle.prototype.createWritable = () => Promise.reject(new DOMException('', name));
  }, failure);
  expect(await save('new', token)).toBe(`shop.ratiowright was not saved: ${reason}. What is on the disk was left as it was.`);
  expect(await contentOf('shop.ratiowright')).toBe('mine');
});

const works = () => page.evaluate(() => window.host.autosaves());

test('unsaved work outlives its page, with its file; a page that is alive keeps its own to itself', async () => {
  await start(true);
  await pick('shop.ratiowright', 'mine');
  const token = (await page.evaluate(() => window.host.open()))?.token ?? null;
  expect(await works()).toEqual({ works: [], unreadable: [] });
  for (const text of ['work', 'more work'])
    await page.evaluate(([to, what]) => window.host.autosave({ name: 'shop.ratiowright', token: to, base: 'mine', text: what }), [
      token,
      text,
    ] as const);
  const first = page;
  page = await first.context().newPage();
  await page.route('**/*', (route) => route.fulfill({ contentType: 'text/html', body: '<title>App</title>' }));
  await page.goto('http://localhost:1/');
  await start(true);
  expect((await works()).works).toEqual([]);
  await first.close();
  await expect.poll(async () => (await works()).works.length).toBe(1);
  const [left] = (await works()).works;
  expect(left).toEqual({
    id: expect.any(String),
    at_ms: expect.any(Number),
    name: 'shop.ratiowright',
    base: 'mine',
    text: 'more work',
    onDisk: 'mine',
  });
  const again = await page.evaluate((id) => window.host.resume(id), left?.id ?? '');
  expect(await save('saved', again ?? '')).toMatchObject({ aside: null });
  expect(await contentOf('shop.ratiowright')).toBe('saved');
  expect((await works()).works).toEqual([]);
  await page.evaluate(() => window.host.dropAutosave(null));
  await page.reload();
  await start(true);
  await expect.poll(async () => (await works()).works).toEqual([]);
});

test('without file handles, a file is uploaded, and saving downloads it', async () => {
  await start(false);
  const chooser = page.waitForEvent('filechooser');
  const opening = page.evaluate(() => window.host.open());
  await (await chooser).setFiles({ name: 'shop.ratiowright', mimeType: '', buffer: Buffer.from('text ü') });
  const opened = await opening;
  expect(opened).toMatchObject({ name: 'shop.ratiowright', text: 'text ü' });
  const downloading = page.waitForEvent('download');
  expect(await page.evaluate(([to]) => window.host.save('shop.ratiowright', 'new ü', to, null), [opened?.token ?? ''] as const)).toEqual({
    name: 'shop.ratiowright',
    token: null,
    aside: null,
  });
  const download = await downloading;
  expect(download.suggestedFilename()).toBe('shop.ratiowright');
  expect(readFileSync(await download.path(), 'utf8')).toBe('new ü');
});

test('a file that is too large or no text is refused with a sentence', async () => {
  await start(true);
  const refusal = () =>
    page.evaluate(() =>
      window.host.open().then(
        () => 'opened',
        (error: Error) => error.message,
      ),
    );
  await page.evaluate(async (size) => {
    const handle = await (await navigator.storage.getDirectory()).getFileHandle('large.ratiowright', { create: true });
    const stream = await handle.createWritable();
    await stream.truncate(size);
    await stream.close();
    const bytes = await (await navigator.storage.getDirectory()).getFileHandle('bytes.ratiowright', { create: true });
    const other = await bytes.createWritable();
    await other.write(Uint8Array.of(0x7b, 0xff, 0xfe));
    await other.close();
    window.picks.push(handle, bytes);
  }, LARGEST_FILE_BYTES + 1);
  expect(await refusal()).toBe('large.ratiowright has 33554433 bytes; more than 33554432 are not read.');
  expect(await refusal()).toBe('bytes.ratiowright is not a text file.');
});

test('a PDF is printed under its name, and the title comes back afterwards', async () => {
  await start(false);
  await page.evaluate(() => window.host.unsaved(false, 'shop – Ratiowright'));
  expect(await page.evaluate(() => window.host.savePdf('change sheet 7.pdf', 'A4'))).toBe(true);
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await page.evaluate(() => window.host.print());
  expect(await page.evaluate(() => window.printed)).toEqual(['change sheet 7', 'shop – Ratiowright']);
});

test('leaving the page asks while work is unsaved, and only then', async () => {
  await start(false);
  const asks = () => page.evaluate(() => !window.dispatchEvent(new Event('beforeunload', { cancelable: true })));
  expect(await asks()).toBe(false);
  await page.evaluate(() => window.host.unsaved(true, '• shop'));
  expect([await asks(), await page.title()]).toEqual([true, '• shop']);
  await page.evaluate(() => window.host.unsaved(false, 'shop'));
  expect(await asks()).toBe(false);
});

test('a dropped file is opened once: with its handle where the browser gives one, else as an upload', async () => {
  await start(true);
  await pick('shop.ratiowright', 'first');
  const taken = await page.evaluate(async () => {
    const handle = window.picks.shift();
    const drop = async (own: () => Promise<FileSystemHandle | null>) => {
      const item = new DataTransfer().items.add(new File(['upload'], 'up.ratiowright'));
      const file = item?.getAsFile();
      if (item === null || !file) throw new Error('no item');
      Object.assign(item, { getAsFileSystemHandle: own });
      await window.host.dropped(file, item);
      return [await window.host.handedOver(), await window.host.handedOver()];
    };
    const withHandle = await drop(async () => handle ?? null);
    await window.host.save('shop.ratiowright', 'second', withHandle[0]?.token ?? null, null);
    return [...withHandle, ...(await drop(async () => null))];
  });
  expect(taken).toEqual([
    { name: 'shop.ratiowright', text: 'first', token: expect.stringMatching(/^[0-9a-f-]{36}$/), backup: null },
    null,
    { name: 'up.ratiowright', text: 'upload', token: '', backup: null },
    null,
  ]);
  expect(await contentOf('shop.ratiowright')).toBe('second');
});

test('a browser keeps no recent files and is handed none', async () => {
  await start(false);
  expect(await page.evaluate(async () => [window.host.kind, await window.host.recent(), await window.host.handedOver()])).toEqual([
    'browser',
    [],
    null,
  ]);
});

test('with a shell, every call goes to it, and a save without a place asks for one', async () => {
  await page.evaluate(() => {
    const calls: unknown[] = [];
    const answers: Readonly<Record<string, unknown>> = {
      saveAs: { name: 'chosen', token: 'new', aside: null },
      save: { aside: 'shop.aside 1' },
    };
    const answer =
      (call: string) =>
      (...args: unknown[]) => {
        calls.push([call, ...args.filter((arg) => typeof arg !== 'function')]);
        return Promise.resolve(answers[call] ?? call);
      };
    const names = 'open openRecent recent handedOver dropped save saveAs opens print savePdf unsaved close menu onCommand'.split(' ');
    const kept = ['autosave', 'dropAutosave', 'autosaves', 'resume'];
    Object.assign(window, { shell: Object.fromEntries([...names, ...kept].map((name) => [name, answer(name)])), asked: calls });
  });
  await pickIn();
  const work = { name: 'shop', token: 't', base: 'a', text: 'b' };
  const answers = await page.evaluate(async (unsaved) => {
    const { host } = window;
    host.unsaved(true, 'title');
    host.onCommand(() => undefined);
    host.menu([]);
    host.close();
    const { items } = new DataTransfer();
    const item = items.add(new File(['text'], 'dropped'));
    const file = item?.getAsFile();
    if (item !== null && file) await host.dropped(file, item);
    return [
      host.kind,
      await host.open(),
      await host.openRecent('t'),
      await host.recent(),
      await host.handedOver(),
      await host.save('shop', 'text', 't', null),
      await host.save('shop', 'text', null, null),
      await host.opens('t', 'seen'),
      await host.autosave(unsaved),
      await host.dropAutosave(null),
      await host.autosaves(),
      await host.resume('id'),
      await host.print(),
      await host.savePdf('sheet', 'Letter'),
    ];
  }, work);
  expect(answers).toEqual([
    'desktop',
    'open',
    'openRecent',
    'recent',
    'handedOver',
    { name: 'shop', token: 't', aside: 'shop.aside 1' },
    { name: 'chosen', token: 'new', aside: null },
    'opens',
    'autosave',
    'dropAutosave',
    'autosaves',
    'resume',
    'print',
    'savePdf',
  ]);
  expect(await page.evaluate(() => window.asked)).toEqual([
    ['unsaved', true, 'title'],
    ['onCommand'],
    ['menu', []],
    ['close'],
    ['dropped', expect.anything()],
    ['open'],
    ['openRecent', 't'],
    ['recent'],
    ['handedOver'],
    ['save', 't', 'text', null],
    ['saveAs', 'shop', 'text'],
    ['opens', 't', 'seen'],
    ['autosave', work],
    ['dropAutosave', null],
    ['autosaves'],
    ['resume', 'id'],
    ['print'],
    ['savePdf', 'sheet', 'Letter'],
  ]);
});
