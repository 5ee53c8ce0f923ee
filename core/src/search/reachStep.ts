import type { Points } from './reachPoints.ts';

/** Of the short side's products so many are tried: each has an even chance or so. */
const TRIED = 64;
/** After so many steps those that the rules across stages refuse more often move back. */
const SORTED_EVERY = 1024;

interface Lane {
  readonly short: number;
  readonly log: number;
  /** place in the long list: it only moves up */
  next: number;
  asked: number;
  refused: number;
}

/**
 * Takes quick steps along the scale, upwards only: a few products of the short side, each with its place in the long one.
 *
 * @param middle of the stretch that is walked: the short products are those that meet the long ones where these are dense
 * @returns finds a ratio that can be built above `from` and at most `to`; null says only that none of those tried would do
 */
export function stepper({ short, long, upTo, surelyBuilt }: Points, middle: number): (from: number, to: number) => number | null {
  const dense = middle - (long[long.length >> 1] ?? 0);
  const lanes = [...short.entries()]
    .sort(([, a], [, b]) => Math.abs(a - dense) - Math.abs(b - dense))
    .slice(0, TRIED)
    .map(([index, log]): Lane => ({ short: index, log, next: -1, asked: 1, refused: 0 }));
  let steps = 0;
  return (from, to) => {
    steps += 1;
    if (steps % SORTED_EVERY === 0) lanes.sort((a, b) => a.refused / a.asked - b.refused / b.asked);
    for (const lane of lanes) {
      const { log } = lane;
      let j = lane.next < 0 ? upTo(to - log) : lane.next;
      while (j < long.length && log + (long[j] ?? 0) <= to) j += 1;
      lane.next = j;
      for (j -= 1; j >= 0; j--) {
        const found = log + (long[j] ?? 0);
        if (found <= from) break;
        if (found > to) continue;
        lane.asked += 1;
        if (surelyBuilt(lane.short, j)) return found;
        lane.refused += 1;
      }
    }
    return null;
  };
}
