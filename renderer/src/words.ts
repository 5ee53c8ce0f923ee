import { speak } from '../../core/src/en.ts';
import { dictionaryFor } from '../../core/words/dictionaries.ts';

/** Speaks the language of the person; whatever holds phrases is imported after it. */
export async function speakTheirs(): Promise<string> {
  const dictionary = await dictionaryFor(navigator.languages);
  speak(dictionary);
  return dictionary?.language ?? 'en';
}
