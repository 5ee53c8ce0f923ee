import { visible } from '../visible.ts';

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/**
 * Text made safe to stand in HTML or SVG, between tags or within quotation marks.
 *
 * @param text  anything, also the user's own words
 * @source HTML standard, characters that open or close markup; `visible` for what would turn the direction of reading
 * @example escaped('<b> & "c"')  // '&lt;b&gt; &amp; &quot;c&quot;'
 */
export const escaped = (text: string): string => visible(text).replace(/[&<>"']/g, (character) => ESCAPES[character] ?? character);

/** A heading of a page, with what is said beside it in smaller letters. */
export const h2 = (title: string, beside = ''): string =>
  `<h2>${escaped(title)}${beside === '' ? '' : ` <span>${escaped(beside)}</span>`}</h2>`;

/** A list of sentences. */
export const list = (words: readonly string[]): string => `<ul>${words.map((word) => `<li>${escaped(word)}</li>`).join('')}</ul>`;
