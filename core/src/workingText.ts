import type { Say } from './format.ts';
import { amountText, preciseText, siText } from './shown.ts';
import { type Input, isWorked, type Worked } from './working.ts';

/** One number put into a formula, as it is read and as the formula takes it. */
export interface PutText {
  readonly letter: string;
  readonly what: string;
  readonly figure: string;
  /** The same in SI; null where that is what stands there already. */
  readonly si: string | null;
  /** How it came about in its turn; null where it was given. */
  readonly working: Worked | null;
}

/** A working in words: what screen, sheet and answer show of it. */
export interface WorkingText {
  readonly what: string;
  /** The formula with its letter, as `Q = D · n`. */
  readonly formula: string;
  /** The same with the numbers put in, in SI. */
  readonly numbers: string;
  readonly put: readonly PutText[];
  /** The result, in the unit people read and, where another, in SI. */
  readonly result: string;
  readonly source: string;
}

/**
 * A working as text.
 *
 * @source our choice of form: the formula, the numbers put in with their units, the source
 * @example workingText(flow of A, say).formula  // 'Q = D · n'
 */
export function workingText(worked: Worked, say: Say): WorkingText {
  const { letter, written, source } = worked.formula;
  const si = siText(worked.value, worked.dimension, say);
  const read = preciseText(worked.value, worked.dimension, say);
  return {
    what: worked.what,
    formula: `${letter} = ${written}`,
    numbers: `${letter} = ${withNumbers(worked, say)} = ${si}`,
    put: worked.put.map(([name, input]) => putText(name, input, say)),
    result: read === si ? read : `${read} (${si})`,
    source,
  };
}

function putText(letter: string, input: Input, say: Say): PutText {
  const figure = preciseText(input.value, input.dimension, say);
  const si = siText(input.value, input.dimension, say);
  return { letter, what: input.what, figure, si: si === figure ? null : si, working: isWorked(input) ? input : null };
}

/** The formula with each letter replaced by its number in SI; longer letters first, so that none is taken for the head of another. */
function withNumbers({ formula: { written }, put }: Worked, say: Say): string {
  const letters = put.map(([letter]) => letter).sort((a, b) => b.length - a.length);
  if (letters.length === 0) return written;
  const figures = new Map(put.map(([letter, input]) => [letter, siText(input.value, 'number', say)]));
  // A letter stands alone: the s of `cos` is none.
  const alone = new RegExp(`(?<![\\p{L}])(${letters.map(escaped).join('|')})(?![\\p{L}\\p{N}])`, 'gu');
  return written.replace(alone, (letter) => bracketed(figures.get(letter) ?? letter));
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
const bracketed = (figure: string): string => (/^[\d.,]+$/.test(figure) ? figure : `(${figure})`);

/** A figure on screen or sheet, with its working where it has one. */
export interface Fact {
  /** Stable within its group, as `flowA`. */
  readonly id: string;
  readonly what: string;
  readonly figure: string;
  /** What there is to say beside it; empty where nothing is. */
  readonly note: string;
  readonly working: Worked | null;
  /** The number itself; absent where the figure is a word. */
  readonly amount?: Input;
}

export interface FactGroup {
  readonly id: string;
  readonly title: string;
  readonly facts: readonly Fact[];
}

/** A worked figure as a fact, in the unit and with the places in which it is usually read. */
export function fact(
  id: string,
  input: Input,
  say: Say,
  { note = '', what = input.what, figure = amountText(input.value, input.dimension, say) } = {},
): Fact {
  return { id, what, figure, note, working: isWorked(input) ? input : null, amount: input };
}
