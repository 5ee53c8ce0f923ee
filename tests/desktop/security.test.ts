import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import http from 'node:http';
import { afterEach, expect, test } from 'vitest';
import { endAll, start } from './electron.ts';

// What only Electron itself can show; the rest of the rules is held in tests/app/securityRules.ts. Numbers are those of its security checklist [from memory].

afterEach(endAll);

/** The world of the preload. @source Electron's documentation of contextIsolation, from memory */
const PRELOAD_WORLD = 999;

test('page and bridge are worlds apart [3]', async () => {
  const { electron, page } = await start();
  await page.evaluate(() => Object.assign(globalThis, { mark: 'of the page' }));
  const seen = await electron.evaluate(
    ({ BrowserWindow }, world) =>
      BrowserWindow.getAllWindows()[0]?.webContents.executeJavaScriptInIsolatedWorld(world, [{ code: '[typeof mark, typeof document]' }]),
    PRELOAD_WORLD,
  );
  expect(seen).toEqual(['undefined', 'object']);
  expect(await page.evaluate(() => ['require', 'process', 'module', 'Buffer'].filter((name) => name in globalThis))).toEqual([]);
});

test('the system holds the renderer in a sandbox [4]', async () => {
  const { electron } = await start();
  const { pid, sandboxed } = await electron.evaluate(({ app, BrowserWindow }) => {
    const renderer = BrowserWindow.getAllWindows()[0]?.webContents.getOSProcessId() ?? 0;
    return { pid: renderer, sandboxed: app.getAppMetrics().find((one) => one.pid === renderer)?.sandboxed };
  });
  // Linux tells by the filter of system calls; the other systems tell Electron.
  if (process.platform === 'linux') expect(readFileSync(`/proc/${pid}/status`, 'utf8')).toMatch(/^Seccomp:\s+2$/m);
  else expect(sandboxed).toBe(true);
});

test('the engine refuses what the shell refuses [5]', async () => {
  const { page } = await start();
  const answers = await page.evaluate(async () => {
    const place = new Promise<string>((resolve) =>
      navigator.geolocation.getCurrentPosition(
        () => resolve('granted'),
        ({ code }) => resolve(`refused ${code}`),
      ),
    );
    const camera = navigator.mediaDevices.getUserMedia({ video: true }).then(
      () => 'granted',
      (error: Error) => error.name,
    );
    return [await place, await camera, await Notification.requestPermission()];
  });
  expect(answers).toEqual(['refused 1', 'NotAllowedError', 'denied']);
});

test('the engine keeps the rules of the web, and no page of another kind is shown [6, 8, 9, 10, 13, 14]', async () => {
  const { electron, page } = await start();
  expect(page.url()).toBe('app://ratiowright/');
  expect(await page.evaluate(() => isSecureContext)).toBe(true);
  expect(await page.evaluate(() => window.open('app://ratiowright/') === null)).toBe(true);
  await page.evaluate(() => {
    location.href = 'https://elsewhere.invalid/';
  });
  await page.evaluate(() => document.body.append(Object.assign(document.createElement('iframe'), { src: 'file:///' })));
  expect(
    await page.evaluate(() =>
      fetch('file:///').then(
        () => 'read',
        () => 'refused',
      ),
    ),
  ).toBe('refused');
  expect(
    await electron.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows().map(({ webContents }) => webContents.getURL())),
  ).toEqual(['app://ratiowright/']);
});

test('nothing is reached from the page, nor from a session of the app [1]', async () => {
  let reached = 0;
  const server = http.createServer((_request, response) => {
    reached += 1;
    response.end();
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  try {
    const address = server.address();
    const url = `http://127.0.0.1:${typeof address === 'object' && address !== null ? address.port : 0}/`;
    const { electron, page } = await start();
    const refused = () => 'refused';
    expect(await page.evaluate((to) => fetch(to, { mode: 'no-cors' }).then(String, () => 'refused'), url)).toBe('refused');
    expect(await electron.evaluate(({ session }, to) => session.defaultSession.fetch(to).then(() => 'reached'), url).catch(refused)).toBe(
      'refused',
    );
    expect(
      await electron.evaluate(({ session }) => session.defaultSession.resolveHost('localhost').then(() => 'found')).catch(refused),
    ).toBe('refused');
    expect(reached).toBe(0);
  } finally {
    server.close();
  }
});
