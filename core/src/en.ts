// What the program says. Its phrases stand in the code, in English; a translation is one file that gives another for each.

/** Phrases in one language by the English ones, `{1}`, `{2}` where a value goes; forms of a number stand apart by a bar. */
export interface Dictionary {
  /** BCP 47, as `de` or `pt-BR`. */
  readonly language: string;
  readonly phrases: Readonly<Record<string, string>>;
}

let spoken: Dictionary | null = null;

/**
 * Says everything in another language from here on. It goes before whatever holds phrases is imported, as many of them are said
 * when their file is read.
 *
 * @param dictionary  null: English, as it stands in the code
 */
export function speak(dictionary: Dictionary | null): void {
  spoken = dictionary;
}

/** A template as it stands in a dictionary: `the {1} wheels`. */
export const phraseOf = (parts: readonly string[]): string => parts.reduce((text, part, index) => `${text}{${index}}${part}`);

const filled = (phrase: string, values: readonly unknown[]): string =>
  phrase.replace(/\{(\d+)\}/g, (_, place: string) => String(values[Number(place) - 1]));

/**
 * A phrase of the program: written in English, said in the language that is spoken.
 *
 * @source our choice
 * @example en`${6} wheels touch`  // '6 wheels touch'
 */
export function en(parts: TemplateStringsArray, ...values: readonly unknown[]): string {
  const other = spoken?.phrases[phraseOf(parts)];
  return other === undefined ? String.raw({ raw: parts }, ...values) : filled(other, values);
}
