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
