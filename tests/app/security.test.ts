import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { LARGEST_FILE_BYTES } from '../../core/src/file/envelope.ts';
import type {} from '../../renderer/src/host/desktop.ts';
import { type Launched, launch, start } from '../harness/launch.ts';
import { checked, deviceGranted, granted, requestPasses } from '../harness/stage.ts';
import { preventable } from '../harness/window.ts';
import { startBrowser } from './browser.ts';

// Numbers in brackets are those of the security checklist in Electron's own documentation [from memory].

const ROOT = path.resolve(import.meta.dirname, '../..');
const FOREIGN = [
  'http://elsewhere.test/',
  'https://ratiowright/',
  'app://elsewhere/',
  'app://ratiowright.elsewhere/',
  'file:///etc/passwd',
  'data:text/html,x',
  'no address',
];

const CALLS = [
  'autosave',
  'autosaves',
  'dropAutosave',
  'handedOver',
  'open',
  'openRecent',
  'opens',
  'print',
  'recent',
  'resume',
  'save',
  'saveAs',
  'savePdf',
  'unsaved',
];

let browser: Browser;
let app: Launched;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(() => app.close());

const served = (address: string, init: RequestInit = {}) => {
  const serve = app.stage.schemes.get('app');
  if (serve === undefined) throw new Error('the app serves no scheme');
  return serve(new Request(address, init));
};
const called = async (call: string, event: object, ...args: unknown[]) => app.stage.handlers.get(call)?.(event, ...args);
const fromPage = () => ({ sender: app.window.webContents, senderFrame: { url: 'app://ratiowright/', parent: null } });

test('the window is sandboxed, isolated and without Node, webview or developer tools [2, 3, 4, 12]', async () => {
  app = await launch(browser, { isPackaged: true });
  expect(app.window.options.webPreferences).toEqual({
    preload: path.join(ROOT, 'dist/electron/preload.cjs'),
    sandbox: true,
    contextIsolation: true,
    nodeIntegration: false,
    webviewTag: false,
    spellcheck: false,
    devTools: false,
  });
  expect(app.stage.log).toContainEqual(['enableSandbox']);
});

test('the page gets one function for each call and nothing of Electron or Node [20]', async () => {
  app = await launch(browser);
  // What a preload puts into the page cannot be taken away again; little else is so.
  const names = () =>
    Object.entries(Object.getOwnPropertyDescriptors(globalThis)).flatMap(([name, { configurable, enumerable }]) =>
      enumerable && !configurable ? [name] : [],
    );
  const blank = await browser.newPage();
  const usual = new Set(await blank.evaluate(names));
  await blank.close();
  expect((await app.page.evaluate(names)).filter((name) => !usual.has(name))).toEqual(['shell']);
  const seen = await app.page.evaluate(() => ({
    shell: Object.keys(window.shell ?? {}).sort(),
    kinds: [...new Set(Object.values(window.shell ?? {}).map((part) => typeof part))],
    leaks: ['require', 'process', 'module', 'Buffer', 'standInInvoke'].filter((name) => name in globalThis),
  }));
  expect(seen).toEqual({
    shell: ['onCommand', ...CALLS].sort(),
    kinds: ['function'],
    leaks: [],
  });
});

test('every call refuses a sender that is gone, foreign, or a frame inside the page [17]', async () => {
  app = await launch(browser);
  const sender = app.window.webContents;
  const top = { url: 'app://ratiowright/', parent: null };
  const senders = [
    { sender, senderFrame: null },
    ...FOREIGN.map((url) => ({ sender, senderFrame: { ...top, url } })),
    { sender, senderFrame: { ...top, parent: top } },
    { sender: undefined, senderFrame: top },
  ];
  app.stage.log.length = 0;
  expect([...app.stage.handlers.keys()].sort()).toEqual(CALLS);
  for (const call of app.stage.handlers.keys())
    for (const event of senders) await expect(called(call, event, 'name', 'A4')).rejects.toThrow('may not call');
  expect(app.stage.log).toEqual([]);
  expect(await called('recent', fromPage())).toEqual({ ok: true, value: [] });
});

