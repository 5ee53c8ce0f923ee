import { evaluate } from 'mathjs';
import { expect } from 'vitest';
import { isWorked, type Worked } from '../../core/src/working.ts';

/** The printed text as mathjs, an expression library from npm, reads it; each letter becomes a plain name, longer ones first. All in SI. */
export function printedValue({ formula, put }: Worked): number {
  const letters = put.map(([letter]) => letter).sort((a, b) => b.length - a.length);
  const scope: Record<string, number> = {};
  let text = formula.written.replaceAll('·', '*').replaceAll('π', 'pi');
  for (const [index, letter] of letters.entries()) {
    text = text.replace(new RegExp(`(?<![\\p{L}_])${letter}(?![\\p{L}\\p{N}_])`, 'gu'), `put_${index}_`);
    scope[`put_${index}_`] = Number(put.find(([name]) => name === letter)?.[1].value);
  }
  return Number(evaluate(text, scope));
}

/** A working and all that it rests on. */
export function chainOf(worked: Worked): readonly Worked[] {
  return [worked, ...worked.put.flatMap(([, input]) => (isWorked(input) ? chainOf(input) : []))];
}

/** Holds a working, and every one it rests on, to what its formula says in print. */
export function expectPrinted(worked: Worked): void {
  for (const one of chainOf(worked)) {
    const value = Number(one.value);
    expect(Math.abs(printedValue(one) - value), `${one.what}: ${one.formula.written}`).toBeLessThanOrEqual(1e-9 * Math.abs(value) + 1e-30);
  }
}
