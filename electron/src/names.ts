import { access } from 'node:fs/promises';
import path from 'node:path';
import { en } from '../../core/src/en.ts';

/** The most that common file systems take, in bytes. */
const LONGEST_NAME_bytes = 255;
/** What a dialog proposes is meant to be read. */
const LONGEST_SUGGESTION_bytes = 120;

/** Marks that turn the reading direction, by which a name could pass for another. */
const TURNS = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu;
/** Names that Windows keeps for devices, whatever their extension. */
const DEVICES = /^(?:con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(?:\.|$)/i;

/**
 * The last part of a path as a sentence may hold it: one line, nothing invisible in it, and a name written from right to left does not
 * turn the words around it.
 */
export function shownName(file: string): string {
  const plain = path
    .basename(file)
    .replace(/[\p{Cc}\p{Zl}\p{Zp}]/gu, '␣')
    .replace(TURNS, '');
  return /[\u0590-\u08FF\uFB1D-\uFDFF\uFE70-\uFEFC]/u.test(plain) ? `\u2068${plain}\u2069` : plain;
}

/** A name as a dialog proposes it: no folder, nothing that a file system refuses, the wanted extension. */
export function suggestedName(name: string, extension: string): string {
  const last = name.split(/[/\\]/).at(-1) ?? '';
  const plain = last
    .replace(TURNS, '')
    .replace(/[\p{Cc}<>:"|?*]/gu, '')
    .replace(/^[.\s]+|[.\s]+$/g, '');
  const stem = plain.toLowerCase().endsWith(extension) ? plain.slice(0, -extension.length) : plain;
  const short = withinBytes(stem, LONGEST_SUGGESTION_bytes).trimEnd();
  return `${short === '' ? 'untitled' : DEVICES.test(short) ? `_${short}` : short}${extension}`;
}

/** A name for a copy beside a file, as `shop.backup.ratiowright`: one that the open dialog shows too, and no longer than a name may be. */
export function namedBeside(file: string, word: string): string {
  const { dir, name, ext } = path.parse(file);
  const ending = `.${word}${ext}`;
  return path.join(dir, withinBytes(name, LONGEST_NAME_bytes - Buffer.byteLength(ending)) + ending);
}

/** As much of a text as fits, cut between characters. */
function withinBytes(text: string, most_bytes: number): string {
  let size_bytes = 0;
  let kept = '';
  for (const sign of text) {
    size_bytes += Buffer.byteLength(sign);
    if (size_bytes > most_bytes) break;
    kept += sign;
  }
  return kept;
}

/** The place a dialog gave, with the extension. A dialog asks before replacing only for the name it was given. */
export async function placeChosen(file: string, extension: string): Promise<string> {
  if (file.toLowerCase().endsWith(extension)) return file;
  const whole = `${file}${extension}`;
  const taken = await access(whole).then(
    () => true,
    () => false,
  );
  if (taken) throw new Error(en`${shownName(whole)} is there already. To replace it, choose it by its whole name.`);
  return whole;
}
