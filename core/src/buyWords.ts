import { type Buying, bestLevel, type CountedWheel, type GapClosers, type Purchase, type SidePump, type Wheel } from './buying/index.ts';
import { en, plural } from './en.ts';
import { fixed, lengthText, type Say } from './format.ts';
import { sidePumpText } from './mountedWords.ts';
import { float, ratioOf } from './ratio.ts';
import { amountText } from './shown.ts';

// What is to be bought, as people read it.

/** A wheel by what it is ordered by; the bore apart. */
export const wheelText = ({ size, teeth }: Pick<Wheel, 'size' | 'teeth'>): string => `${size} ${teeth}\u00A0T`;

export const boreText = ({ bore_m }: Wheel, say: Say): string =>
  bore_m.known ? en`bore ${lengthText(float(bore_m.value), say, 2)}` : en`bore as the shaft`;

/**
 * Wheels of one purchase; of one that is bought several times how many.
 *
 * @source our choice of words
 * @example wheelsText([08B with 14 teeth, 08B with 14 teeth, 08B with 37 teeth])  // '2 of 08B 14 T and 08B 37 T'
 */
export function wheelsText(wheels: readonly Wheel[]): string {
  const counts = new Map<string, number>();
  for (const wheel of wheels) counts.set(wheelText(wheel), (counts.get(wheelText(wheel)) ?? 0) + 1);
  return [...counts].map(([words, count]) => (count === 1 ? words : en`${count} of ${words}`)).join(en` and `);
}

/** The wheels of a plan; one of which several are bought stands there as often. */
export const wheelsOf = (purchases: readonly CountedWheel[]): readonly Wheel[] =>
  purchases.flatMap(({ wheel, quantity }) => Array<Wheel>(quantity).fill(wheel));

/** What a plan buys: wheels, and pumps where these have to be bought. */
export interface Bought {
  readonly purchases: readonly CountedWheel[];
  readonly pumps: readonly SidePump[] | null;
}

/** A pump by what it is ordered by. */
export const pumpText = ({ side, pump }: SidePump, say: Say): string =>
  `${sidePumpText(side, pump.name)}, ${amountText(pump.displacement_m3_per_rev, 'displacement', say)}`;

/**
 * All that a plan buys.
 *
 * @source our choice of words
 * @example boughtText({ purchases: [one 08B with 14 teeth], pumps: [PB5 of side B] })  // '08B 14 T and pump B PB5'
 */
export const boughtText = ({ purchases, pumps }: Bought): string =>
  [
    ...(purchases.length === 0 ? [] : [wheelsText(wheelsOf(purchases))]),
    ...(pumps ?? []).map(({ side, pump }) => sidePumpText(side, pump.name)),
  ].join(en` and `);

export const boughtCount = ({ purchases, pumps }: Bought): number => wheelsOf(purchases).length + (pumps?.length ?? 0);

/** Where pumps are bought too, both are parts. */
export const countOf = (count: number, pumps: boolean): string =>
  pumps ? plural(count)`${count} part|${count} parts` : plural(count)`${count} wheel|${count} wheels`;

/** How many plans do equally well; where they were not all counted, so many or more. */
export const equalPlansText = (count: number, more: boolean): string =>
  more ? en`${count} or more equal plans` : plural(count)`one plan|${count} equal plans`;

/**
 * What is said where there was no room to look at as many parts as were asked for; null where there was.
 *
 * @source our choice of words
 * @example shortText(5, 8, false)  // 'Plans of more than 5 wheels were not looked at: they are too many.'
 */
export const shortText = (lookedCount: number, askedCount: number, pumps: boolean): string | null =>
  lookedCount >= askedCount ? null : en`Plans of more than ${countOf(lookedCount, pumps)} were not looked at: they are too many.`;

/**
 * A price in the money of the shop.
 *
 * @param price     in hundredths
 * @param currency  its word; null where none is given
 * @source our choice
 * @example priceText(1850, 'crowns', say)  // '18.50 crowns'
 */
export const priceText = (price: number, currency: string | null, say: Say): string =>
  `${fixed(ratioOf(price, 100), 2, say)}${currency === null ? '' : `\u00A0${currency}`}`;

