import { access } from 'node:fs/promises';
import path from 'node:path';

/** A name as a dialog proposes it: no folder, nothing that a file system refuses, the wanted extension. */
export function suggestedName(name: string, extension: string): string {
  const last = name.split(/[/\\]/).at(-1) ?? '';
  const plain = last.replace(/[\p{Cc}<>:"|?*]/gu, '').replace(/^[.\s]+|[.\s]+$/g, '');
  const stem = plain.toLowerCase().endsWith(extension) ? plain.slice(0, -extension.length) : plain;
  return `${stem === '' ? 'untitled' : stem}${extension}`;
}

/** The place a dialog gave, with the extension. A dialog asks before replacing only for the name it was given. */
export async function placeChosen(file: string, extension: string): Promise<string> {
  if (file.toLowerCase().endsWith(extension)) return file;
  const whole = `${file}${extension}`;
  const taken = await access(whole).then(
    () => true,
    () => false,
  );
  if (taken) throw new Error(`${path.basename(whole)} is there already. To replace it, choose it by its whole name.`);
  return whole;
}
