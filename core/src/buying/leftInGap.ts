import { type Fraction, float, least, most } from '../ratio.ts';
import { type Gap, gapBetween, type ReachWindow } from '../search/index.ts';

/** The target of a gap that is served worst. */
export interface Left {
  /** B per A. */
  readonly worstTarget: Fraction;
  /** How far off the nearest ratio is there, without its sign. */
  readonly offRatio: Fraction;
}

/** The same as a float, and exactly once it is asked for. */
export interface Measured {
  readonly offRatio: number;
  readonly exact: () => Left;
}

/** Floats of one gap that differ by more than this tell their order; their own errors are a thousandth of it. */
const MARGIN = 1e-12;

/** What errs less comes first; told exactly. */
export const compareMeasured = (a: Measured, b: Measured): number =>
  Math.abs(a.offRatio - b.offRatio) > MARGIN ? a.offRatio - b.offRatio : a.exact().offRatio.compare(b.exact().offRatio);

/** Whether no target errs by more; told exactly. */
export function isWithin(one: Measured, tolerance: Fraction): boolean {
  const spare = float(tolerance) - one.offRatio;
  return Math.abs(spare) > MARGIN ? spare > 0 : one.exact().offRatio.compare(tolerance) <= 0;
}

/**
 * Measures what ratios leave of a gap.
 *
 * @param gap    its neighbours
 * @param window B per A; only its targets count
 * @param gapRatios that may lie in the gap, ascending
 * @returns asks for places in `gapRatios`, ascending
 * @throws RangeError where both neighbours are missing
 * @source `gapBetween` from one ratio to the next
 */
export function measureOf(
  { below, above }: Pick<Gap, 'below' | 'above'>,
  window: ReachWindow,
  gapRatios: readonly Fraction[],
): (places: readonly number[]) => Measured {
  if (below === null && above === null) throw new RangeError('gap: no neighbour');
  const targets: ReachWindow = {
    ...window,
    low: below === null ? window.low : most(window.low, below),
    high: above === null ? window.high : least(window.high, above),
  };
  const [low, high] = [float(targets.low), float(targets.high)];
  const between = (from: number | null, to: number | null): number => {
    if (from === null) return to === null ? 0 : to / low - 1;
    if (to === null) return 1 - from / high;
    const worst = Math.max(low, Math.min(high, (from + to) / 2));
    return Math.min(worst - from, to - worst) / worst;
  };
  const floats = gapRatios.map(float);
  const ends = [below, above].map((end) => end && float(end));
  const exactly = (places: readonly number[]): Left => {
    const line = [below, ...places.flatMap((place) => gapRatios[place] ?? []), above];
    const gaps = line.slice(1).flatMap((to, index) => gapBetween(line[index] ?? null, to, targets) ?? []);
    const [first, ...others] = gaps;
    if (first === undefined) throw new RangeError('gap: nothing is left of it');
    const { worst, off } = others.reduce((a, b) => (b.off.compare(a.off) > 0 ? b : a), first);
    return { worstTarget: worst, offRatio: off };
  };
  return (places) => {
    let known: Left | null = null;
    let offRatio = 0;
    let from = ends[0] ?? null;
    for (const place of places) {
      const to = floats[place] ?? null;
      offRatio = Math.max(offRatio, between(from, to));
      from = to;
    }
    const exact = (): Left => {
      known ??= exactly(places);
      return known;
    };
    return { offRatio: Math.max(offRatio, between(from, ends[1] ?? null)), exact };
  };
}
