import { en } from '../../en.ts';
import { readNumber, readRatio } from '../../reading.ts';
import { quoted } from '../../visible.ts';
import type { MaterialRow } from '../material.ts';
import type { Basis } from '../sheetRatio.ts';

/** What a row says of its mix ratio, cell by cell; empty where it says nothing. */
export interface RatioCells {
  readonly ratio: string;
  readonly perHundredA: string;
  readonly byWeight: string;
  readonly byVolume: string;
  readonly other: string;
  readonly basis: string;
}

export type Say = (column: string, what: string) => void;

const BASIS: ReadonlyMap<string, Basis> = new Map([
  ...['weight', 'by weight', 'w', 'wt', 'pbw', 'parts by weight'].map((word) => [word, 'weight'] as const),
  ...['volume', 'by volume', 'v', 'vol', 'pbv', 'parts by volume'].map((word) => [word, 'volume'] as const),
]);

type Parts = Pick<NonNullable<MaterialRow['ratio']>, 'parts' | 'perHundredA'>;

/**
 * The mix ratio of a row, and the same on the other basis where the row has both; what is wrong is said of its column.
 *
 * @returns null where something was said
 * @source our choice: the basis is read and never guessed; a number alone is a ratio only where its column says per 100 A
 */
export function ratioOf(cells: RatioCells, say: Say): Pick<MaterialRow, 'ratio' | 'otherRatio'> | null {
  const given = [cells.ratio, cells.perHundredA, cells.byWeight || cells.byVolume].filter((text) => text !== '');
  if (given.length === 0) say('ratio', en`Nothing is given. Expected A to B, like 100:38.9 or 5:1, or ${'38.9 per 100 A'}.`);
  if (given.length > 1) say('ratio', en`The ratio is given twice: keep one of its columns.`);
  const headed = given.length === 1 && cells.ratio === '' && cells.perHundredA === '';
  const parts =
    given.length !== 1 ? null : cells.perHundredA === '' ? partsOf('ratio', given[0] ?? '', say) : perHundred(cells.perHundredA, say);
  const basis = headed ? (cells.byWeight === '' ? 'volume' : 'weight') : basisOf(cells.basis, say);
  const second = cells.other || (headed && cells.byWeight !== '' ? cells.byVolume : '');
  const other = second === '' ? undefined : partsOf('other ratio', second, say);
  if (other !== undefined && other !== null && other.parts === undefined) say('other ratio', en`Expected A to B, like 100:45.`);
  if (basis === null || parts === null || other === null) return null;
  const otherBasis: Basis = basis === 'weight' ? 'volume' : 'weight';
  return { ratio: { basis, ...parts }, ...(other?.parts !== undefined && { otherRatio: { basis: otherBasis, parts: other.parts } }) };
}

function basisOf(text: string, say: Say): Basis | null {
  const basis = BASIS.get(text.toLowerCase());
  if (basis !== undefined) return basis;
  const said = text === '' ? en`Nothing is given.` : en`${quoted(text)} is neither.`;
  say('basis', en`${said} Expected ${'weight'} or ${'volume'}, as the data sheet says; it is never guessed.`);
  return null;
}

function partsOf(column: string, text: string, say: Say): Parts | null {
  const [, hundred] = /^(.*?)\s*(?:parts of )?B?\s*per 100(?:\s*A)?$/i.exec(text) ?? [];
  if (hundred !== undefined) return perHundred(hundred, say);
  const read = readRatio(text);
  if (read.ok && read.value.length === 2) return { parts: text };
  // Spreadsheets take 100:45 for a time of day and write it back as one.
  if (/^\d+:\d\d:00$/.test(text))
    say(column, en`${quoted(text)} looks like a time that a spreadsheet made of ${text.slice(0, -3)}: make its cell text.`);
  else if (read.ok) say(column, en`"${text}" has three parts. A list takes two; a third part is given on the Material page.`);
  else if (readNumber(text).ok) say(column, en`"${text}" is one number. Expected A to B, like 100:${text}, or ${`${text} per 100 A`}.`);
  else say(column, read.expected);
  return null;
}

function perHundred(text: string, say: Say): Parts | null {
  const read = readNumber(text);
  if (read.ok) return { perHundredA: text };
  say('B per 100 A', read.expected);
  return null;
}
