import { en } from '../en.ts';
import { type Fraction, ONE, whole } from '../ratio.ts';
import { formula, type Input, input, type Worked, work } from '../working.ts';
import { countedTank, type SystemName, systemOf, type Tank } from './systems.ts';

/** A mix ratio that follows from what reacts in the two tanks. */
export interface Chemistry {
  readonly system: SystemName;
  /** The tank whose equivalents the index counts over those of the other: the isocyanate, or the hardener. */
  readonly countedIn: Tank;
  /** Of all that is in each tank, in g/eq. */
  readonly equivalentWeight: Readonly<Record<Tank, Input<Fraction>>>;
  /** Per cent of what would react without rest; above 0. */
  readonly index: Input<Fraction>;
  /** By weight. */
  readonly perHundredA: Worked<Fraction>;
}

const SOURCE = en`pma-library: what is needed = index × its equivalent weight × equivalents of the other side`;
const HUNDRED = whole(100);

const perHundredWhereBCounts = formula({
  letter: 'P',
  written: 'I · b / a',
  dimension: 'number',
  source: SOURCE,
  of: ({ I, a, b }: Record<'I' | 'a' | 'b', Fraction>) => I.mul(b).div(a),
});

const perHundredWhereACounts = formula({
  letter: 'P',
  written: '100 · 100 / I · b / a',
  dimension: 'number',
  source: SOURCE,
  of: ({ I, a, b }: Record<'I' | 'a' | 'b', Fraction>) => HUNDRED.mul(HUNDRED).div(I).mul(b).div(a),
});

const indexWhereBCounts = formula({
  letter: 'J',
  written: 'I · (1 + e)',
  dimension: 'number',
  source: en`the index goes with the side it counts: more B is more of it`,
  of: ({ I, e }: Record<'I' | 'e', Fraction>) => I.mul(ONE.add(e)),
});

const indexWhereACounts = formula({
  letter: 'J',
  written: 'I / (1 + e)',
  dimension: 'number',
  source: en`the index goes with the side it counts: more B is less of it`,
  of: ({ I, e }: Record<'I' | 'e', Fraction>) => I.div(ONE.add(e)),
});

const offRatioWhereBCounts = formula({
  letter: 'e',
  written: 'p / I - 1',
  dimension: 'share',
  source: en`the index goes with the side it counts, here B`,
  of: ({ p, I }: Record<'p' | 'I', Fraction>) => p.div(I).sub(ONE),
});

const offRatioWhereACounts = formula({
  letter: 'e',
  written: 'I / p - 1',
  dimension: 'share',
  source: en`the index goes with the side it counts, here A`,
  of: ({ p, I }: Record<'p' | 'I', Fraction>) => I.div(p).sub(ONE),
});

/**
 * The mix ratio out of what reacts in each tank.
 *
 * @param askedIn           the tank with the isocyanate of a urethane, the resin of an epoxy
 * @param index             per cent, above 0: isocyanate over hydroxyl, or hardener over epoxide
 * @param equivalentWeight  of all that is in each tank, g/eq, above 0
 * @source pma-library; an epoxy is counted the same way, parts of hardener per 100 = 100 AHEW / EEW at 100 %
 * @example chemistryOf('urethane', 'B', 105, { A: 340.034, B: 135.539 }).perHundredA.value  // 41.853
 */
export function chemistryOf(
  system: SystemName,
  askedIn: Tank,
  index: Fraction,
  equivalentWeight: Readonly<Record<Tank, Input<Fraction>>>,
): Chemistry {
  const countedIn = countedTank(system, askedIn);
  const I = input(systemOf(system).index.what, index, 'number');
  const perHundred = countedIn === 'B' ? perHundredWhereBCounts : perHundredWhereACounts;
  const perHundredA = work(perHundred, en`B per 100 A by weight`, { I, a: equivalentWeight.A, b: equivalentWeight.B });
  return { system, countedIn, equivalentWeight, index: I, perHundredA };
}

/**
 * What an off-ratio makes of the index, or of an epoxy's share of stoichiometry.
 *
 * @param offRatio  (B per A made) / (B per A wanted) − 1, above −1
 * @returns per cent
 * @source arithmetic: the index is proportional to the side it counts
 * @example indexMade(index 105 of an isocyanate in B, −0.139 %).value  // 104.85
 */
export function indexMade({ system, countedIn, index }: Chemistry, offRatio: Input<Fraction>): Worked<Fraction> {
  const made = countedIn === 'B' ? indexWhereBCounts : indexWhereACounts;
  return work(made, en`${systemOf(system).index.what} made`, { I: index, e: offRatio });
}

/**
 * The off-ratio at which an index is made.
 *
 * @param madeIndex  per cent, above 0
 * @source the same, solved for the off-ratio
 * @example offRatioOfIndex(index 105 of an isocyanate in B, 102).value  // −1/35
 */
export function offRatioOfIndex({ system, countedIn, index }: Chemistry, madeIndex: Fraction): Worked<Fraction> {
  const put = { p: input(en`${systemOf(system).index.what} made`, madeIndex, 'number'), I: index };
  return work(countedIn === 'B' ? offRatioWhereBCounts : offRatioWhereACounts, en`off-ratio`, put);
}