test('every argument is checked by type and size before anything is done [17]', async () => {
  app = await launch(browser, { save: ['/never/a', '/never/b'] });
  const tooLarge = 'ü'.repeat(LARGEST_FILE_BYTES / 2 + 1);
  const wrong: readonly [string, ...unknown[]][] = [
    ['openRecent', 7],
    ['openRecent', 'x'.repeat(301)],
    ['save', null, 'text', null],
    ['save', 'token', { toString: 'text' }, null],
    ['save', 'token', tooLarge, null],
    ['save', 'token', 'text', 7],
    ['save', 'token', 'text'],
    ['opens', 'token', {}],
    ['opens', null, null],
    ['autosave', null],
    ['autosave', { name: 'x', token: null, base: 7, text: '' }],
    ['autosave', { name: 'x'.repeat(301), token: null, base: '', text: '' }],
    ['autosave', { name: 'x', token: null, base: '', text: tooLarge }],
    ['autosave', { name: 'x', token: 7, base: '', text: '' }],
    // An id is the name of a file: it may lead nowhere else.
    ['resume', null],
    ['resume', '../recent'],
    ['dropAutosave', '../../x'],
    ['dropAutosave', 7],
    ['saveAs', ['name'], 'text'],
    ['saveAs', 'x'.repeat(301), 'text'],
    ['saveAs', 'name'],
    ['saveAs', 'name', tooLarge],
    ['savePdf', 'name', 'A0'],
    ['savePdf', undefined, 'A4'],
    ['unsaved', 'yes', 'title'],
    ['unsaved', true, 7],
  ];
  app.stage.log.length = 0;
  for (const [call, ...args] of wrong)
    expect(await called(call, fromPage(), ...args)).toMatchObject({ ok: false, what: expect.stringMatching(/must be|more than|too long/) });
  expect(app.stage.log).toEqual([]);
});

test('navigation stays on the page of the app: scheme and host are compared [13]', async () => {
  app = await launch(browser);
  for (const kind of ['will-navigate', 'will-frame-navigate', 'will-redirect']) {
    const prevented = (url: string) => {
      const event = preventable({ url });
      app.window.webContents.emit(kind, event);
      return event.defaultPrevented;
    };
    expect(
      FOREIGN.filter((url) => !prevented(url)),
      kind,
    ).toEqual([]);
    expect(['app://ratiowright/', 'app://ratiowright/index.html#machine'].filter(prevented), kind).toEqual([]);
  }
  await app.page.evaluate(() => {
    location.href = 'http://elsewhere.test/';
  });
  await expect.poll(() => app.stage.log).toContainEqual(['navigate', 'http://elsewhere.test/', true]);
  expect(app.window.webContents.getURL()).toBe('app://ratiowright/');
});

test('a frame inside the page goes nowhere, even without the content policy [13]', async () => {
  app = await launch(browser, { bypassPolicy: true });
  await app.page.evaluate(() =>
    document.body.append(Object.assign(document.createElement('iframe'), { src: 'http://elsewhere.test/frame' })),
  );
  await expect.poll(() => app.stage.log).toContainEqual(['navigate', 'http://elsewhere.test/frame', true]);
});

test('no new window opens and no webview attaches [11, 12, 14]', async () => {
  app = await launch(browser);
  await app.page.evaluate(() => void window.open(location.href));
  await app.page.evaluate(() => void window.open('http://elsewhere.test/'));
  await expect.poll(() => app.stage.log.filter(([what]) => what === 'window-open').map(([, , action]) => action)).toEqual(['deny', 'deny']);
  const attach = preventable({});
  app.window.webContents.emit('will-attach-webview', attach);
  expect(attach.defaultPrevented).toBe(true);
});

test('no permission and no device is granted [5]', async () => {
  app = await launch(browser);
  const states = await app.page.evaluate(async () => {
    const names = ['geolocation', 'notifications', 'camera', 'microphone'] as const;
    return Promise.all(names.map(async (name) => (await navigator.permissions.query({ name })).state));
  });
  expect(states).not.toContain('granted');
  for (const permission of ['geolocation', 'media', 'notifications', 'clipboard-read', 'fullscreen', 'openExternal']) {
    expect(granted(app.stage, permission), permission).toBe(false);
    expect(checked(app.stage, permission), permission).toBe(false);
  }
  for (const device of ['hid', 'serial', 'usb']) expect(deviceGranted(app.stage, device), device).toBe(false);
});

