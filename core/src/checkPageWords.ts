import { en } from './en.ts';
import type { CatchAmount, ExpectedCatch } from './expectedCatch.ts';
import { fixed, offRatioText, quantity, ratioText, type Say, SENSE, signedRangeText } from './format.ts';
import { type Fraction, float, ONE } from './ratio.ts';
import type { SmallestCatch } from './ratioCheck/before.ts';
import type { Evaluation } from './ratioCheck/evaluate.ts';
import type { CheckVerdict, Unstable } from './ratioCheck/verdict.ts';
import { verdictHead } from './ratioCheckWords.ts';

// What the page of the ratio check says while it is written; the verdict's own words stand in ratioCheckWords.ts.

/** Tenths of a gram where they tell anything. */
const mass = (kg: Fraction | number, say: Say) => quantity(kg, 'mass', 'g', 1, say);

const amountText = ({ mass_kg, volume_m3 }: CatchAmount, say: Say): string =>
  mass_kg.known ? mass(mass_kg.value, say) : quantity(volume_m3, 'volume', 'cc', 1, say);

/**
 * What one catch gives on each side.
 *
 * @example expectedTexts(expectedCatch(…), say)  // A '246.4 g', B '103.1 g', '100.2 to 106.1 g'
 */
export function expectedTexts(
  { sides, limitsOnB }: Pick<ExpectedCatch, 'sides' | 'limitsOnB'>,
  say: Say,
): { readonly A: string; readonly B: string; readonly allowedB: string | null } {
  return {
    A: amountText(sides.A, say),
    B: amountText(sides.B, say),
    allowedB: limitsOnB && en`${amountText(limitsOnB.low, say).replace(/\u00A0.*/, '')} to ${amountText(limitsOnB.high, say)}`,
  };
}

/** The smallest catch that can prove the limits on the scale. */
export const smallestText = ({ A, B }: SmallestCatch, say: Say): string => `A ${mass(A.value, say)}, B ${mass(B.value, say)}`;

/** What is to be done where a catch would prove nothing. */
export const tooSmallText = (leastTurns: number): string =>
  en`The catch would be smaller than this scale can prove: let it run for ${leastTurns} turns of the motor or more, or take a finer scale.`;

/** How many catches are worth making. */
export function countText(count: number | null, spreadKnown: boolean): string {
  if (count === null) return en`more than 10, by earlier spread`;
  return spreadKnown ? en`${count}, by earlier spread` : en`${count} to begin with`;
}

/**
 * The verdict in a word; while catches are left aside it is not the last one.
 *
 * @source our choice
 * @example verdictSoFar('pass', [3])  // 'Pass so far'
 */
export const verdictSoFar = (verdict: CheckVerdict, waiting: readonly number[]): string =>
  waiting.length === 0 ? verdictHead(verdict) : en`${verdictHead(verdict)} so far`;

/** Catches that are left aside for now. */
export function waitingText(waiting: readonly number[]): string | null {
  const [first] = waiting;
  if (first === undefined) return null;
  if (waiting.length === 1) return en`Catch ${first} does not count until it is put right.`;
  return en`Catches ${waiting.slice(0, -1).join(', ')} and ${waiting.at(-1)} do not count until they are put right.`;
}

/** The measured ratio by weight and by volume, each where it is known: A to one of B. */
export function measuredRatioText({ weighed, bPerA, volumeBPerA }: Evaluation, say: Say): string {
  const byWeight = weighed ? en`${ratioText(ONE.div(bPerA.value), say)} by weight` : null;
  const byVolume = volumeBPerA === null ? null : en`${ratioText(ONE.div(volumeBPerA), say)} by volume as run`;
  return [byWeight, byVolume].filter((text) => text !== null).join(', ');
}

/** How far the catches lie apart. */
export function spreadText({ counted, range, deviation }: Evaluation, say: Say): string {
  if (counted.length < 2 || deviation === null) return en`one catch has no spread`;
  const percent = (share: number) => `${fixed(100 * share, 2, say)}\u00A0%`;
  return en`${counted.length} catches range over ${percent(float(range))}, standard deviation ${percent(deviation)}`;
}

/** The rule as one sentence, for those who hear it. */
export function verdictRuleText(evaluation: Evaluation, say: Say): string {
  const { interval, offRatio, input, verdict } = evaluation;
  const within = interval === null ? en`no interval` : en`interval ${signedRangeText(interval.from.value, interval.to.value, say)}`;
  const { limits } = input.terms;
  const allowed = limits === null ? en`no limits` : en`limits ${signedRangeText(limits.low, limits.high, say)}`;
  return en`Rule of off-ratio, more B to the left, ${SENSE}: measured ${offRatioText(offRatio.value, say)}, ${within}, ${allowed}: ${verdictHead(verdict)}.`;
}

/** What is on a machine, as it stands in a sentence: teeth of every stage. */
export const teethText = (teeth: readonly { readonly driver?: number | undefined; readonly driven?: number | undefined }[]): string =>
  teeth.map(({ driver, driven }) => en`${driver ?? '–'} to ${driven ?? '–'}`).join(', ');

/** What a check is held against. */
export const wantedText = ({ written, limitsWritten }: { readonly written: string; readonly limitsWritten?: string | null }): string =>
  en`${written}, limits ${limitsWritten ?? en`not given`}`;

const UNSTABLE: Readonly<Record<Unstable, string>> = {
  'range wider than the limits are apart': en`they range over more than lies between the limits`,
  'interval wider than half of that': en`the interval is wider than half of what lies between the limits`,
};

/** Why catches do not agree; null where they do. */
export const unstableText = ({ unstable }: Evaluation): string | null =>
  unstable.length === 0 ? null : en`The catches do not agree: ${unstable.map((one) => UNSTABLE[one]).join(en`, and `)}.`;
