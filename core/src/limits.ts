import { en } from './en.ts';
import { DEFINITION_WORDS, type OffRatioLimits, type PartsDefinition } from './mixRatio.ts';
import { type Fraction, ONE, whole } from './ratio.ts';
import { formula, input, type Worked, work } from './working.ts';

/** Both ends of the limits, with how they follow from what the data sheet says. */
export interface WorkedLimits {
  readonly low: Worked<Fraction>;
  readonly high: Worked<Fraction>;
}

const HUNDRED = whole(100);

const ofBPerA = formula({
  letter: 'e',
  written: 'p / 100',
  dimension: 'share',
  source: en`definition: per cent of B per A`,
  of: ({ p }: Record<'p', Fraction>) => p.div(HUNDRED),
});

const ofAPerB = formula({
  letter: 'e',
  written: '1 / (1 + p / 100) - 1',
  dimension: 'share',
  source: en`definition: per cent of A per B, which is one over B per A`,
  of: ({ p }: Record<'p', Fraction>) => ONE.div(ONE.add(p.div(HUNDRED))).sub(ONE),
});

const shareOfB = formula({
  letter: 's',
  written: 'b / (a + b)',
  dimension: 'share',
  source: en`definition: B in the total`,
  of: ({ a, b }: Record<'a' | 'b', Fraction>) => b.div(a.add(b)),
});

const ofPoints = formula({
  letter: 'e',
  written: '(s + p / 100) / (1 - s - p / 100) · (1 - s) / s - 1',
  dimension: 'share',
  source: en`definition: points of the share of B in the total`,
  of: ({ s, p }: Record<'s' | 'p', Fraction>) => {
    const share = s.add(p.div(HUNDRED));
    return share.div(ONE.sub(share)).mul(ONE.sub(s)).div(s).sub(ONE);
  },
});

const ofParts = formula({
  letter: 'e',
  written: 'p / b - 1',
  dimension: 'share',
  source: en`definition: parts of B for the same A`,
  of: ({ p, b }: Record<'p' | 'b', Fraction>) => p.div(b).sub(ONE),
});

/**
 * Limits as a data sheet defines them, in off-ratio. The basis does not matter: it cancels.
 *
 * @param definition  how the sheet says it
 * @param low         in per cent, points or parts, as the definition says; deviations carry their sign, parts of B are absolute
 * @param high        as `low`; both must leave some A and some B
 * @param partsA      the target as the sheet counts it, above 0
 * @param partsB      as `partsA`
 * @returns limits of (B per A made) / (B per A wanted) − 1, low first
 * @source arithmetic on each definition
 * @example limitsOfOffRatio('points of B in the total', -5, 5, 1, 1).low.value  // −2/11
 */
export function limitsOfOffRatio(
  definition: PartsDefinition,
  low: Fraction,
  high: Fraction,
  partsA: Fraction,
  partsB: Fraction,
): WorkedLimits {
  const words = DEFINITION_WORDS[definition];
  const [p, q] = [input(en`low limit, ${words}`, low, 'number'), input(en`high limit, ${words}`, high, 'number')];
  const a = input(en`parts of A wanted`, partsA, 'number');
  const b = input(en`parts of B wanted`, partsB, 'number');
  switch (definition) {
    case '% of B per A':
      return { low: work(ofBPerA, LOW, { p }), high: work(ofBPerA, HIGH, { p: q }) };
    case '% of A per B':
      // More A per B is less B per A, so the ends change places.
      return { low: work(ofAPerB, LOW, { p: q }), high: work(ofAPerB, HIGH, { p }) };
    case 'points of B in the total': {
      const s = work(shareOfB, en`share of B wanted`, { a, b });
      return { low: work(ofPoints, LOW, { s, p }), high: work(ofPoints, HIGH, { s, p: q }) };
    }
    case 'parts of B':
      return { low: work(ofParts, LOW, { p, b }), high: work(ofParts, HIGH, { p: q, b }) };
  }
}

const LOW = en`low limit of off-ratio`;
const HIGH = en`high limit of off-ratio`;

/** Limits whose ends stand in order, whichever was worked out from which. */
export const inOrder = (one: Worked<Fraction>, two: Worked<Fraction>): WorkedLimits =>
  one.value.compare(two.value) <= 0
    ? { low: { ...one, what: LOW }, high: { ...two, what: HIGH } }
    : { low: { ...two, what: LOW }, high: { ...one, what: HIGH } };

/** The limits as they are compared with an off-ratio. */
export const limitValues = ({ low, high }: WorkedLimits): OffRatioLimits => ({ low: low.value, high: high.value });
