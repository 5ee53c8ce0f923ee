import { type Fraction, float, least, most, ONE } from '../ratio.ts';
import { logarithm } from './ratioLists.ts';
import { checkWindow, compareGaps, type Gap, gapBetween, type ReachWindow } from './reachGap.ts';
import type { ReachList } from './reachList.ts';
import { firstAbove } from './sorted.ts';

/** How well the targets of a window are served. */
export interface Served {
  /** null where nothing can be built at all */
  readonly worst: Gap | null;
  /** the widest between two ratios, as far as it lies in the window; null where there is none */
  readonly widest: Gap | null;
  /** wider than the tolerance, widest first, not more than were asked for */
  readonly gaps: readonly Gap[];
  /** null where the tolerance is so fine that they were not looked for; the same with what is covered */
  readonly moreGaps: number | null;
  /** share of the window within the tolerance, by logarithm */
  readonly covered: number | null;
}

/** The ratios of a list that lie in the window: from one index up to, not including, the other. */
export function placesIn(list: ReachList, { low, high }: ReachWindow): { readonly from: number; readonly to: number } {
  return {
    from: firstFrom(list, low, (ratio) => ratio.compare(low) >= 0),
    to: firstFrom(list, high, (ratio) => ratio.compare(high) > 0),
  };
}

/**
 * What a list of ratios does for the targets of a window. Floats measure the gaps; which of two is wider, or whether one is wider than the
 * tolerance, is told by fractions where the floats are too near.
 *
 * @param keep how many gaps are told
 * @throws RangeError on a window that holds nothing, or a tolerance that is none
 * @source definitions of `gapBetween`; between neighbours whose logarithms are w apart the off-ratio is tanh(w / 2)
 * @example reachWithin(list of 1 and 2, from 1 to 2 with a tolerance of 1/10, 50).worst  // 3/2, off by 1/3
 */
export function reachWithin(list: ReachList, window: ReachWindow, keep: number): Served {
  checkWindow(window);
  const { log, slack, ratio } = list;
  const { from, to } = placesIn(list, window);
  const at = (index: number): Fraction | null => (index < 0 || index >= log.length ? null : ratio(index));
  const before = (index: number): readonly Gap[] => {
    const gap = gapBetween(at(index - 1), at(index), window);
    return gap ? [gap] : [];
  };
  const margin = 4 * slack;
  const wide = wideFor(window.tolerance);
  const isWide = ({ off }: Gap): boolean => off.compare(window.tolerance) > 0;
  const ends = endsOf(list, from, to, window).flatMap(before);

  let greatest = 0;
  let uncovered = ends.reduce((sum, gap) => sum + uncoveredBy(gap, window), 0);
  const wider: number[] = [];
  const width = (index: number): number => (log[index] ?? 0) - (log[index - 1] ?? 0);
  for (let i = from + 1; i < to; i++) {
    const own = width(i);
    greatest = Math.max(greatest, own);
    if (own < wide - margin || (own < wide + margin && !before(i).some(isWide))) continue;
    uncovered += Math.max(0, own - wide);
    wider.push(i);
  }
  const candidates = ends.slice();
  for (let i = from + 1; i < to; i++) if (width(i) >= greatest - margin) candidates.push(...before(i));
  candidates.sort(compareGaps);
  const wideEnds = ends.filter(isWide);
  const kept = [...wideEnds, ...widestOf(wider, width, keep, margin).flatMap(before)].sort(compareGaps).slice(0, keep);
  return {
    worst: candidates[0] ?? null,
    widest: candidates.find(({ below, above }) => below !== null && above !== null) ?? null,
    gaps: kept,
    moreGaps: wideEnds.length + wider.length - kept.length,
    covered: log.length === 0 ? 0 : sharePart(1 - uncovered / spanOf(window)),
  };
}

/** How far the logarithms of neighbours are apart whose worst target is off by the tolerance. */
export const wideFor = (tolerance: Fraction): number => 2 * Math.atanh(float(tolerance));

export const spanOf = ({ low, high }: ReachWindow): number => logarithm(high) - logarithm(low);

/** Rounding must not make it more than all, or less than none. */
export const sharePart = (value: number): number => Math.min(1, Math.max(0, value));

/** How much of the window, by logarithm, a gap leaves beyond the tolerance. */
export function uncoveredBy({ below, above }: Gap, { low, high, tolerance }: ReachWindow): number {
  const from = below ? most(low, below.div(ONE.sub(tolerance))) : low;
  const to = above ? least(high, above.div(ONE.add(tolerance))) : high;
  return from.compare(to) < 0 ? logarithm(to) - logarithm(from) : 0;
}

/** The first index whose ratio holds, which all after it do too; fractions are asked only beside the bound. */
function firstFrom({ log, slack, ratio }: ReachList, bound: Fraction, holds: (ratio: Fraction) => boolean): number {
  const middle = logarithm(bound);
  let index = firstAbove(log, middle - 3 * slack);
  while (index < log.length && (log[index] ?? 0) <= middle + 3 * slack && !holds(ratio(index))) index += 1;
  return index;
}

/** Gaps that reach an end of the window, each by the index of its upper neighbour. */
function endsOf({ ratio }: ReachList, from: number, to: number, { low, high }: ReachWindow): readonly number[] {
  if (from === to) return [from];
  const lower = ratio(from).equals(low) ? [] : [from];
  return ratio(to - 1).equals(high) ? lower : [...lower, to];
}

/** Those that may be among the widest `keep`. */
function widestOf(indices: readonly number[], width: (index: number) => number, keep: number, margin: number): readonly number[] {
  if (indices.length <= keep) return indices;
  const widths = Float64Array.from(indices, width).sort();
  const least = (widths[widths.length - keep] ?? 0) - margin;
  return indices.filter((index) => width(index) >= least);
}
