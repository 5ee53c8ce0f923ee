// npm run ratiowright: the headless command, built first where its output is missing or older than the code.
import { readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const root = path.resolve(import.meta.dirname, '..');
const built = path.join(root, 'dist/cli/ratiowright.js');
const changedAt = (file) => statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;
const newest = (folder) =>
  Math.max(...readdirSync(folder, { recursive: true }).map((name) => changedAt(path.join(folder, name))), changedAt(folder));

if (changedAt(built) < Math.max(newest(path.join(root, 'core')), changedAt(path.join(root, 'package-lock.json')))) {
  const { createBuilder } = await import('vite');
  const builder = await createBuilder({ configFile: path.join(root, 'build/vite.config.ts'), logLevel: 'warn' });
  await builder.build(builder.environments.command);
}
await import(pathToFileURL(built).href);
