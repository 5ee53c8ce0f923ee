import { type ChildProcess, type ChildProcessByStdio, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import http from 'node:http';
import os from 'node:os';
import path from 'node:path';
import type { Readable } from 'node:stream';
import { afterEach, expect, test } from 'vitest';

// The rules of HTTP in brackets are those of RFC 9110 [from memory].

const ROOT = path.resolve(import.meta.dirname, '../..');
const START = path.join(ROOT, 'build/start.mjs');
let started: ChildProcess | null = null;
afterEach(() => {
  started?.kill('SIGKILL');
});

/** Starts as `npm start` does after its build; `env` and `flags` say where it finds itself. */
function run(env: NodeJS.ProcessEnv, flags: readonly string[]): ChildProcessByStdio<null, Readable, null> {
  const program = spawn(process.execPath, [START, '--no-open', ...flags], {
    env: { ...process.env, PORT: '0', npm_lifecycle_event: undefined, ...env },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  started = program;
  return program;
}

/** What it has said up to the line that names the address. */
async function untilServed(program: ChildProcessByStdio<null, Readable, null>): Promise<{ said: string; address: URL }> {
  let said = '';
  for await (const text of program.stdout) {
    said += text;
    if (/http:.*\n/.test(said)) break;
  }
  return { said, address: new URL(/http:\S+/.exec(said)?.[0] ?? 'missing:') };
}

async function startInBrowser(port: number): Promise<{ program: ChildProcess; said: string; address: URL }> {
  const program = run({ PORT: String(port) }, ['--web']);
  return { program, ...(await untilServed(program)) };
}

interface Answer {
  readonly status: number | undefined;
  readonly headers: http.IncomingHttpHeaders;
  readonly body: string;
}

/** Sends the path as it is written: the usual clients would tidy it up first. */
function ask(address: URL, place: string, { method = 'GET', host = address.host } = {}): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const request = http.request(
      { host: address.hostname.replace(/[[\]]/g, ''), port: address.port, path: place, method, headers: { host }, agent: false },
      async (response) => {
        let body = '';
        for await (const part of response) body += part;
        resolve({ status: response.statusCode, headers: response.headers, body });
      },
    );
    request.on('error', reject).end();
  });
}

test('start --web says in one line where the app runs and why, and serves it to this machine with its protections', async () => {
  const { said, address } = await startInBrowser(0);
  expect(said).toMatch(/^Ratiowright runs in the browser \(as asked with --web\): http:\/\/127\.0\.0\.1:\d+\/ - Ctrl\+C stops it\.\n$/);
  const page = await ask(address, '/');
  expect(page.status).toBe(200);
  expect(page.body).toBe(readFileSync(path.join(ROOT, 'dist/renderer/index.html'), 'utf8'));
  const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(page.body)?.[1];
  expect(page.headers).toMatchObject({
    'content-type': 'text/html; charset=utf-8',
    'content-security-policy': `${policy}; frame-ancestors 'none'`,
    'x-content-type-options': 'nosniff',
  });
  const script = /<script[^>]* src="\.(\/assets\/[^"]+)"/.exec(page.body)?.[1] ?? '';
  expect((await ask(address, script)).headers['content-type']).toBe('text/javascript; charset=utf-8');
  expect((await ask(address, '/?mark=1')).status).toBe(200);
  expect(await ask(address, '/', { method: 'HEAD' })).toMatchObject({ status: 200, body: '' });
});

test('a foreign Host is answered 421 [15.5.20], another method 405 with what is allowed [15.5.6], and nothing outside the folder is served', async () => {
  const { address } = await startInBrowser(0);
  for (const host of ['elsewhere.test', `elsewhere.test:${address.port}`, '127.0.0.1.elsewhere.test', `user@127.0.0.1:${address.port}`])
    expect((await ask(address, '/', { host })).status, host).toBe(421);
  for (const host of ['localhost', `localhost:${address.port}`, '127.0.0.1'])
    expect((await ask(address, '/', { host })).status, host).toBe(200);
  for (const method of ['POST', 'PUT', 'DELETE', 'OPTIONS'])
    expect(await ask(address, '/', { method }), method).toMatchObject({ status: 405, headers: { allow: 'GET, HEAD' } });
  const outside = [
    '/../package.json',
    '/../../package.json',
    '/..%2f..%2fpackage.json',
    '/assets/%2e%2e/%2e%2e/%2e%2e/package.json',
    '/..%2frenderer-other/x',
  ];
  for (const place of outside) expect((await ask(address, place)).status, place).toBe(403);
  expect((await ask(address, '/..%5c..%5cpackage.json')).status).not.toBe(200);
  for (const place of ['/missing', '/assets', '/index.html%00']) expect((await ask(address, place)).status, place).toBe(404);
  expect((await ask(address, '/%')).status).toBe(400);
});

