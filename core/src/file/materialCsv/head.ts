import { en } from '../../en.ts';
import { type Column, columnCalled, NOTHING, PLAIN_ORDER } from './columns.ts';

/** Where the columns of a list stand. Without a head they stand in `PLAIN_ORDER`, and the first row is a material already. */
export interface Columns {
  readonly byName: ReadonlyMap<string, Column>;
  readonly hasHead: boolean;
  /** Heads not known here. */
  readonly ignored: readonly string[];
  readonly troubles: readonly string[];
}

/**
 * Finds the columns by the first row: it is a head where two of its cells name columns, or where nothing behind its first cell has a digit.
 *
 * @source our choice
 */
export function columnsOf(first: readonly string[]): Columns {
  const found = first.map((cell, at) => columnCalled(cell, at));
  const named = found.filter((column) => column !== null);
  const hasHead = named.length >= 2 || !first.slice(1).some((cell) => /\d/.test(cell));
  if (!hasHead) {
    const byName = new Map(PLAIN_ORDER.map((name, at) => [name, { name, at, ...NOTHING }]));
    return { byName, hasHead, ignored: [], troubles: [] };
  }
  const byName = new Map<string, Column>();
  const troubles: string[] = [];
  for (const column of named) {
    if (byName.has(column.name)) troubles.push(en`The column "${column.name}" stands there twice.`);
    else byName.set(column.name, column);
  }
  const ratioHeads = ['ratio', 'B per 100 A', 'ratio by weight', 'ratio by volume'];
  const basisSaid = ['basis', 'ratio by weight', 'ratio by volume'].some((name) => byName.has(name));
  const missing = [
    ...(byName.has('name') ? [] : ['name']),
    ...(ratioHeads.some((name) => byName.has(name)) ? [] : ['ratio']),
    ...(basisSaid ? [] : [en`${'basis'} (weight or volume; it is never guessed)`]),
  ];
  if (missing.length > 0)
    troubles.push(en`The head lacks: ${missing.join(', ')}. Without a head the columns stand as: ${PLAIN_ORDER.join(', ')}.`);
  const ignored = first.filter((cell, at) => found[at] === null && cell.trim() !== '').map((cell) => cell.trim());
  return { byName, hasHead, ignored, troubles };
}
