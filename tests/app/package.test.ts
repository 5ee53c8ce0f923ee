import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { openDemo } from './journey.ts';

// Packages for Linux with a file in the place of Electron, and a script in the place of the tool that writes a deb: all that the project itself puts in is real.

const ROOT = path.resolve(import.meta.dirname, '../..');
/** Where Electron keeps its fuses: a mark, then version, count and one digit for each. @source Electron's documentation on fuses, from memory */
const FUSE_MARK = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';
const FUSES = [
  ['runAsNode', '0'],
  ['enableCookieEncryption', '0'],
  ['enableNodeOptionsEnvironmentVariable', '0'],
  ['enableNodeCliInspectArguments', '0'],
  ['enableEmbeddedAsarIntegrityValidation', '1'],
  ['onlyLoadAppFromAsar', '1'],
  ['loadBrowserProcessSpecificV8Snapshot', '0'],
  ['grantFileProtocolExtraPrivileges', '0'],
] as const;
/** As Electron is delivered, which is mostly the other way round. */
const DELIVERED = '101100110';

const packs = process.platform === 'linux';
const home = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-package-'));
const at = (...place: readonly string[]): string => path.join(home, ...place);
const { version } = JSON.parse(readFileSync(path.join(ROOT, 'package.json'), 'utf8')) as { version: string };
let browser: Browser;
let said = '';

beforeAll(async () => {
  browser = await startBrowser();
  if (packs) said = packageDeb();
});
afterAll(() => browser.close());

function packageDeb(): string {
  for (const folder of ['electron/resources', 'electron/locales', 'deb']) mkdirSync(at(folder), { recursive: true });
  const { version: electron } = JSON.parse(readFileSync(path.join(ROOT, 'node_modules/electron/package.json'), 'utf8')) as {
    version: string;
  };
  writeFileSync(at('electron/electron'), `#!/bin/sh\n# ${FUSE_MARK}\x01\x09${DELIVERED}`, { mode: 0o755 });
  writeFileSync(at('electron/version'), electron);
  for (const name of ['LICENSE', 'LICENSES.chromium.html']) writeFileSync(at('electron', name), name);
  const script = [
    '#!/bin/sh',
    `printf '%s\\n' "$@" > "${at('deb.args')}"`,
    'for arg in "$@"; do',
    `  case "$arg" in *=/usr/*) cp "\${arg%%=/usr/*}" "${at('deb')}/$(basename "\${arg#*=/usr/}")";; esac`,
    '  case "$before" in --package) : > "$arg";; esac',
    '  before="$arg"',
    'done',
  ];
  writeFileSync(at('write-deb'), script.join('\n'), { mode: 0o755 });
  const builder = path.join(ROOT, 'node_modules/electron-builder/cli.js');
  const flags = ['--linux', 'deb', '--config', 'build/electron-builder.yml', `-c.electronDist=${at('electron')}`];
  const run = spawnSync(process.execPath, [builder, ...flags, `-c.directories.output=${at('out')}`], {
    cwd: ROOT,
    encoding: 'utf8',
    env: { ...process.env, CUSTOM_FPM_PATH: at('write-deb') },
  });
  if (run.status !== 0) throw new Error(`${run.stdout}\n${run.stderr}`);
  return run.stdout;
}

interface Entry {
  readonly files?: Readonly<Record<string, Entry>>;
  readonly size?: number;
  readonly offset?: string;
}

/** Name and content of every file of an archive. [ASAR: two lengths, then length and text of a JSON head, then the files; from memory] */
function unpacked(archive: Buffer): ReadonlyMap<string, Buffer> {
  const head: Entry = JSON.parse(archive.toString('utf8', 16, 16 + archive.readUInt32LE(12)));
  const from = 8 + archive.readUInt32LE(4);
  const files = new Map<string, Buffer>();
  const walk = (entry: Entry, place: string): void => {
    for (const [name, one] of Object.entries(entry.files ?? {})) walk(one, path.posix.join(place, name));
    if (entry.offset === undefined) return;
    const start = from + Number(entry.offset);
    files.set(place, archive.subarray(start, start + (entry.size ?? 0)));
  };
  walk(head, '');
  return files;
}
const archive = () => unpacked(readFileSync(at('out/linux-unpacked/resources/app.asar')));

