import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect } from 'vitest';
import { LARGEST_FILE_BYTES } from '../../core/src/file/envelope.ts';
import type {} from '../../renderer/src/host/desktop.ts';
import { type Launched, start } from '../harness/launch.ts';
import { type Choices, checked, deviceGranted, granted, requestPasses } from '../harness/stage.ts';
import { preventable } from '../harness/window.ts';

/** One rule of the shell, held against an app that runs. */
export interface Rule {
  readonly what: string;
  /** Its numbers in the security checklist of Electron's own documentation [from memory]. */
  readonly checklist: readonly number[];
  readonly choices?: Choices;
  readonly holds: (app: Launched) => Promise<void>;
}

const buildOf = (app: Launched): string => app.stage.choices.build ?? path.resolve(import.meta.dirname, '../../dist');
const PATIENCE_ms = 3000;
/** What never comes in a broken app is not waited for as long. */
const poll = <T>(app: Launched, look: () => T) => expect.poll(look, app.stage.choices.build === undefined ? {} : { timeout: PATIENCE_ms });
/** What was done, but for the page's own calls. */
const done = (app: Launched) => app.stage.log.filter(([what]) => what !== 'invoke');

/** Every call of the contract. */
const CALLS =
  'autosave autosaves close dropAutosave dropped handedOver menu open openRecent opens print recent resume save saveAs savePdf unsaved'.split(
    ' ',
  );

const FOREIGN = [
  'http://elsewhere.test/',
  'https://ratiowright/',
  'app://elsewhere/',
  'app://ratiowright.elsewhere/',
  'file:///etc/passwd',
  'data:text/html,x',
  'no address',
];

const ENTRY = { id: 'a.b', title: 'A', key: null, windowsKey: null, enabled: true };

const served = (app: Launched, address: string, init: RequestInit = {}) => {
  const serve = app.stage.schemes.get('app');
  if (serve === undefined) throw new Error('the app serves no scheme');
  return serve(new Request(address, init));
};
const called = async (app: Launched, call: string, event: object, ...args: unknown[]) => app.stage.handlers.get(call)?.(event, ...args);
const fromPage = (app: Launched) => ({ sender: app.window.webContents, senderFrame: { url: 'app://ratiowright/', parent: null } });

