import { en } from './en.ts';
import { type Fraction, ONE } from './ratio.ts';
import { formula } from './working.ts';

/** How a data sheet defines its limits by the parts of the mix. */
export type PartsDefinition = '% of B per A' | '% of A per B' | 'points of B in the total' | 'parts of B';
/** The same, or by the index, which only a ratio from chemistry has. */
export type LimitDefinition = PartsDefinition | 'index points';

/** What each definition of limits is called behind its figures. */
export const DEFINITION_WORDS: Readonly<Record<LimitDefinition, string>> = {
  '% of B per A': en`% of B per A`,
  '% of A per B': en`% of A per B`,
  'points of B in the total': en`points of B in the total`,
  'parts of B': en`parts of B`,
  'index points': en`index points`,
};

/** Limits of off-ratio `e = (B per A made) / (B per A wanted) − 1`, both inclusive. */
export interface OffRatioLimits {
  readonly low: Fraction;
  readonly high: Fraction;
}

/**
 * Whether an off-ratio lies inside limits; both limits count as inside.
 *
 * @returns compared exactly
 * @source definition
 * @example liesInside(1 / 50, { low: −1 / 50, high: 1 / 50 })  // true
 */
export const liesInside = (e: Fraction, { low, high }: OffRatioLimits): boolean => low.compare(e) <= 0 && e.compare(high) <= 0;

export const bPerA = formula({
  letter: 'w',
  written: 'b / a',
  dimension: 'number',
  source: en`definition: parts of B over parts of A`,
  of: ({ a, b }: Record<'a' | 'b', Fraction>) => b.div(a),
});

export const byVolume = formula({
  letter: 'r',
  written: 'w / d',
  dimension: 'number',
  source: en`arithmetic: weight ratio = volume ratio × density ratio`,
  of: ({ w, d }: Record<'w' | 'd', Fraction>) => w.div(d),
});

export const aPerB = formula({
  letter: 'R',
  written: '1 / r',
  dimension: 'number',
  source: en`definition: A per B is one over B per A`,
  of: ({ r }: Record<'r', Fraction>) => ONE.div(r),
});

export const perHundredA = formula({
  letter: 'P',
  written: '100 · b / a · (1 + e)',
  dimension: 'number',
  source: en`definition of off-ratio, which is the same on every basis`,
  of: ({ a, b, e }: Record<'a' | 'b' | 'e', Fraction>) => b.mul(100).div(a).mul(ONE.add(e)),
});

export const offRatioOf = formula({
  letter: 'e',
  written: 'm / w - 1',
  dimension: 'share',
  source: en`definition of off-ratio`,
  of: ({ m, w }: Record<'m' | 'w', Fraction>) => m.div(w).sub(ONE),
});

/**
 * Off-ratio of a measured or built ratio: plus is B-rich.
 *
 * @param madeBPerA    B per A, above 0
 * @param wantedBPerA  B per A on the same basis, above 0
 * @returns (B per A made) / (B per A wanted) − 1
 * @source definition
 * @example offRatio(2 / 5, 1 / 2)  // −1/5
 */
export function offRatio(madeBPerA: Fraction, wantedBPerA: Fraction): Fraction {
  return offRatioOf.of({ m: madeBPerA, w: wantedBPerA });
}
