import { blendFormula } from '../blendFormula.ts';
import { en } from '../en.ts';
import type { Fraction } from '../ratio.ts';
import { type Input, numbered, work } from '../working.ts';

/** What is weighed into a tank, and what of it reacts. */
export interface Ingredient {
  /** By weight, in any common unit; above 0. */
  readonly parts: Input<Fraction>;
  /** In g/eq; null where nothing in it reacts. */
  readonly equivalentWeight: Input<Fraction> | null;
}

/**
 * Equivalent weight of what is in a tank: all of its weight over the equivalents in it.
 *
 * @param what         the name of the result
 * @param ingredients  at least one of which reacts
 * @returns g/eq; an ingredient by itself is its own blend
 * @throws RangeError  where nothing reacts
 * @source epoxy-blend-sheet: total / Σ (w / E); inert ingredients count in the total alone
 * @example blendOf('EEW', [80 of 189, 10 of 183, 10 inert]).value  // 209.238
 */
export function blendOf(what: string, ingredients: readonly Ingredient[]): Input<Fraction> {
  const reactive = ingredients.flatMap(({ equivalentWeight }, index) => (equivalentWeight === null ? [] : [{ index, equivalentWeight }]));
  const [first] = reactive;
  if (first === undefined) throw new RangeError('blendOf: nothing reacts');
  if (ingredients.length === 1) return first.equivalentWeight;
  const blend = blendFormula({
    letter: 'E',
    weight: 'w',
    divisor: 'E',
    count: ingredients.length,
    counted: reactive.map(({ index }) => index),
    dimension: 'number',
    source: en`epoxy-blend-sheet: all of the weight over the equivalents in it`,
  });
  const weights = ingredients.map(({ parts }, index) => [numbered('w', index), parts] as const);
  const equivalents = reactive.map(({ index, equivalentWeight }) => [numbered('E', index), equivalentWeight] as const);
  return work(blend, what, Object.fromEntries([...weights, ...equivalents]));
}
