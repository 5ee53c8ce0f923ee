import { describe, expect, test } from 'vitest';
import { dictionaryFor, formsIn, type Translations } from '../../core/words/dictionaries.ts';

const in_ = (...languages: readonly string[]): Translations =>
  Object.fromEntries(
    languages.map((language) => [
      `./${language}.json`,
      async () => ({ 'core/src/a.ts': { rack: `${language} rack` }, 'core/src/b.ts': { pump: `${language} pump` } }),
    ]),
  );
const spokenOf = async (wanted: readonly string[], translations: Translations): Promise<string | null> =>
  (await dictionaryFor(wanted, translations))?.language ?? null;

describe('the language that is spoken', () => {
  test('English is spoken where it is wanted before any that has a translation', async () => {
    expect(await spokenOf(['en', 'de'], in_('de'))).toBeNull();
    expect(await spokenOf(['en-GB', 'de'], in_('de'))).toBeNull();
    expect(await spokenOf(['fr', 'en', 'de'], in_('de'))).toBeNull();
  });
  test('the first that has a translation is, and English where none has', async () => {
    expect(await spokenOf(['de', 'en'], in_('de', 'pl'))).toBe('de');
    expect(await spokenOf(['fr', 'pl', 'de'], in_('de', 'pl'))).toBe('pl');
    expect(await spokenOf(['fr', 'it'], in_('de', 'pl'))).toBeNull();
    expect(await spokenOf([], in_('de'))).toBeNull();
  });
  test('a region falls back to its language, and a script with it', async () => {
    expect(await spokenOf(['de-AT'], in_('de'))).toBe('de');
    expect(await spokenOf(['de-AT', 'fr'], in_('fr', 'de', 'de-AT'))).toBe('de-AT');
    expect(await spokenOf(['zh-Hant-TW'], in_('zh', 'zh-Hant'))).toBe('zh-Hant');
    expect(await spokenOf(['zh-Hant-TW'], in_('zh'))).toBe('zh');
  });
  test('a translation for one country does not serve another', async () => {
    expect(await spokenOf(['pt-PT', 'de'], in_('pt-BR', 'de'))).toBe('de');
  });
  test('its phrases are those of all its files', async () => {
    const dictionary = await dictionaryFor(['de'], in_('de'));
    expect(dictionary?.phrases).toEqual({ rack: 'de rack', pump: 'de pump' });
    expect(dictionary?.formOf(1)).toBe(0);
  });
  test('only languages that are asked for are fetched', async () => {
    const fetched: string[] = [];
    const watched = Object.fromEntries(
      Object.entries(in_('de', 'fr')).map(([file, load]) => {
        const loadSeen = () => {
          fetched.push(file);
          return load();
        };
        return [file, loadSeen] as const;
      }),
    );
    await dictionaryFor(['fr-CA', 'de'], watched);
    expect(fetched).toEqual(['./fr.json']);
  });
  test('the folder itself has no English among its translations', async () => {
    expect(await dictionaryFor(['en-US'])).toBeNull();
  });
});

// The order is zero, one, two, few, many, other, of those that a language has.
describe('forms of a number [Unicode CLDR plural rules, from memory]', () => {
  test.each([
    ['en', [1, 0, 2, 1.5], [0, 1, 1, 1]],
    ['de', [1, 0, 2, 1.5], [0, 1, 1, 1]],
    ['pl', [1, 2, 4, 22, 5, 12, 0, 1.5], [0, 1, 1, 1, 2, 2, 2, 3]],
    ['cs', [1, 2, 4, 1.5, 5, 0], [0, 1, 1, 2, 3, 3]],
    ['ja', [0, 1, 2, 1.5], [0, 0, 0, 0]],
    ['ar', [0, 1, 2, 3, 11, 100], [0, 1, 2, 3, 4, 5]],
  ] as const)('%s: %j has the forms %j', (language, counts, forms) => {
    expect(counts.map(formsIn(language))).toEqual(forms);
  });
});
