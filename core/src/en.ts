// What the program says. Its phrases stand in the code, in English; a translation is one file that says each of them otherwise.

/** The phrases of one language by the English ones; `{1}`, `{2}` stand where values go, forms of a number apart by a bar. */
export interface Dictionary {
  /** BCP 47, as `de` or `pt-BR`. */
  readonly language: string;
  readonly phrases: Readonly<Record<string, string>>;
  /** Which of the forms of a number says so many, the first being 0. */
  readonly formOf: (count: number) => number;
}

let spoken: Dictionary | null = null;

/**
 * Says everything in another language from here on. It goes before the import of whatever holds phrases, as many of them are said
 * when their file is read.
 *
 * @param dictionary  null: English, as it stands in the code
 */
export function speak(dictionary: Dictionary | null): void {
  spoken = dictionary;
}

/** The language that is spoken, BCP 47. */
export const language = (): string => spoken?.language ?? 'en';

/** A template as it stands in a dictionary: `the {1} wheels`. */
export const phraseOf = (parts: readonly string[]): string => parts.reduce((text, part, index) => `${text}{${index}}${part}`);

const saidOtherwise = (phrase: string): string | undefined =>
  spoken !== null && Object.hasOwn(spoken.phrases, phrase) ? spoken.phrases[phrase] : undefined;

const filled = (phrase: string, values: readonly unknown[]): string =>
  phrase.replace(/\{(\d+)\}/g, (_, place: string) => String(values[Number(place) - 1]));

/**
 * A phrase of the program: written in English, said in the language that is spoken.
 *
 * @source our choice
 * @example en`${6} wheels touch`  // '6 wheels touch'
 */
export function en(parts: TemplateStringsArray, ...values: readonly unknown[]): string {
  const other = spoken === null ? undefined : saidOtherwise(phraseOf(parts));
  return other === undefined ? String.raw({ raw: parts }, ...values) : filled(other, values);
}

/**
 * What a key of the shop file calls its value, as people are told; the dictionary has the words of every key.
 *
 * @source our choice
 * @example keyAsWord('dial step')  // 'dial step'
 */
export const keyAsWord = (key: string): string => saidOtherwise(key) ?? key;

const englishForm = (count: number): number => (count === 1 ? 0 : 1);

/**
 * A phrase that says how many: in English the form for one, a bar, and the form for all other numbers. Every form may use every
 * value; they are counted through from the first form to the last.
 *
 * @param count  whole number from 0
 * @source our choice
 * @example plural(2)`one wheel closes it|${2} wheels close it`  // '2 wheels close it'
 */
export const plural =
  (count: number) =>
  (parts: TemplateStringsArray, ...values: readonly unknown[]): string => {
    const phrase = phraseOf(parts);
    const other = saidOtherwise(phrase);
    const forms = (other ?? phrase).split('|');
    const form = (other === undefined ? undefined : spoken?.formOf) ?? englishForm;
    return filled(forms[form(count)] ?? forms[forms.length - 1] ?? '', values);
  };