test('no request leaves the machine, even without the content policy [1]', async () => {
  app = await launch(browser, { bypassPolicy: true });
  const reached = await app.page.evaluate(() =>
    fetch('http://elsewhere.test/x').then(
      () => 'reached',
      () => 'refused',
    ),
  );
  expect(reached).toBe('refused');
  expect(app.stage.log).toContainEqual(['cancelled', 'http://elsewhere.test/x']);
  expect(app.stage.log.filter(([what]) => what === 'network')).toEqual([]);
  const remote = [
    'http://a.test/',
    'https://a.test/',
    'ws://a.test/',
    'wss://a.test/',
    'ftp://a.test/',
    'file:///etc/passwd',
    'appx://ratiowright/',
    'no address',
  ];
  expect(remote.filter((url) => requestPasses(app.stage, url))).toEqual([]);
  const local = ['app://ratiowright/', 'blob:app://ratiowright/1', 'data:image/png;base64,', 'devtools://devtools/x'];
  expect(local.filter((url) => !requestPasses(app.stage, url))).toEqual([]);
});

test('page and header carry the same strict content policy, and the header forbids framing [7]', async () => {
  app = await launch(browser);
  const policy =
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'";
  for (const address of ['app://ratiowright/', 'app://ratiowright/missing', 'app://elsewhere/']) {
    const { headers } = await served(address);
    expect(headers.get('content-security-policy')).toBe(`${policy}; frame-ancestors 'none'`);
    expect(headers.get('x-content-type-options')).toBe('nosniff');
  }
  expect(await app.page.getAttribute('meta[http-equiv="Content-Security-Policy"]', 'content')).toBe(policy);
  await app.page.evaluate(() => {
    document.addEventListener('securitypolicyviolation', (event) =>
      document.body.setAttribute(`data-${event.effectiveDirective}`, 'blocked'),
    );
    const script = Object.assign(document.createElement('script'), { textContent: 'document.body.dataset.ran = "yes"' });
    document.head.append(script, Object.assign(document.createElement('style'), { textContent: 'body { color: red }' }));
    void fetch('http://elsewhere.test/').catch(() => undefined);
  });
  const outcomes = () =>
    app.page.evaluate(() =>
      document.body
        .getAttributeNames()
        .filter((name) => /-src|ran/.test(name))
        .sort(),
    );
  await expect.poll(outcomes).toEqual(['data-connect-src', 'data-script-src-elem', 'data-style-src-elem']);
});

test('the scheme serves the files of the page by GET, and nothing outside their folder [18]', async () => {
  app = await launch(browser);
  expect(Object.fromEntries(app.stage.privileges)).toEqual({ app: { standard: true, secure: true, supportFetchAPI: true } });
  const page = await served('app://ratiowright/');
  expect([page.status, page.headers.get('content-type')]).toEqual([200, 'text/html; charset=utf-8']);
  expect(await page.text()).toBe(readFileSync(path.join(ROOT, 'dist/renderer/index.html'), 'utf8'));
  const status = async (address: string, init?: RequestInit) => (await served(address, init)).status;
  const outside = [
    '..%2f..%2fpackage.json',
    'assets/..%2f..%2f..%2fpackage.json',
    '..%2frenderer-other/x',
    '%2e%2e%2felectron/main.js',
    '%',
  ];
  for (const name of outside) expect(await status(`app://ratiowright/${name}`), name).toBe(403);
  expect(await status('app://ratiowright/..%5c..%5cpackage.json')).not.toBe(200);
  expect(await status('app://elsewhere/index.html')).toBe(403);
  for (const name of ['missing.js', 'assets', 'index.html%00.js']) expect(await status(`app://ratiowright/${name}`), name).toBe(404);
  for (const method of ['POST', 'PUT', 'DELETE', 'HEAD']) expect(await status('app://ratiowright/', { method }), method).toBe(405);
  expect(await app.page.evaluate(() => fetch('/..%2f..%2fpackage.json').then(({ status: code }) => code))).toBe(403);
});

test('a second instance gives way to the first and opens no window', async () => {
  app = await launch(browser);
  const second = await start(browser, { secondInstance: true });
  expect(second.stage.log).toContainEqual(['quit']);
  expect([...second.standIn.windows]).toEqual([]);
});
