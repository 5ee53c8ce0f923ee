// npm run ratiowright: the headless command, built first where its output is missing or older than the code.
import { spawnSync } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const root = path.resolve(import.meta.dirname, '..');
const built = path.join(root, 'dist/cli/ratiowright.js');
const changedAt = (file) => statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;
const newest = (folder) =>
  Math.max(...readdirSync(folder, { recursive: true }).map((name) => changedAt(path.join(folder, name))), changedAt(folder));

if (changedAt(built) < Math.max(newest(path.join(root, 'core')), changedAt(path.join(root, 'package-lock.json')))) {
  const vite = path.join(root, 'node_modules/vite/bin/vite.js');
  const build = spawnSync(process.execPath, [vite, 'build', '--config', 'build/vite.config.ts', '--logLevel', 'warn'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
  });
  if (build.status !== 0) process.exit(build.status ?? 1);
}
await import(pathToFileURL(built).href);