/**
 * Which wheels close a gap, in a sentence.
 *
 * @source our choice of words
 * @example closersSentence(closers of the gap 35:8 to 14:3 of Bench 1, tolerance, say)  // '2 wheels close it, each alone.'
 */
export function closersSentence({ singles, pairs, closingCount }: GapClosers): string {
  if (singles[0]?.closes === true) return plural(closingCount)`One wheel closes it.|${closingCount} wheels close it, each alone.`;
  if (closingCount > 0)
    return plural(closingCount)`No single wheel closes it; one pair does.|No single wheel closes it; ${closingCount} pairs do.`;
  if (singles.length + pairs.length > 0) return en`Neither one wheel nor two close it; these narrow it most.`;
  return en`No wheel that may be bought narrows it, alone or with another.`;
}

/**
 * What the fewest purchases do for some materials, in sentences.
 *
 * @param names  of the materials that were asked for, in their order
 * @param pumps  whether pumps are bought too
 * @source our choice of words
 * @example materialsSentences(E12, U40 and L5 on Bench 1 of the demo, names)  // '1 wheel, the fewest, brings all 3 materials inside their limits; 2 equal plans.'
 */
export function materialsSentences(found: Buying, names: readonly string[], pumps: boolean): readonly string[] {
  const { purchases, servedCount, planCount } = bestLevel(found);
  const all = servedCount === names.length;
  const served = !all
    ? en`${servedCount} of ${names.length} materials inside their limits`
    : plural(names.length)`${names[0]} inside its limits|all ${names.length} materials inside their limits`;
  const bought = countOf(purchases, pumps);
  const plans = equalPlansText(planCount, false);
  const first =
    purchases === 0
      ? en`Nothing to buy: the rack as it is brings ${served}.`
      : plural(purchases)`${bought}, the fewest, brings ${served}; ${plans}.|${bought}, the fewest, bring ${served}; ${plans}.`;
  if (all) return [first];
  const never = named(names, found.unserved);
  const most = countOf(found.mostPurchases, pumps);
  const nothing = en`No plan of up to ${most} brings these inside their limits: ${never}.`;
  if (servedCount === 0) return [nothing];
  return [first, never === '' ? en`No plan of up to ${most} serves all of them at once.` : nothing];
}

/** What one part of a plan is good for. */
export function gainText({ quantity, alone, lost }: Pick<Purchase, 'quantity' | 'alone' | 'lost'>, names: readonly string[]): string {
  const adds = alone.length === 0 ? en`alone it adds nothing` : en`alone it adds ${named(names, alone)}`;
  const gone = lost.length === 0 ? en`nothing` : named(names, lost);
  return quantity === 1 ? en`${adds}; without it ${gone} would be lost` : en`${adds}; with one fewer ${gone} would be lost`;
}

const named = (names: readonly string[], indexes: readonly number[]): string => indexes.map((index) => names[index] ?? '').join(', ');

/**
 * How the lowest price stands to the fewest wheels, in a sentence.
 *
 * @source our choice of words
 * @example priceSentence(L5 on Bench 1 of the demo with prices, 'crowns', say)  // 'The lowest price that serves all is 25.00 crowns, for 1 wheel: 08B 37 T.'
 */
export function priceSentence({ cheapest, fewestPurchases }: Buying, currency: string | null, say: Say): string {
  if (cheapest === null) {
    return fewestPurchases === null
      ? en`No lowest price: no plan was found that serves all.`
      : en`No lowest price: every plan that serves all needs a part without a price.`;
  }
  const { price, plans, planCount, more, provenUpTo } = cheapest;
  const first: Bought = plans[0] ?? { purchases: [], pumps: null };
  const count = boughtCount(first);
  const words = (many: number) => countOf(many, first.pumps !== null);
  const parts =
    fewestPurchases === null || count === fewestPurchases ? words(count) : en`${words(count)}, where ${words(fewestPurchases)} would do`;
  const which = planCount === 1 && !more ? boughtText(first) : equalPlansText(planCount, more);
  const paid = priceText(price, currency, say);
  return provenUpTo === null
    ? en`The lowest price that serves all is ${paid}, for ${parts}: ${which}.`
    : en`The lowest price found that serves all is ${paid}, for ${parts}: ${which}; no plan of up to ${words(provenUpTo)} is cheaper.`;
}
