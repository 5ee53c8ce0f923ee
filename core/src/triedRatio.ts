import { en } from './en.ts';
import type { Plan } from './plan.ts';
import { type Fraction, float, ONE, whole } from './ratio.ts';
import { type Reading, readNumber, readRatio, spokenReading } from './reading.ts';
import { quoted } from './visible.ts';

/** How a material writes its ratio, for another one to be tried the same way: parts of each tank. */
export interface RatioWriting {
  readonly partsA: Fraction;
  readonly partsB: Fraction;
  /** Whether the sheet writes parts of B per 100 A, so that a number alone is a ratio. */
  readonly perHundred: boolean;
}

export const writingOf = ({ mix: { sheet } }: Plan, perHundred: boolean): RatioWriting => ({
  partsA: sheet.partsA,
  partsB: sheet.partsB,
  perHundred: perHundred && sheet.partsA.equals(whole(100)),
});

/**
 * A ratio to be tried, as the material counts it.
 *
 * @param text  A to B; a number alone only where the sheet writes B per 100 A
 * @returns B per A on the sheet's basis
 * @source our choice: of three parts the machine meters two, so the third is counted with its tank
 * @example readTried('100 : 45', writing)  // 9/20
 */
export function readTried(text: string, { perHundred }: RatioWriting): Reading<Fraction> {
  if (perHundred && !/[:\u2236\uFF1A]/.test(text)) {
    const alone = readNumber(text);
    if (!alone.ok) return alone;
    if (alone.value.compare(whole(0)) > 0) return { ok: true, value: alone.value.div(whole(100)) };
    return { ok: false, expected: en`${quoted(text.trim())} is not above zero. Expected parts of B per 100 A, like 38.9.` };
  }
  const read = readRatio(text);
  if (!read.ok) return read;
  if (read.value.length === 2) return { ok: true, value: read.value[1].div(read.value[0]) };
  return {
    ok: false,
    expected: en`${quoted(text.trim())} has three parts. Expected A to B as metered, the third part counted with its tank.`,
  };
}

/**
 * A ratio as the sheet counts it, by volume as the machine runs: what lies between is one factor for every ratio.
 *
 * @source definition of off-ratio, which is the same on every basis
 * @example triedByVolume(E12 on Bench 1 of the demo, 389/1000)  // its wanted B per A
 */
export const triedByVolume = ({ mix }: Plan, bPerA: Fraction): Fraction =>
  mix.wantedBPerA.mul(bPerA).mul(mix.sheet.partsA).div(mix.sheet.partsB);

/** One step of the slide is a tenth of a per cent, and it reaches a fifth either way: 1.2 times, or over 1.2. */
const STEP = 0.001;
export const MOST_STEPS: number = Math.round(Math.log(1.2) / STEP);
/** A step shows in four digits, and in five where the first is a 1. */
const digitsOf = (value: number): number => (value / 10 ** Math.floor(Math.log10(value)) < 2 ? 5 : 4);
/** A ratio from chemistry may have digits without end; where it stands still, these many tell it. */
const DIGITS_AT_REST = 7;

/**
 * What the slide writes at one of its places: the part that moves is rounded to what a step shows, and the text is what is tried.
 *
 * @param steps  from −MOST_STEPS to MOST_STEPS; more B to the left
 * @source our choice: a ratio to one B moves A, any other moves B
 * @example slidText({ partsA: 100, partsB: 38.9, perHundred: false }, -10, '.')  // '100 : 39.29'
 */
export function slidText(writing: RatioWriting, steps: number, decimal: '.' | ','): string {
  const { partsA, partsB, perHundred } = writing;
  const toOneB = !perHundred && partsB.equals(ONE) && !partsA.equals(ONE);
  const text = (part: Fraction) => spokenReading(part, decimal).replace(/ \(.*\)$/, '');
  const atRest = (part: Fraction) => (text(part).length <= DIGITS_AT_REST + 1 ? part : rounded(float(part), DIGITS_AT_REST));
  const moved = (part: Fraction, by: number) => {
    const value = float(part) * Math.exp(by * STEP * steps);
    return steps === 0 ? atRest(part) : rounded(value, digitsOf(value));
  };
  const [a, b] = toOneB ? [moved(partsA, 1), partsB] : [partsA, moved(partsB, -1)];
  return perHundred ? text(b) : `${text(a)} : ${text(b)}`;
}

/** The leading digits of a float, exactly. */
function rounded(value: number, digits: number): Fraction {
  const places = digits - 1 - Math.floor(Math.log10(value));
  const scale = whole(10n ** BigInt(Math.abs(places)));
  return places >= 0 ? whole(Math.round(value * 10 ** places)).div(scale) : whole(Math.round(value * 10 ** places)).mul(scale);
}

/**
 * Where on the slide a ratio lies, at its end where it lies beyond.
 *
 * @param bPerA  as the sheet counts it
 * @example stepsOf({ partsA: 100, partsB: 38.9, perHundred: false }, 0.3929)  // -10
 */
export function stepsOf({ partsA, partsB }: RatioWriting, bPerA: Fraction): number {
  const steps = Math.round(Math.log(float(partsB) / float(partsA) / float(bPerA)) / STEP);
  return Math.max(-MOST_STEPS, Math.min(MOST_STEPS, steps)) + 0;
}
