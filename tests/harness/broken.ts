import { cpSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';

// Copies of the built app with one line changed, to see that a rule it breaks is found out.

const BUILT = path.resolve(import.meta.dirname, '../../dist');

export interface Change {
  readonly file: 'electron/main.js' | 'electron/preload.cjs' | 'renderer/index.html';
  /** Stands once in the file. */
  readonly find: string;
  readonly put: string;
}

export function wholeBuild(): string {
  // The runner loads what lies in such a folder as Node does.
  const build = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-broken-')), 'dist');
  cpSync(path.join(BUILT, 'electron'), path.join(build, 'electron'), { recursive: true });
  cpSync(path.join(BUILT, 'renderer'), path.join(build, 'renderer'), { recursive: true });
  writeFileSync(path.join(build, 'package.json'), '{ "type": "module" }');
  return build;
}

export function brokenBuild({ file, find, put }: Change): string {
  const build = wholeBuild();
  const place = path.join(build, file);
  const parts = readFileSync(place, 'utf8').split(find);
  if (parts.length !== 2) throw new RangeError(`"${find}" stands ${parts.length - 1} times in ${file}: name what the build has once`);
  writeFileSync(place, parts.join(put));
  return build;
}
