import { expect, test } from 'vitest';
import { findWords, WORDS, wordsIn } from '../../../core/src/help/words/index.ts';
import { filesUnder, textOf } from '../../walls/sources.ts';

const forms = WORDS.flatMap(({ word, also = [] }) => [word, ...also]);

/** `_driver / driven_`, `_B-rich / B-lean_`: every word that the project keeps to. */
function wordsOfTheProject(): readonly string[] {
  const [, section = ''] = /\n## Words\n([\s\S]*?)\n## /.exec(textOf('DEVELOPERS.md')) ?? [];
  return [...section.matchAll(/_([^_]+)_/g)].flatMap(([, words = '']) => words.split(' / '));
}

test('every word that the project keeps to is explained', () => {
  const words = wordsOfTheProject();
  expect(words.length).toBeGreaterThan(30);
  const known = forms.map((form) => form.toLowerCase());
  // A frozen copy is called kept; it needs no line of its own.
  expect(words.map((word) => word.toLowerCase()).filter((word) => !known.includes(word) && word !== 'kept')).toEqual([]);
});

test('each in a sentence or two, and under one head only', () => {
  for (const { word, means } of WORDS) {
    expect(means, word).toMatch(/^\S.*\.$/);
    expect(means.match(/[.:;]\s+(?=[A-Z“])/g)?.length ?? 0, word).toBeLessThanOrEqual(1);
    expect(means.length, word).toBeLessThan(200);
    expect(means, word).not.toMatch(/!|\bplease\b/i);
  }
  expect(new Set(forms.map((form) => form.toLowerCase())).size).toBe(forms.length);
});

test('each stands somewhere on the screen, on paper or in a finding', () => {
  const written = [...filesUnder('core/src'), ...filesUnder('renderer/src')]
    .filter((place) => /\.tsx?$/.test(place) && !/\/src\/help\//.test(place))
    .map(textOf)
    .join('\n')
    .toLowerCase();
  const unused = WORDS.filter(({ word, also = [] }) => ![word, ...also].some((form) => written.includes(form.toLowerCase())));
  expect(unused.map(({ word }) => word)).toEqual([]);
});

test('in the order of the alphabet', () => {
  const heads = WORDS.map(({ word }) => word.toLowerCase());
  expect(heads).toEqual(heads.toSorted());
});

test('found by what is typed, what begins with it first; blank finds all', () => {
  expect(findWords('take')[0]?.word).toBe('take-up');
  expect(findWords(' OFF')[0]?.word).toBe('off-ratio');
  expect(findWords('half link').map(({ word }) => word)).toEqual(['offset link']);
  expect(findWords('ratio').map(({ word }) => word)).toEqual(expect.arrayContaining(['mix ratio', 'off-ratio', 'ratio check']));
  expect(findWords('')).toEqual(WORDS);
  expect(findWords('no such word')).toEqual([]);
});

test('words of a sentence, the longest form of each', () => {
  expect(wordsIn('Travel of the tensioner').map(({ word }) => word)).toEqual(['travel']);
  expect(wordsIn('Pitch diameter of the gear').map(({ word }) => word)).toEqual(['pitch diameter']);
  expect(wordsIn('The off-ratio budget').map(({ word }) => word)).toEqual(['off-ratio budget']);
  expect(wordsIn('a planet')).toEqual([]);
});
