/// <reference types="vite/types/importMeta.d.ts" />
import type { Dictionary } from '../src/en.ts';

/** Phrases by the file that says them; a translator reads beside each where it stands. */
type Translation = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** How each translation is fetched, by its file. */
export type Translations = Readonly<Record<string, () => Promise<Translation>>>;

/** Every file of this folder but the English one is a translation, named for its language. */
const TRANSLATIONS: Translations = import.meta.glob<Translation>(['./*.json', '!./english.json'], { import: 'default' });

/** The order in which the forms of a number stand in a translation; a language has those it needs. */
const FORMS = ['zero', 'one', 'two', 'few', 'many', 'other'] as const;

/**
 * Which form says so many, by the place at which it stands.
 *
 * @source Unicode plural rules (CLDR), as Intl.PluralRules has them
 * @example formsIn('pl')(3)  // 1: one, few, many, other
 */
export function formsIn(language: string): (count: number) => number {
  const rules = new Intl.PluralRules(language);
  const { pluralCategories } = rules.resolvedOptions();
  const forms = FORMS.filter((form) => pluralCategories.includes(form));
  return (count) => forms.indexOf(rules.select(count));
}

/** `zh-Hant-TW`, `zh-Hant`, `zh`. */
function withFewerParts(language: string): readonly string[] {
  const parts = language.split('-');
  return parts.map((_, dropped) => parts.slice(0, parts.length - dropped).join('-'));
}

/**
 * The dictionary of the first of these languages that the program speaks; null for English, which is spoken also where none is known.
 *
 * @param languages     BCP 47, most wanted first, as the system gives them
 * @param translations  those there are
 */
export async function dictionaryFor(languages: readonly string[], translations: Translations = TRANSLATIONS): Promise<Dictionary | null> {
  // what is spoken in one country will do for another
  for (const wanted of languages)
    for (const language of withFewerParts(wanted)) {
      if (language === 'en') return null;
      const load = translations[`./${language}.json`];
      if (load !== undefined) return { language, phrases: Object.assign({}, ...Object.values(await load())), formOf: formsIn(language) };
    }
  return null;
}