test('the program calls itself as its installer does', async () => {
  const app = await launch(browser);
  await app.close();
  const [, id] = /^appId: (\S+)$/m.exec(readFileSync(path.join(ROOT, 'build/electron-builder.yml'), 'utf8')) ?? [];
  expect(app.stage.log).toContainEqual(['app-id', id]);
});

test('the file of settings names an installer for each system, our own icons for each, and shop files as ours', () => {
  const settings = readFileSync(path.join(ROOT, 'build/electron-builder.yml'), 'utf8');
  for (const line of [/^ {2}target: nsis$/m, /^ {2}target: dmg$/m, /^ {2}target: \[AppImage, deb\]$/m, /^ {2}- ext: ratiowright$/m])
    expect(settings).toMatch(line);
  const icons = [...settings.matchAll(/^ {2}icon: (\S+)$/gm)].flatMap(([, place]) => place ?? []);
  expect(icons).toHaveLength(3);
  for (const place of [...icons, 'build/resources/file.ico', 'build/resources/file.icns', 'build/LICENSE.txt'])
    expect(existsSync(path.join(ROOT, place)), place).toBe(true);
});

if (packs) {
  test('the archive holds what was built, the description of the package, and nothing else', () => {
    const files = archive();
    const built = ['electron', 'renderer'].flatMap((folder) =>
      readdirSync(path.join(ROOT, 'dist', folder), { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => path.relative(ROOT, path.join(entry.parentPath, entry.name))),
    );
    expect([...files.keys()].sort()).toEqual([...built, 'package.json'].sort());
    for (const place of built) expect(files.get(place)?.equals(readFileSync(path.join(ROOT, place))), place).toBe(true);
    expect(JSON.parse(files.get('package.json')?.toString() ?? '')).toMatchObject({
      main: 'dist/electron/main.js',
      version,
      type: 'module',
    });
  });

  test('the app that comes out of the archive starts and finds its options', async () => {
    for (const [place, content] of archive()) {
      mkdirSync(path.dirname(at('app', place)), { recursive: true });
      writeFileSync(at('app', place), content);
    }
    const app = await launch(browser, { build: at('app/dist'), isPackaged: true });
    try {
      await openDemo(app.page);
      expect(await app.page.locator('[data-rank="1"]').count()).toBe(1);
    } finally {
      await app.close();
    }
  });

  test.each(FUSES.map(([name, state], index) => [name, state, index] as const))('the fuse %s is set to %s [19]', (_name, state, index) => {
    const program = readFileSync(at('out/linux-unpacked/ratiowright'), 'latin1');
    expect(program.split(FUSE_MARK)).toHaveLength(2);
    const wire = program.slice(program.indexOf(FUSE_MARK) + FUSE_MARK.length);
    expect(wire.charCodeAt(0)).toBe(1);
    expect(wire[2 + index]).toBe(state);
  });

  test('the licences of Electron and Chromium lie beside the program under the names that About gives', () => {
    for (const name of ['LICENSE.electron.txt', 'LICENSES.chromium.html'])
      expect(statSync(at('out/linux-unpacked', name)).size, name).toBeGreaterThan(0);
  });

  test('the deb carries an icon of each size, and tells the system which files are ours and how they are opened', () => {
    const args = readFileSync(at('deb.args'), 'utf8').split('\n');
    const icons = args.flatMap((arg) => /=\/usr\/share\/icons\/hicolor\/(\d+)x\1\/apps\/ratiowright\.png$/.exec(arg)?.[1] ?? []);
    expect(icons.map(Number).sort((a, b) => a - b)).toEqual([16, 24, 32, 48, 64, 128, 256, 512]);
    const desktop = readFileSync(at('deb/ratiowright.desktop'), 'utf8');
    expect(desktop).toMatch(/^Exec=\/opt\/Ratiowright\/ratiowright %U$/m);
    expect(desktop).toMatch(/^MimeType=application\/x-ratiowright;$/m);
    expect(readFileSync(at('deb/ratiowright.xml'), 'utf8')).toMatch(/type="application\/x-ratiowright"[\s\S]*pattern="\*\.ratiowright"/);
    expect(said).not.toMatch(/default Electron icon|default icon/i);
  });
}
