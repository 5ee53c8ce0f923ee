import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Plugin } from 'vite';

// What the page's bundle holds of others, for the About view. Main and preload hold no package, which tests/walls sees to.

const ROOT = path.resolve(import.meta.dirname, '..');
/** Small pieces that the tools put into every bundle. */
const TOOLS: Readonly<Record<string, string>> = { '\0vite/': 'vite', '\0rolldown/': 'rolldown' };

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license: string;
  readonly author?: string | { readonly name: string };
}

/** The package a module of the bundle comes from; null for one of the project. */
export function packageOf(id: string): string | null {
  for (const [start, name] of Object.entries(TOOLS)) if (id.startsWith(start)) return name;
  return /(?:^|.*[\\/])node_modules[\\/]((?:@[^\\/]+[\\/])?[^\\/]+)/.exec(id)?.[1]?.replaceAll('\\', '/') ?? null;
}

const manifestOf = (folder: string): Manifest => JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8')) as Manifest;
const folderOf = (name: string): string => path.join(ROOT, 'node_modules', name);

function licenceOf(name: string) {
  const folder = folderOf(name);
  const { version, license: licence } = manifestOf(folder);
  const file = existsSync(folder) ? readdirSync(folder).find((one) => /^licen[cs]e(\.(md|txt))?$/i.test(one)) : undefined;
  if (file === undefined) throw new Error(`${name} goes into the bundle, but no text of its licence was found in its package.`);
  // A tool lists what it is made of itself beneath its own licence; none of that goes along.
  const [text = ''] = readFileSync(path.join(folder, file), 'utf8').split(/^# Licenses of bundled/m);
  return { name, version, licence, text: text.trim() };
}

export const licences: Plugin = {
  name: 'licences',
  apply: 'build',
  applyToEnvironment: ({ name }) => name === 'client',
  generateBundle(_options, bundle) {
    // Fonts come by their address in a style sheet, so that they are no modules but files.
    const inFiles = Object.values(bundle).flatMap((one) => (one.type === 'asset' ? one.originalFileNames : one.moduleIds));
    const names = new Set([...this.getModuleIds(), ...inFiles].flatMap((id) => packageOf(id) ?? []));
    const own = manifestOf(ROOT);
    const packages = [...names].sort().map(licenceOf);
    // Many packages carry the same words: each text goes along once.
    const texts = [...new Set(packages.map(({ text }) => text))];
    const list = {
      version: own.version,
      text: readFileSync(path.join(import.meta.dirname, 'LICENSE.txt'), 'utf8').trim(),
      electron: manifestOf(folderOf('electron')).version,
      texts,
      packages: packages.map((one) => ({ ...one, text: texts.indexOf(one.text) })),
    };
    this.emitFile({ type: 'asset', fileName: 'licences.json', source: JSON.stringify(list) });
  },
};
