// npm start: the desktop window where Electron runs, else the same app in the browser. Flags: --web (browser at once), --no-open.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';
import { serve } from './serve.mjs';

const root = path.resolve(import.meta.dirname, '..');
const flags = new Set(process.argv.slice(2));
const display = process.platform !== 'linux' || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
const SOON_MS = 5000;

if (!existsSync(path.join(root, 'dist/renderer/index.html'))) {
  console.error('The app is not built yet: run "npm run build".');
  process.exit(1);
}
endWithNpm();
if (flags.has('--web')) inBrowser('as asked with --web');
else if (!display) inBrowser('no display was found for a window');
else inWindow();

/** Asking for Electron's place fetches it on the first time; its long report of a failure is not shown. */
function inWindow() {
  console.log('Starting the window (the first start fetches Electron).');
  const asked = spawnSync(process.execPath, ['-p', "require('electron')"], { cwd: root, encoding: 'utf8' });
  const program = asked.status === 0 ? asked.stdout.trim().split('\n').at(-1) : '';
  if (!program) {
    inBrowser('Electron could not be fetched');
    return;
  }
  const started = Date.now();
  // Listening comes first: a signal between the two would leave the window behind.
  const stop = () => window.kill();
  process.once('SIGINT', stop).once('SIGTERM', stop);
  const window = spawn(program, [root], { stdio: 'inherit' });
  // An Electron that lacks a library or its sandbox ends at once with a code of its own.
  window.on('error', () => inBrowser('Electron does not start here'));
  window.on('exit', (code, signal) => {
    process.off('SIGINT', stop).off('SIGTERM', stop);
    if (code && Date.now() - started < SOON_MS) inBrowser(`Electron stopped at once with code ${code}`);
    else process.exit(signal ? 1 : code);
  });
}

/** npm ends its shell but not what runs in it: whoever ends npm would leave the app behind with its port taken. */
function endWithNpm() {
  const parent = process.ppid;
  const end = () => process.ppid !== parent && process.kill(process.pid, 'SIGTERM');
  if (process.env.npm_lifecycle_event !== undefined) setInterval(end, 1000).unref();
}

async function inBrowser(why) {
  try {
    const address = await serve(path.join(root, 'dist/renderer'), Number(process.env.PORT ?? 4173));
    console.log(`Ratiowright runs in the browser (${why}): ${address} - Ctrl+C stops it.`);
    if (display && !process.env.CI && !flags.has('--no-open')) openBrowser(address);
  } catch (error) {
    console.error(`Ratiowright cannot be served: ${error.message}`);
    process.exit(1);
  }
}

function openBrowser(address) {
  const calls = { win32: ['cmd', '/c', 'start', '', address], darwin: ['open', address] };
  const [program, ...args] = calls[process.platform] ?? ['xdg-open', address];
  spawn(program, args, { stdio: 'ignore', detached: true })
    .on('error', () => undefined)
    .unref();
}
