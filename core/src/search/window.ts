import { type Fraction, least, most, ONE, ZERO } from '../ratio.ts';
import { logarithm } from './ratioLists.ts';

/** A place in the ranking by off-ratio. Without limits all is `inside`, so that |e| alone decides. */
export interface Place {
  readonly inside: boolean;
  /** |e|, exact */
  readonly off: Fraction;
}

/** A closed interval of y = 1 + e. */
export interface Window {
  readonly low: Fraction;
  /** null: no upper bound */
  readonly high: Fraction | null;
  readonly logLow: number;
  readonly logHigh: number;
}

export function openWindow(low: Fraction | null, high: Fraction | null): Window {
  return { low: low ?? ZERO, high, logLow: low ? logarithm(low) : -Infinity, logHigh: high ? logarithm(high) : Infinity };
}

/** The nearer of two places; null is the end of the ranking. */
export function nearer(a: Place | null, b: Place | null): Place | null {
  if (a === null) return b;
  return b === null || comparePlaces(a, b) < 0 ? a : b;
}

export function comparePlaces(a: Place, b: Place): number {
  return a.inside === b.inside ? a.off.compare(b.off) : a.inside ? -1 : 1;
}

/** What ranks up to and including `place`: always one interval, since outside options only begin once all inside ones are in. */
export function windowUpTo(place: Place | null, inside: Window): Window {
  if (place === null) return openWindow(null, null);
  const low = ONE.sub(place.off);
  const high = ONE.add(place.off);
  if (place.inside) return openWindow(most(low, inside.low), inside.high ? least(high, inside.high) : high);
  return openWindow(least(low, inside.low), inside.high && most(high, inside.high));
}

/** Whether y lies in the window: its logarithm decides unless it is within `slack` of a bound. */
export function holds(window: Window, log: number, slack: number, y: () => Fraction): boolean {
  if (log < window.logLow - slack || log > window.logHigh + slack) return false;
  if (wellWithin(window, log, slack)) return true;
  const exact = y();
  return exact.compare(window.low) >= 0 && (window.high === null || exact.compare(window.high) <= 0);
}

export function wellWithin(window: Window, log: number, slack: number): boolean {
  return log > window.logLow + slack && log < window.logHigh - slack;
}
