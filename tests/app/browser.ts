import {
  createReadStream,
  createWriteStream,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import os from 'node:os';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import { brotliDecompressSync, createBrotliDecompress } from 'node:zlib';
import { type Browser, chromium, type LaunchOptions } from 'playwright-core';

// The browser of the app tests: the one named by CHROME_PATH, else an installed one, else the one that comes with the packages.

/** As root a browser has no sandbox to start in; none of its other protections is given up. */
const ARGS = ['--no-sandbox'];
const NONE_STARTS = 'No test browser starts: set CHROME_PATH to an installed Chrome, Chromium or Edge.';

const INSTALLED: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  linux: ['google-chrome', 'google-chrome-stable', 'chromium', 'chromium-browser', 'microsoft-edge'].map((name) => `/usr/bin/${name}`),
  darwin: ['Google Chrome', 'Chromium', 'Microsoft Edge'].map((name) => `/Applications/${name}.app/Contents/MacOS/${name}`),
  win32: [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA].flatMap((folder) =>
    folder === undefined
      ? []
      : ['Google\\Chrome\\Application\\chrome.exe', 'Microsoft\\Edge\\Application\\msedge.exe'].map((place) => path.join(folder, place)),
  ),
};

/** Starts the test browser, with more switches where a test is about these; the caller closes it. */
export async function startBrowser(switches: readonly string[] = []): Promise<Browser> {
  return start(await place(), switches);
}

async function place(): Promise<LaunchOptions> {
  const named = process.env.CHROME_PATH;
  if (named !== undefined && named !== '') return { executablePath: named };
  const installed = (INSTALLED[process.platform] ?? []).find((place) => existsSync(place));
  if (installed !== undefined) return { executablePath: installed };
  if (process.platform === 'linux' && process.arch === 'x64') return packagedBrowser();
  throw new Error(NONE_STARTS);
}

async function start(options: LaunchOptions, switches: readonly string[]): Promise<Browser> {
  try {
    return await chromium.launch({ ...options, args: [...ARGS, ...switches] });
  } catch (cause) {
    throw new Error(`${NONE_STARTS} (${options.executablePath} did not)`, { cause });
  }
}

/** Unpacks the packaged browser with the libraries it needs, once, into the folder for temporary files. */
async function packagedBrowser(): Promise<LaunchOptions> {
  const entry = createRequire(import.meta.url).resolve('@sparticuz/chromium');
  const packed = path.join(path.dirname(entry), '..', '..', 'bin');
  const { version } = JSON.parse(readFileSync(path.join(packed, '..', 'package.json'), 'utf8')) as { version: string };
  const folder = path.join(os.tmpdir(), `ratiowright-test-browser-${version}`);
  if (!existsSync(folder)) await unpack(packed, folder);
  const fonts = existsSync('/etc/fonts/fonts.conf') ? {} : { FONTCONFIG_PATH: path.join(folder, 'fonts') };
  return {
    executablePath: path.join(folder, 'chromium'),
    env: { ...environment(), LD_LIBRARY_PATH: path.join(folder, 'al2023', 'lib'), ...fonts },
  };
}

const environment = (): Record<string, string> =>
  Object.fromEntries(Object.entries(process.env).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])));

/** Test files run side by side: each unpacks into a folder of its own, and the first to finish gives it the common name. */
async function unpack(packed: string, folder: string): Promise<void> {
  const own = mkdtempSync(`${folder}-`);
  await pipeline(
    createReadStream(path.join(packed, 'chromium.br')),
    createBrotliDecompress(),
    createWriteStream(path.join(own, 'chromium'), { mode: 0o755 }),
  );
  for (const archive of ['al2023', 'fonts'])
    untar(brotliDecompressSync(readFileSync(path.join(packed, `${archive}.tar.br`))), path.join(own, archive));
  try {
    renameSync(own, folder);
  } catch (error) {
    rmSync(own, { recursive: true });
    if (!existsSync(folder)) throw error;
  }
}

const BLOCK = 512;

/** Writes the plain files of a tar archive: a header block with name and octal size, then the content in whole blocks. */
function untar(archive: Buffer, folder: string): void {
  const field = (from: number, length: number) => archive.toString('utf8', from, from + length).split('\0', 1)[0] ?? '';
  for (let at = 0; at < archive.length && archive[at] !== 0; ) {
    const name = field(at, 100);
    const size = Number.parseInt(field(at + 124, 12), 8);
    const from = at + BLOCK;
    const file = path.join(folder, name);
    if (!name.endsWith('/')) {
      mkdirSync(path.dirname(file), { recursive: true });
      writeFileSync(file, archive.subarray(from, from + size));
    }
    at = from + Math.ceil(size / BLOCK) * BLOCK;
  }
}
