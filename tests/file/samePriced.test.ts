// A wheel has one price (our choice); 40 and 08A are two names of one chain [ISO 606, from memory].
import { expect, test } from 'vitest';
import { samePriced } from '../../core/src/file/prices.ts';

const of = (from: number, to: number, size = '08B') => ({ kind: 'chain' as const, size, from, to });
const rows = [of(13, 20), of(21, 40), of(13, 20, '40')];

test.each([
  ['its own ends', of(13, 20), 0],
  ['the last wheel of a row', of(20, 20), 0],
  ['the first wheel of a row', of(9, 13), 0],
  ['inside a row', of(25, 26), 1],
  ['around a row', of(30, 99), 1],
  ['over two rows: the first', of(9, 99), 0],
  ['another name of the chain', of(15, 15, '08A'), 2],
])('%s has a price already', (_, one, index) => expect(samePriced(rows, one)).toBe(rows[index]));

test.each([
  ['below', of(9, 12)],
  ['above', of(41, 99)],
  ['above, of a size of which there is one row', of(21, 40, '40')],
  ['another size', of(13, 20, '06B')],
])('%s: none has', (_, one) => expect(samePriced(rows, one)).toBeUndefined());
