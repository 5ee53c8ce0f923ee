import { en } from '../src/en.ts';
import { type Fraction, whole } from '../src/ratio.ts';
import { readNumber } from '../src/reading.ts';
import { quoted } from '../src/visible.ts';

/** Ratios A per B by volume as run, and how far off one may be, as a share. */
export interface Window {
  readonly low: Fraction;
  readonly high: Fraction;
  readonly tolerance: Fraction;
}

/** `1:5`, so many parts of A to 1 of B, and a tolerance in per cent; what is wrong with them is added to the problems. */
export function readWindow(text: string | undefined, percent: string | undefined, problems: string[]): Window | null {
  if (text === undefined) {
    if (percent !== undefined) problems.push(en`--tolerance belongs to --window.`);
    return null;
  }
  const [low, high, ...more] = text.split(':').map((part) => readNumber(part));
  const tolerance = readNumber(percent ?? '2');
  const isWindow = low?.ok && high?.ok && more.length === 0 && low.value.compare(0) > 0 && low.value.compare(high.value) < 0;
  if (!isWindow) problems.push(en`--window takes two numbers above 0, the lower first, as 1:5, not ${quoted(text)}.`);
  const isTolerance = tolerance.ok && tolerance.value.compare(0) > 0 && tolerance.value.compare(100) < 0;
  if (!isTolerance) problems.push(en`--tolerance takes per cent above 0 and below 100, not ${quoted(percent ?? '')}.`);
  if (!isWindow || !isTolerance) return null;
  return { low: low.value, high: high.value, tolerance: tolerance.value.div(whole(100)) };
}
