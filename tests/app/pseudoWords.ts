import { readFileSync } from 'node:fs';
import path from 'node:path';
import { build, type Plugin } from 'vite';
import { dictionary } from '../../build/words.ts';

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

const translation = () =>
  Object.fromEntries(
    Object.entries(dictionary(ROOT)).map(([place, phrases]) => [
      place,
      Object.fromEntries(Object.keys(phrases).map((phrase) => [phrase, pseudo(phrase)])),
    ]),
  );

const FOLDER = /import\.meta\.glob<Translation>\([^;]*\)/;
const VIRTUAL = '\0pseudo';

/** Puts the translation where the folder of dictionaries is looked through. */
const spoken: Plugin = {
  name: 'pseudo',
  enforce: 'pre',
  resolveId: (id) => (id === 'pseudo' ? VIRTUAL : undefined),
  load: (id) => (id === VIRTUAL ? `export default ${JSON.stringify(translation())}` : undefined),
  transform(code, id) {
    if (!id.endsWith('core/words/dictionaries.ts')) return undefined;
    if (!FOLDER.test(code)) throw new Error('the dictionaries are no longer where they were');
    return code.replace(FOLDER, `{ './${PSEUDO}.json': () => import('pseudo').then((found) => found.default) }`);
  },
};

/** Builds the page in that language; the folder is the caller's. */
export async function buildPseudo(folder: string): Promise<void> {
  await build({
    configFile: path.join(ROOT, 'build/vite.config.ts'),
    logLevel: 'warn',
    plugins: [spoken],
    environments: { client: { build: { outDir: folder, emptyOutDir: true } } },
  });
}

/** What the user wrote, and no program translates: every text of a shop file. */
export function textsOf(file: string): readonly string[] {
  const texts = new Set<string>();
  const look = (value: unknown): void => {
    if (typeof value === 'string' && value !== '') texts.add(value);
    else if (typeof value === 'object' && value !== null) for (const one of Object.values(value)) look(one);
  };
  look(JSON.parse(readFileSync(file, 'utf8')));
  return [...texts].sort((a, b) => b.length - a.length);
}
