import dgram from 'node:dgram';
import dns from 'node:dns';
import { once } from 'node:events';
import { mkdtempSync } from 'node:fs';
import http from 'node:http';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { openDemo } from './journey.ts';

// Nothing leaves the machine: not from the page, not from the main process, not by a way of the engine that no page policy covers.

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** What the main process, which here is this one, tried to reach. */
const tried: string[] = [];
beforeEach(() => {
  tried.length = 0;
  const watch = <T extends object>(of: T, what: keyof T & string) => {
    const real: unknown = Reflect.get(of, what);
    if (typeof real !== 'function') throw new RangeError(what);
    Reflect.set(of, what, function watched(this: unknown, ...args: unknown[]) {
      tried.push(what);
      return Reflect.apply(real, this, args);
    });
    restore.push(() => void Reflect.set(of, what, real));
  };
  watch(net.Socket.prototype, 'connect');
  watch(dns, 'lookup');
  watch(dgram, 'createSocket');
  watch(globalThis, 'fetch');
});
const restore: (() => void)[] = [];
afterEach(() => {
  for (const put of restore.splice(0)) put();
});

/** Opens, looks at every page, asks for a purchase plan, prints and saves. */
async function journey(app: Launched): Promise<void> {
  const { page } = app;
  await openDemo(page);
  for (const [key, name] of [
    [1, 'machine'],
    [2, 'material'],
    [4, 'reach'],
    [3, 'options'],
    [5, 'desk'],
  ] as const) {
    await page.keyboard.press(`Alt+${key}`);
    await expect.poll(() => page.locator(`main.${name}`).count()).toBe(1);
  }
  await page.getByRole('button', { name: 'Save as PDF' }).click();
  await expect.poll(() => app.stage.log.map(([what]) => what)).toContain('save-dialog');
  await page.getByRole('button', { name: 'About and licences' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  await page.keyboard.press('Control+s');
  await expect.poll(() => app.window.title).toBe('kept.ratiowright – Ratiowright');
}

const start = async () => {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-offline-'));
  return launch(browser, { save: ['sheet.pdf', 'kept.ratiowright'].map((name) => path.join(folder, name)) });
};

/** Requests of the page that are not for its own files, and whatever the main process tried. */
const outward = (app: Launched): readonly unknown[] => [
  ...app.stage.log.filter(([what]) => what === 'network' || what === 'cancelled'),
  ...tried,
];

test('a whole journey makes no request but for the files of the program itself', async () => {
  const app = await start();
  try {
    await journey(app);
    expect(outward(app)).toEqual([]);
  } finally {
    await app.close();
  }
});

test('a request of the page or of the main process would have been seen', async () => {
  const server = http.createServer((_request, response) => response.end()).listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  const app = await launch(browser, { bypassPolicy: true });
  // The server looked its own address up.
  tried.length = 0;
  try {
    await app.page.evaluate(() => fetch('http://elsewhere.test/').catch(() => undefined));
    expect(outward(app)).toEqual([['cancelled', 'http://elsewhere.test/']]);
    await fetch(`http://127.0.0.1:${port}/`);
    expect(tried).toContain('fetch');
    http.get(`http://127.0.0.1:${port}/`, { agent: false }, (response) => response.resume());
    await vi.waitFor(() => expect(tried).toContain('connect'));
  } finally {
    await app.close();
    server.close();
  }
});

/** The switches that the shell sets, as the engine takes them; the policy for calls between browsers has one of its own there. */
async function switchesOfShell(): Promise<readonly string[]> {
  const app = await launch(browser);
  await app.close();
  const { log } = app.stage;
  const policy = log.find(([what]) => what === 'rtc')?.[1];
  return [
    ...log.filter(([what]) => what === 'switch').map(([, name, value]) => `--${name}=${value}`),
    ...(policy === undefined ? [] : [`--force-webrtc-ip-handling-policy=${policy}`]),
  ];
}

/** How many packets and requests reach this machine from a page that has no other lock: by name, by address, by a call between browsers. */
async function reachedFrom(switches: readonly string[]): Promise<{ readonly packets: number; readonly requests: number }> {
  let packets = 0;
  let requests = 0;
  const udp = dgram.createSocket('udp4').on('message', () => {
    packets += 1;
  });
  udp.bind(0, '127.0.0.1');
  const server = http.createServer((_request, response) => {
    requests += 1;
    response.setHeader('Access-Control-Allow-Origin', '*').end();
  });
  server.listen(0, '127.0.0.1');
  await Promise.all([once(udp, 'listening'), once(server, 'listening')]);
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  const engine = await startBrowser(switches);
  try {
    const page = await engine.newPage();
    await page.evaluate(
      async ([tcpPort, udpPort]) => {
        await Promise.all(
          ['localhost', '127.0.0.1'].map((host) => fetch(`http://${host}:${tcpPort}/`, { mode: 'no-cors' }).catch(() => undefined)),
        );
        const call = new RTCPeerConnection({ iceServers: [{ urls: `stun:127.0.0.1:${udpPort}` }] });
        call.createDataChannel('x');
        await call.setLocalDescription(await call.createOffer());
        // Gathering ends by itself; unanswered questions to a server take their time.
        await new Promise<void>((resolve) => {
          call.addEventListener('icegatheringstatechange', () => call.iceGatheringState === 'complete' && resolve());
          setTimeout(resolve, 3000);
        });
        call.close();
      },
      [port, udp.address().port] as const,
    );
  } finally {
    await engine.close();
    server.close();
    udp.close();
  }
  return { packets, requests };
}

test('without policy and request filter too, the engine that is started as the shell starts it reaches nobody', async () => {
  const open = await reachedFrom([]);
  expect(open.requests).toBe(2);
  expect(open.packets).toBeGreaterThan(0);
  expect(await reachedFrom(await switchesOfShell())).toEqual({ packets: 0, requests: 0 });
});
