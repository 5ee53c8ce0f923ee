import { en } from '../en.ts';
import type { Outcome } from '../finding.ts';
import { damageIn } from './damage.ts';
import { readWith } from './readWith.ts';
import type { ShopFile } from './shopFile.ts';

/** Reads the text of a shop file, and says of a damaged one where it goes wrong. */
export const readShopFile = (text: string): Outcome<ShopFile> => readWith(text, damageText);

function damageText(text: string): string {
  if (text.trim() === '') return en`the file is empty`;
  const { line, column, expected } = damageIn(text);
  return line > 1 || column > 1
    ? en`the file is damaged: line ${line}, column ${column} should have ${expected}`
    : en`this is not a shop file, or it is damaged: line ${line}, column ${column} should have ${expected}`;
}
