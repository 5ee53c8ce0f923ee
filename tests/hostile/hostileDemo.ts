import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { demoText, opened } from '../file/shop.ts';

/** What turns the direction of reading, steers a terminal, ends a line, or is half a character. */
export const HOSTILE = '\u202E\u001B[31mX\u009B2J\u0000\u0007\r\n\t\u2028\u2066<b>&"\'$&$1\uD800\u200F\uFEFF';
/** By the classes of Unicode; line ends are our own where they are in text. */
export const STEERING = /[\p{Bidi_Control}\p{Cs}\u2028\u2029]|(?!\n)\p{Cc}/u;

/** Every name and line of the demo begins with it; ids and what is chosen from a list stay. */
export function hostileDemo(): ShopFile {
  const KEYS = new Set(['name', 'note', 'part', 'place', 'currency', 'checklist', 'cautions', 'leftOut', 'customer', 'lines']);
  const changed = (json: unknown, isText: boolean): unknown => {
    if (typeof json === 'string') return isText ? `${HOSTILE}${json}` : json;
    if (Array.isArray(json)) return json.map((one) => changed(one, isText));
    if (typeof json !== 'object' || json === null) return json;
    return Object.fromEntries(Object.entries(json).map(([key, value]) => [key, changed(value, KEYS.has(key))]));
  };
  const file = opened(JSON.stringify(changed(JSON.parse(demoText()), false)));
  for (const check of file.ratioChecks) check.by = HOSTILE;
  return file;
}
