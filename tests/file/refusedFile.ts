import { expect } from 'vitest';
import { readShopFile } from '../../core/src/file/read.ts';
import type { Place } from '../../core/src/finding.ts';
import { lines } from './shop.ts';

/** Texts that are no shop file, or a damaged one: what is said of them, and places of the demo to make wrong. */

export const MACHINE: Place = ['machines', 0];
export const STAGE: Place = [...MACHINE, 'stages', 0];
export const MATERIAL: Place = ['materials', 0];
export const SPEED: Place = [...MACHINE, 'motor', 'speed'];
export const PIECE: Place = ['racks', 0, 'pieces', 4];

/** What is wrong with a text, as places and sentences. */
export function refused(text: string): readonly string[] {
  const read = readShopFile(text);
  if (read.ok) throw new Error('the file was opened');
  for (const finding of read.findings) expect(finding).toMatchObject({ severity: 'blocks', check: 'file.content' });
  return lines(read.findings);
}

/** Sentences that a shop can read: a capital letter or what was typed first, a full stop last, no words of the library that reads the file. */
export function expectPlainEnglish(sentences: readonly string[]): void {
  for (const sentence of sentences) {
    expect(sentence).toMatch(/^["\d.+−-]|^[A-Z]/);
    expect(sentence).toMatch(/[^.]\.$/);
    expect(sentence).not.toMatch(
      /Invalid|[Rr]eceived|undefined|NaN|object Object|Expected (Object|Array|string|number|unknown)|\s{2}| \.$/,
    );
  }
}
