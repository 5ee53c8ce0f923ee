import { type Fraction, ZERO } from './ratio.ts';
import type { Dimension } from './units.ts';
import { type Formula, formula, numbered } from './working.ts';

/** What is blended: weights and what each is divided by, under their letters. */
interface Blend {
  readonly letter: string;
  readonly weight: string;
  readonly divisor: string;
  /** Of ingredients. */
  readonly count: number;
  /** The ingredients, as indexes, that have a divisor; the others count in the total alone. */
  readonly counted: readonly number[];
  readonly dimension: Dimension;
  readonly source: string;
}

/** Total over Σ (weight / divisor), written out for as many ingredients as there are. */
export function blendFormula({ letter, weight, divisor, count, counted, dimension, source }: Blend): Formula<string, Fraction> {
  const weights = Array.from({ length: count }, (_, index) => numbered(weight, index));
  const terms = counted.map((index) => [numbered(weight, index), numbered(divisor, index)] as const);
  return formula({
    letter,
    written: `(${weights.join(' + ')}) / (${terms.map((term) => term.join(' / ')).join(' + ')})`,
    dimension,
    source,
    of: (put: Readonly<Record<string, Fraction>>) => {
      const at = (name: string): Fraction => put[name] ?? ZERO;
      return sum(weights.map(at)).div(sum(terms.map(([w, d]) => at(w).div(at(d)))));
    },
  });
}

const sum = (terms: readonly Fraction[]): Fraction => terms.reduce((total, term) => total.add(term), ZERO);
