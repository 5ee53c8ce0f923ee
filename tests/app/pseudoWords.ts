import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { createBuilder, type Plugin } from 'vite';
import { dictionary } from '../../build/words.ts';
import type { Dictionary } from '../../core/src/en.ts';

// A language that nobody speaks: every letter of a phrase with a mark, and the whole a third longer, as German is.

export const PSEUDO = 'en-XA';
const ROOT = path.resolve(import.meta.dirname, '../..');
const MARKED: Readonly<Record<string, string>> = Object.fromEntries(
  [
    'aá',
    'bƀ',
    'cć',
    'dđ',
    'eé',
    'fƒ',
    'gĝ',
    'hĥ',
    'ií',
    'jĵ',
    'kķ',
    'lĺ',
    'mɱ',
    'nń',
    'oó',
    'pƥ',
    'qɋ',
    'rŕ',
    'sś',
    'tť',
    'uú',
    'vʋ',
    'wŵ',
    'xẋ',
    'yý',
    'zź',
  ].flatMap(([plain = '', marked = '']) => [
    [plain, marked],
    [plain.toUpperCase(), marked.toUpperCase()],
  ]),
);
const VOWEL = /[aeiou]/i;

/** Values keep their places, and each form of a number is lengthened by itself. */
export const pseudo = (phrase: string): string =>
  phrase
    .split(/(\{\d+\})/)
    .map((part) =>
      /^\{\d+\}$/.test(part) ? part : [...part].map((letter) => (MARKED[letter] ?? letter).repeat(VOWEL.test(letter) ? 2 : 1)).join(''),
    )
    .join('');

/** That language for what is loaded without a page: `speak` it, then import. */
export const pseudoDictionary = (): Dictionary => ({
  language: PSEUDO,
  phrases: Object.assign({}, ...Object.values(translation())),
  formOf: (count) => (count === 1 ? 0 : 1),
});

const translation = () =>
  Object.fromEntries(
    Object.entries(dictionary(ROOT)).map(([place, phrases]) => [
      place,
      Object.fromEntries(Object.keys(phrases).map((phrase) => [phrase, pseudo(phrase)])),
    ]),
  );

let gathered: ReturnType<typeof translation> | undefined;
const FOLDER = /import\.meta\.glob<Translation>\([^;]*\)/;
const VIRTUAL = '\0pseudo';

/** Puts the translation where the folder of dictionaries is looked through. */
const spoken: Plugin = {
  name: 'pseudo',
  enforce: 'pre',
  resolveId: (id) => (id === 'pseudo' ? VIRTUAL : undefined),
  load(id) {
    if (id !== VIRTUAL) return undefined;
    gathered ??= translation();
    return `export default ${JSON.stringify(gathered)}`;
  },
  transform(code, id) {
    if (!id.endsWith('core/words/dictionaries.ts')) return undefined;
    if (!FOLDER.test(code)) throw new Error('the dictionaries are no longer where they were');
    return code.replace(FOLDER, `{ './${PSEUDO}.json': () => import('pseudo').then((found) => found.default) }`);
  },
};

/** Builds page and shell in that language, each into a folder of its own as in dist; the folder around them is the caller's. */
export async function buildPseudo(folder: string): Promise<void> {
  const into = (name: string, emptyOutDir: boolean) => ({ build: { outDir: path.join(folder, name), emptyOutDir } });
  const builder = await createBuilder({
    configFile: path.join(ROOT, 'build/vite.config.ts'),
    logLevel: 'warn',
    plugins: [spoken],
    environments: { client: into('renderer', true), main: into('electron', true), preload: into('electron', false) },
  });
  for (const name of ['client', 'main', 'preload']) {
    const environment = builder.environments[name];
    if (environment === undefined) throw new RangeError(`the build has no ${name}`);
    await builder.build(environment);
  }
  // As in an installed program: the main module is one.
  writeFileSync(path.join(folder, 'package.json'), '{ "type": "module" }');
}

/** What the user wrote, and no program translates: every text of a shop file, or of some of its keys. */
export function textsOf(file: string, keys: ReadonlySet<string> | null = null): readonly string[] {
  const texts = new Set<string>();
  const look = (value: unknown, wanted: boolean): void => {
    if (typeof value === 'string' && value !== '' && wanted) texts.add(value);
    else if (typeof value === 'object' && value !== null)
      for (const [key, one] of Object.entries(value)) look(one, wanted && Array.isArray(value) ? wanted : keys === null || keys.has(key));
  };
  look(JSON.parse(readFileSync(file, 'utf8')), false);
  return [...texts].sort((a, b) => b.length - a.length);
}
