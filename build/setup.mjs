// Installs what the project needs, once: `npm ci` where node_modules is missing or older than the lock file.
import { spawnSync } from 'node:child_process';
import { statSync } from 'node:fs';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '..');
const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Node ${process.versions.node} is too old: Ratiowright needs Node 20.19 or newer.`);
  process.exit(1);
}

const changedAt = (file) => statSync(path.join(root, file), { throwIfNoEntry: false })?.mtimeMs ?? 0;
// npm writes this file last, so its time says when the install was complete.
const installed = changedAt('node_modules/.package-lock.json');
if (installed < changedAt('package-lock.json')) {
  console.error('Installing packages (npm ci) ...');
  const npm = spawnSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  process.exit(npm.status ?? 1);
}
