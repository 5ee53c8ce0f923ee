import { type Fraction, ZERO } from './ratio.ts';
import type { Dimension } from './units.ts';
import { formula, type Input, inFloat, numbered, type Worked, work } from './working.ts';

/** Terms to be put together, with how the result is called and written. */
interface Terms {
  readonly what: string;
  /** The letter of the result. */
  readonly letter: string;
  /** The letter of the terms; each gets its number. */
  readonly of: string;
  readonly dimension: Dimension;
  readonly source: string;
  readonly terms: readonly Input<Fraction>[];
}

/**
 * Any count of terms added up, each with its own letter; of none it is 0.
 *
 * @source arithmetic
 * @example sumOf({ letter: 'U', of: 'u', terms: [0.5 %, 0.2 %] })  // U = u₁ + u₂ = 0.7 %
 */
export function sumOf({ what, letter, of, dimension, source, terms }: Terms): Worked<Fraction> {
  const put = lettered(of, terms);
  const sum = formula({
    letter,
    written: Object.keys(put).join(' + ') || '0',
    dimension,
    source,
    of: (values: Readonly<Record<string, Fraction>>) => Object.values(values).reduce((total, value) => total.add(value), ZERO),
  });
  return work(sum, what, put);
}

/**
 * The root of the sum of the squares of any count of terms; of none it is 0.
 *
 * @source gum 5.1.2, equation 10: independent contributions, each with the sensitivity already in it
 * @example rootSumSquareOf({ letter: 'u', of: 'u', terms: [0.3 %, 0.4 %] })  // u = sqrt(u₁^2 + u₂^2) = 0.5 %
 */
export function rootSumSquareOf({ what, letter, of, dimension, source, terms }: Terms): Worked<number> {
  const put = lettered(of, terms.map(inFloat));
  const squares = Object.keys(put).map((name) => `${name}^2`);
  const root = formula({
    letter,
    written: `sqrt(${squares.join(' + ') || '0'})`,
    dimension,
    source,
    of: (values: Readonly<Record<string, number>>) => Math.sqrt(Object.values(values).reduce((total, value) => total + value * value, 0)),
  });
  return work(root, what, put);
}

/** Each term under its letter, numbered from 1. */
const lettered = <Term>(letter: string, terms: readonly Term[]): Readonly<Record<string, Term>> =>
  Object.fromEntries(terms.map((term, index) => [numbered(letter, index), term]));
