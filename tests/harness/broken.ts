import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
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
  mkdirSync(path.join(build, 'renderer'));
  for (const name of readdirSync(path.join(BUILT, 'renderer'))) {
    const from = path.join(BUILT, 'renderer', name);
    const to = path.join(build, 'renderer', name);
    // What no rule is broken in is not copied; such a link to a folder needs no rights of its own on Windows.
    if (name === 'assets') symlinkSync(from, to, 'junction');
    else cpSync(from, to);
  }
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

export const removeBuild = (build: string): void => rmSync(path.dirname(build), { recursive: true, force: true });