/** Every rule that the stand-in can show; `mutations.ts` has at least one way to break each. */
export const RULES = {
  window: {
    what: 'the window is sandboxed, isolated and without Node, webview or developer tools',
    checklist: [2, 3, 4, 12],
    choices: { isPackaged: true },
    async holds(app) {
      expect(app.window.options.webPreferences).toEqual({
        preload: path.join(buildOf(app), 'electron/preload.cjs'),
        sandbox: true,
        contextIsolation: true,
        nodeIntegration: false,
        webviewTag: false,
        spellcheck: false,
        devTools: false,
      });
      expect(app.stage.log).toContainEqual(['enableSandbox']);
    },
  },
  bridge: {
    what: 'the page gets one function for each call and nothing of Electron or Node',
    checklist: [20],
    async holds(app) {
      // What a preload puts into the page cannot be taken away again; little else is so.
      const names = () =>
        Object.entries(Object.getOwnPropertyDescriptors(globalThis)).flatMap(([name, { configurable, enumerable }]) =>
          enumerable && !configurable ? [name] : [],
        );
      const blank = await app.stage.browser.newPage();
      const usual = new Set(await blank.evaluate(names));
      await blank.close();
      expect((await app.page.evaluate(names)).filter((name) => !usual.has(name))).toEqual(['shell']);
      const seen = await app.page.evaluate(() => ({
        shell: Object.keys(window.shell ?? {}).sort(),
        kinds: [...new Set(Object.values(window.shell ?? {}).map((part) => typeof part))],
        leaks: ['require', 'process', 'module', 'Buffer', 'standInInvoke'].filter((name) => name in globalThis),
      }));
      expect(seen).toEqual({
        shell: [...CALLS, 'onCommand'].sort(),
        kinds: ['function'],
        leaks: [],
      });
      // One argument each: an event of Electron's never reaches the page.
      const heard = app.page.evaluate(() => new Promise<unknown[]>((resolve) => window.shell?.onCommand((...args) => resolve(args))));
      await app.page.evaluate(() => undefined);
      app.window.webContents.send('command', 'nothing.atAll');
      expect(await heard).toEqual(['nothing.atAll']);
    },
  },
  sender: {
    what: 'every call refuses a sender that is gone, foreign, or a frame inside the page',
    checklist: [17],
    async holds(app) {
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
        for (const event of senders) await expect(called(app, call, event, 'name', 'A4')).rejects.toThrow('may not call');
      expect(done(app)).toEqual([]);
      expect(await called(app, 'recent', fromPage(app))).toEqual({ ok: true, value: [] });
    },
  },
  arguments: {
    what: 'every argument is checked by type and size before anything is done',
    checklist: [17],
    choices: { save: ['/never/a', '/never/b'] },
    async holds(app) {
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
        ['dropped', { path: '/x.ratiowright' }],
        ['dropped', `/${'x'.repeat(32_767)}`],
        ['menu', 'no list'],
        ['menu', [null]],
        ['menu', [{ ...ENTRY, id: 7 }]],
        ['menu', [{ ...ENTRY, title: 'x'.repeat(301) }]],
        ['menu', [{ ...ENTRY, key: undefined }]],
        ['menu', [{ ...ENTRY, windowsKey: 7 }]],
        ['menu', [{ ...ENTRY, enabled: 'yes' }]],
        ['menu', Array(101).fill(ENTRY)],
      ];
      app.stage.log.length = 0;
      for (const [call, ...args] of wrong)
        expect(await called(app, call, fromPage(app), ...args)).toMatchObject({
          ok: false,
          what: expect.stringMatching(/must be|more than|too long/),
        });
      expect(done(app)).toEqual([]);
    },
  },
  navigation: {
    what: 'navigation stays on the page of the app: scheme and host are compared',
    checklist: [13],
    async holds(app) {
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
      await poll(app, () => app.stage.log).toContainEqual(['navigate', 'http://elsewhere.test/', true]);
      expect(app.window.webContents.getURL()).toBe('app://ratiowright/');
    },
  },
  frame: {
    what: 'a frame inside the page goes nowhere, even without the content policy',
    checklist: [13],
    choices: { bypassPolicy: true },
    async holds(app) {
      await app.page.evaluate(() =>
        document.body.append(Object.assign(document.createElement('iframe'), { src: 'http://elsewhere.test/frame' })),
      );
      await poll(app, () => app.stage.log).toContainEqual(['navigate', 'http://elsewhere.test/frame', true]);
    },
  },
  newWindow: {
    what: 'no new window opens and no webview attaches',
    checklist: [11, 12, 14],
    async holds(app) {
      await app.page.evaluate(() => void window.open(location.href));
      await app.page.evaluate(() => void window.open('http://elsewhere.test/'));
      await poll(app, () => app.stage.log.filter(([what]) => what === 'window-open').map(([, , action]) => action)).toEqual([
        'deny',
        'deny',
      ]);
      const attach = preventable({});
      app.window.webContents.emit('will-attach-webview', attach);
      expect(attach.defaultPrevented).toBe(true);
    },
  },
  permission: {
    what: 'no permission and no device is granted',
    checklist: [5],
    async holds(app) {
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
    },
  },
  request: {
    what: 'no request leaves the machine, even without the content policy',
    checklist: [1],
    choices: { bypassPolicy: true },
    async holds(app) {
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
    },
  },
  policy: {
    what: 'page and header carry the same strict content policy, and the header forbids framing',
    checklist: [7],
    async holds(app) {
      const policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'";
      for (const address of ['app://ratiowright/', 'app://ratiowright/missing', 'app://elsewhere/']) {
        const { headers } = await served(app, address);
        expect(headers.get('content-security-policy')).toBe(`${policy}; frame-ancestors 'none'`);
        expect(headers.get('x-content-type-options')).toBe('nosniff');
      }
      expect(
        await app.page.evaluate(() => document.querySelector('meta[http-equiv="Content-Security-Policy"]')?.getAttribute('content')),
      ).toBe(policy);
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
      await poll(app, outcomes).toEqual(['data-connect-src', 'data-script-src-elem', 'data-style-src-elem']);
    },
  },
  scheme: {
    what: 'the scheme serves the files of the page by GET, and nothing outside their folder',
    checklist: [18],
    async holds(app) {
      expect(Object.fromEntries(app.stage.privileges)).toEqual({ app: { standard: true, secure: true, supportFetchAPI: true } });
      const page = await served(app, 'app://ratiowright/');
      expect([page.status, page.headers.get('content-type')]).toEqual([200, 'text/html; charset=utf-8']);
      expect(await page.text()).toBe(readFileSync(path.join(buildOf(app), 'renderer/index.html'), 'utf8'));
      const status = async (address: string, init?: RequestInit) => (await served(app, address, init)).status;
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
    },
  },
  network: {
    what: 'nothing of the main process can reach a network, no name of another machine is resolved, and calls between browsers have no way',
    checklist: [1, 15],
    async holds(app) {
      const main = readFileSync(path.join(buildOf(app), 'electron/main.js'), 'utf8');
      const imports = [...main.matchAll(/^import (?:.* from )?"([^"]+)";$/gm)].flatMap(([, name]) => name ?? []);
      expect(imports.sort()).toEqual(['electron', 'node:crypto', 'node:fs', 'node:fs/promises', 'node:path', 'node:url']);
      expect(main).not.toMatch(/\bimport\(|\brequire\(|\bgetBuiltinModule\b|\bfetch\(|\bWebSocket\b/);
      // Neither `net` nor `shell`, which opens addresses in the browser, nor anything that fetches updates.
      const [, parts = ''] = /^import \{ (.*) \} from "electron";$/m.exec(main) ?? [];
      expect(parts.split(', ').sort()).toEqual(['BrowserWindow', 'Menu', 'app', 'dialog', 'ipcMain', 'protocol', 'screen', 'session']);
      expect(app.stage.log).toContainEqual(['switch', 'host-resolver-rules', 'MAP * ~NOTFOUND']);
      expect(app.stage.log).toContainEqual(['rtc', 'disable_non_proxied_udp']);
    },
  },
  places: {
    what: 'the page names no place on the disk: only what the system hands over or a dialog answers is opened, and only a shop file',
    checklist: [],
    async holds(app) {
      const refused = (place: string) => called(app, 'dropped', fromPage(app), place);
      for (const place of ['', 'relative.ratiowright'])
        expect(await refused(place)).toMatchObject({ ok: false, what: expect.stringContaining('no file') });
      expect(await refused('/etc/passwd')).toMatchObject({ ok: false, what: expect.stringContaining('only shop files') });
      const made = await app.page.evaluate(() =>
        window.shell?.dropped(new File(['text'], 'made.ratiowright')).then(
          () => 'taken',
          (error: Error) => error.message,
        ),
      );
      expect(made).toBe('What was dropped is no file on this computer.');
      for (const [call, ...args] of [
        ['openRecent', '/etc/passwd'],
        ['save', '/a.ratiowright', 'text'],
      ] as const)
        expect(await called(app, call, fromPage(app), ...args)).toMatchObject({ ok: false });
    },
  },
  instance: {
    what: 'a second instance gives way to the first and opens no window',
    checklist: [],
    async holds(app) {
      const second = await start(app.stage.browser, { ...app.stage.choices, secondInstance: true });
      const gaveWay = second.stage.log.some(([what]) => what === 'quit');
      // A window that should not be is waited for before it is closed: it is still being opened.
      if (!gaveWay) await (await second.standIn.shown).end();
      expect(gaveWay).toBe(true);
      expect([...second.standIn.windows]).toEqual([]);
    },
  },
} satisfies Readonly<Record<string, Rule>>;
