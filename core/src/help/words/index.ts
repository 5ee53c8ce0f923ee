import { drive } from './drive.ts';
import { mix } from './mix.ts';
import { planning } from './planning.ts';
import { pumps } from './pumps.ts';
import type { Word } from './word.ts';

export type { Word } from './word.ts';

const formsOf = ({ word, also = [] }: Word): readonly string[] => [word, ...also];
/** What stands first in a list: plain letters, capitals and accents set aside. */
const key = (word: string): string =>
  word
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/^\P{L}+/u, '');

/** Every word that help explains, in the order of the alphabet. */
export const WORDS: readonly Word[] = [...drive, ...mix, ...pumps, ...planning].sort((a, b) => (key(a.word) < key(b.word) ? -1 : 1));

/**
 * The words that hold what was typed; those that begin with it come first.
 *
 * @param typed  as typed; blank finds every word
 * @source our choice
 * @example findWords('take')[0]?.word  // 'take-up'
 */
export function findWords(typed: string): readonly Word[] {
  const wanted = typed.trim().toLowerCase();
  const has = (word: Word, test: (form: string) => boolean) => formsOf(word).some((form) => test(form.toLowerCase()));
  const first = WORDS.filter((word) => has(word, (form) => form.startsWith(wanted)));
  return [...first, ...WORDS.filter((word) => !first.includes(word) && has(word, (form) => form.includes(wanted)))];
}

/**
 * The words that a sentence uses, in the order of the alphabet; of `pitch` and `pitch diameter` only what stands there.
 *
 * @source our choice
 * @example wordsIn('Travel of the tensioner').map(({ word }) => word)  // ['travel']
 */
export function wordsIn(text: string): readonly Word[] {
  const longestFirst = WORDS.flatMap((word) => formsOf(word).map((form) => ({ word, form }))).sort((a, b) => b.form.length - a.form.length);
  let rest = text.toLowerCase();
  const found = new Set<Word>();
  for (const { word, form } of longestFirst) {
    const letters = form.toLowerCase().replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
    const place = new RegExp(`(?<![\\p{L}\\p{N}_-])${letters}(?![\\p{L}\\p{N}_-])`, 'gu');
    const without = rest.replace(place, '');
    if (without !== rest) found.add(word);
    rest = without;
  }
  return WORDS.filter((word) => found.has(word));
}
