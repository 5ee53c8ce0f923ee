import { en } from './en.ts';
import { Fraction, float, least, most, whole, ZERO } from './ratio.ts';
import { type Reading, readNumber, readRatio } from './reading.ts';
import { quoted } from './visible.ts';

/** A stretch of ratios, A per B by volume as run. */
export interface ReachWindow {
  readonly low: Fraction;
  readonly high: Fraction;
}

/** Nothing that is metered lies beyond, to either side. */
const FURTHEST = whole(10_000);
/** What may be typed as an end of a window, and as a tolerance. */
export const WINDOW_END = en`A to one of B, from 1/10000 to 10000, as 2.5 or 14:3`;
export const TOLERANCE = en`per cent above 0 and at most 50, like 2`;
/** The narrowest window that is shown, in logarithms: four digits still tell its ends apart. */
const NARROWEST = Math.log(1.002);
/** Digits of an end that was dragged, so that it can be read and typed. */
const DRAGGED_DIGITS = 4;

/**
 * One end of a window, or a tolerance's other side: A to one of B, or A to B.
 *
 * @returns A per B, or what was expected
 * @source our choice: a number alone is A to one of B, as the ratio rule counts
 * @example readWindowEnd('14:3')  // 14/3
 */
export function readWindowEnd(text: string): Reading<Fraction> {
  const value = /[:\u2236\uFF1A]/.test(text) ? ofParts(text) : readNumber(text);
  if (!value.ok) return value;
  if (value.value.compare(ZERO) > 0 && within(value.value).equals(value.value)) return value;
  return { ok: false, expected: en`${quoted(text.trim())} is out of reach. Expected ${WINDOW_END}.` };
}

function ofParts(text: string): Reading<Fraction> {
  const read = readRatio(text);
  if (!read.ok) return read;
  const [a, b] = read.value;
  if (read.value.length === 2) return { ok: true, value: a.div(b) };
  return { ok: false, expected: en`${quoted(text.trim())} has three parts. Expected A to B as metered, like 14:3.` };
}

/**
 * A tolerance in per cent, above 0 and at most 50.
 *
 * @returns a share
 * @source our choice
 * @example readTolerance('2 %')  // 1/50
 */
export function readTolerance(text: string): Reading<Fraction> {
  const read = readNumber(text.replace(/\s*%\s*$/, ''));
  if (!read.ok) return read;
  if (read.value.compare(ZERO) > 0 && read.value.compare(whole(50)) <= 0) return { ok: true, value: read.value.div(whole(100)) };
  return { ok: false, expected: en`${quoted(text.trim())} is no tolerance. Expected ${TOLERANCE}.` };
}

const within = (ratio: Fraction): Fraction => most(whole(1).div(FURTHEST), least(FURTHEST, ratio));
/** As a plain decimal, so that no float becomes a fraction. */
const dragged = (ratio: number): Fraction => {
  const held = Math.min(float(FURTHEST), Math.max(1 / float(FURTHEST), ratio));
  return new Fraction(String(Number(held.toPrecision(DRAGGED_DIGITS))));
};

/**
 * The window moved along its own scale.
 *
 * @param share  of its width, above 0 to the right, towards less B
 * @returns ends of four digits, as wide as before but for that rounding
 * @source our choice
 * @example movedWindow({ low: 1, high: 4 }, 0.5)  // 2 to 8
 */
export function movedWindow({ low, high }: ReachWindow, share: number): ReachWindow {
  const times = (float(high) / float(low)) ** share;
  const moved = { low: dragged(float(low) * times), high: dragged(float(high) * times) };
  return moved.low.compare(moved.high) < 0 ? moved : { low, high };
}

/**
 * The window made wider or narrower about a place on it.
 *
 * @param share  where on the window: 0 its low end, 1 its high end; that ratio stays where it is
 * @param times  its new width over its old one, on its log scale
 * @source our choice
 * @example zoomedWindow({ low: 1, high: 4 }, 0.5, 2)  // 0.5 to 8
 */
export function zoomedWindow({ low, high }: ReachWindow, share: number, times: number): ReachWindow {
  const [from, span] = [Math.log(float(low)), Math.log(float(high) / float(low))];
  const width = Math.max(NARROWEST, span * times);
  const start = from + span * share - width * share;
  const zoomed = { low: dragged(Math.exp(start)), high: dragged(Math.exp(start + width)) };
  return zoomed.low.compare(zoomed.high) < 0 ? zoomed : { low, high };
}

/**
 * The window that holds some ratios, its ends rounded outwards to one digit.
 *
 * @param ratios  A per B, above zero; at least one
 * @source our choice
 * @example windowAround([ratioOf(1, 1), ratioOf(14, 3)])  // 1 to 5
 */
export function windowAround(ratios: readonly [Fraction, ...Fraction[]]): ReachWindow {
  const low = oneDigit(ratios.reduce(least), 'floor');
  const high = oneDigit(ratios.reduce(most), 'ceil');
  return { low, high: low.equals(high) ? low.mul(whole(2)) : high };
}

function oneDigit(ratio: Fraction, way: 'floor' | 'ceil'): Fraction {
  const power = Math.floor(Math.log10(float(ratio)));
  const unit = power >= 0 ? whole(10n ** BigInt(power)) : whole(1).div(whole(10n ** BigInt(-power)));
  return ratio.div(unit)[way]().mul(unit);
}
