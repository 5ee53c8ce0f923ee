import type { Fraction } from './ratio.ts';
import { float } from './ratio.ts';
import type { Dimension } from './units.ts';

// How a figure came about. A formula is written once as people print it and once as code, side by side; a test evaluates what is
// printed and holds the two together, so that screen, sheet and answer can show a working without computing anything again.

/** What is counted: exact wherever it enters the ratio, a float where π or an angle comes in. */
export type Amount = Fraction | number;

/** A number in the SI unit of its dimension, with its name. */
export interface Input<Value extends Amount = Amount> {
  readonly what: string;
  readonly value: Value;
  readonly dimension: Dimension;
}

/** A formula as it is printed, with what it computes. */
export interface Formula<Letters extends string = string, Value extends Amount = Amount> {
  /** The letter of the result. */
  readonly letter: string;
  /** The right-hand side: letters, numbers, π, + − · / ^ ( ), sqrt, sin, cos, tan, round, min, max; everything in SI. */
  readonly written: string;
  readonly dimension: Dimension;
  /** Id in SOURCES.md with page or equation, or `definition`, `geometry`, `our choice`. */
  readonly source: string;
  readonly of: (put: Readonly<Record<Letters, Value>>) => Value;
}

/** A result with its formula and what was put into it; an input may itself be worked out. */
export interface Worked<Value extends Amount = Amount> extends Input<Value> {
  readonly formula: Pick<Formula, 'letter' | 'written' | 'source'>;
  readonly put: readonly (readonly [letter: string, input: Input])[];
}

/**
 * A formula as its type checks it.
 *
 * @example formula({ letter: 'Q', written: 'D · n', dimension: 'flow', source: 'definition', of: ({ D, n }: Record<'D' | 'n', Fraction>) => D.mul(n) })
 */
export const formula = <Letters extends string, Value extends Amount>(of: Formula<Letters, Value>): Formula<Letters, Value> => of;

export const input = <Value extends Amount>(what: string, value: Value, dimension: Dimension): Input<Value> => ({ what, value, dimension });

const LOWERED = '₀₁₂₃₄₅₆₇₈₉';

/**
 * A letter with its number below it, where a formula has as many as there are terms.
 *
 * @param index  from 0; numbers begin at 1
 * @source our choice
 * @example numbered('w', 11)  // 'w₁₂'
 */
export const numbered = (letter: string, index: number): string =>
  letter + [...String(index + 1)].map((digit) => LOWERED[Number(digit)] ?? '').join('');

/**
 * Puts numbers into a formula and keeps how it was done.
 *
 * @param what  the name of the result, as `flow of A`
 * @param put   one input for each letter
 * @source definition
 * @example work(pumpFlow, 'flow of A', { D: input('displacement', D, 'displacement'), n: speed }).value
 */
export function work<Letters extends string, Value extends Amount>(
  formula: Formula<Letters, Value>,
  what: string,
  put: Readonly<Record<Letters, Input<Value>>>,
): Worked<Value> {
  const inputs: (readonly [letter: string, input: Input<Value>])[] = [];
  // Filled letter by letter, all that `put` is proved to have: this is called for every figure of every option.
  const values = {} as Record<Letters, Value>;
  for (const letter in put) {
    const one = put[letter];
    inputs.push([letter, one]);
    values[letter] = one.value;
  }
  const { letter, written, source, dimension, of } = formula;
  return { what, value: of(values), dimension, formula: { letter, written, source }, put: inputs };
}

export const isWorked = (input: Input): input is Worked => 'formula' in input;

/** An exact input for a formula of floats; how it came about stays with it. */
export function inFloat<Term extends Input>(input: Term): Term & Input<number> {
  return { ...input, value: typeof input.value === 'number' ? input.value : float(input.value) };
}