test('a port that is taken gives way to a free one', async () => {
  const other = http.createServer().listen(0, '127.0.0.1');
  await once(other, 'listening');
  const taken = other.address();
  const port = typeof taken === 'object' && taken !== null ? taken.port : 0;
  const { address } = await startInBrowser(port);
  expect(Number(address.port)).not.toBe(port);
  expect((await ask(address, '/')).status).toBe(200);
  other.close();
});

test('the server listens on this machine only, and ends with its program', async () => {
  const { program, address } = await startInBrowser(0);
  expect((await ask(address, '/')).status).toBe(200);
  // Another address of this same machine stands for those that others could reach.
  const other = new URL(address);
  other.hostname = process.platform === 'linux' ? '127.0.0.2' : '[::1]';
  await expect(ask(other, '/')).rejects.toThrow('ECONNREFUSED');
  program.kill('SIGTERM');
  expect(await once(program, 'exit')).toEqual([null, 'SIGTERM']);
  await expect(ask(address, '/')).rejects.toThrow('ECONNREFUSED');
});

if (process.platform === 'linux')
  test('without a display it does not try for a window', async () => {
    const { said, address } = await untilServed(run({ DISPLAY: '', WAYLAND_DISPLAY: '' }, []));
    expect(said).toMatch(/^Ratiowright runs in the browser \(no display was found for a window\): http/);
    expect((await ask(address, '/')).status).toBe(200);
  });

// What needs a shell of POSIX, and a script in Electron's place.
if (process.platform !== 'win32') {
  test('under npm, the app ends when npm or its shell is ended', async () => {
    const shell = spawn('sh', ['-c', `"${process.execPath}" "${START}" --web --no-open; true`], {
      env: { ...process.env, PORT: '0', npm_lifecycle_event: 'start' },
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    started = shell;
    const { address } = await untilServed(shell);
    expect((await ask(address, '/')).status).toBe(200);
    shell.kill('SIGKILL');
    await expect
      .poll(() =>
        ask(address, '/').then(
          ({ status }) => `answered ${status}`,
          (error: Error) => error.message,
        ),
      )
      .toContain('ECONNREFUSED');
  });

  const withElectron = (script: string | null) => {
    const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-electron-'));
    if (script !== null) writeFileSync(path.join(folder, 'electron'), `#!/bin/sh\n${script}\n`, { mode: 0o755 });
    return { folder, program: run({ DISPLAY: ':0', ELECTRON_OVERRIDE_DIST_PATH: folder }, []) };
  };

  test.each([
    ['exit 3', 'Electron stopped at once with code 3'],
    [null, 'Electron does not start here'],
  ])('where Electron does "%s", the same app runs in the browser, and says so', async (script, why) => {
    const { said, address } = await untilServed(withElectron(script).program);
    expect(said).toContain(`\nRatiowright runs in the browser (${why}): `);
    expect((await ask(address, '/')).status).toBe(200);
  });

  test('where Electron runs, it gets the project, and the start ends with it', async () => {
    const { folder, program } = withElectron('echo "$@" > "$0.args"; exit 0');
    expect(await once(program, 'exit')).toEqual([0, null]);
    expect(readFileSync(path.join(folder, 'electron.args'), 'utf8').trim()).toBe(ROOT);
  });

  test('a start that is stopped stops its window', async () => {
    const { folder, program } = withElectron('echo $$ > "$0.pid"; exec sleep 600');
    const note = path.join(folder, 'electron.pid');
    await expect.poll(() => existsSync(note) && readFileSync(note, 'utf8').trim()).toMatch(/^\d+$/);
    const pid = Number(readFileSync(note, 'utf8'));
    expect(() => process.kill(pid, 0)).not.toThrow();
    program.kill('SIGTERM');
    await once(program, 'exit');
    expect(() => process.kill(pid, 0)).toThrow('ESRCH');
  });
}
