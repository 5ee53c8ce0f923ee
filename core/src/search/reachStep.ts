import type { Points } from './reachPoints.ts';

/** Of the short side's products so many are tried: each has an even chance or so. */
const TRIED = 64;

/**
 * Takes quick steps along the scale, upwards only: a few products of the short side, each with its place in the long one.
 *
 * @param middle of the stretch that is walked: the short products are those that meet the long ones where these are dense
 * @returns finds a ratio that can be built above `from` and at most `to`; null says only that none of a few would do
 */
export function stepper({ short, long, upTo, isBuildable }: Points, middle: number): (from: number, to: number) => number | null {
  const dense = middle - (long[long.length >> 1] ?? 0);
  const tried = [...short.keys()].sort((a, b) => Math.abs((short[a] ?? 0) - dense) - Math.abs((short[b] ?? 0) - dense)).slice(0, TRIED);
  const own = Float64Array.from(tried, (i) => short[i] ?? 0);
  const next = new Int32Array(tried.length).fill(-1);
  return (from, to) => {
    for (let t = 0; t < tried.length; t++) {
      const log = own[t] ?? 0;
      let j = next[t] ?? 0;
      if (j < 0) j = upTo(to - log);
      while (j < long.length && log + (long[j] ?? 0) <= to) j += 1;
      next[t] = j;
      for (j -= 1; j >= 0; j--) {
        const found = log + (long[j] ?? 0);
        if (found <= from) break;
        if (found <= to && isBuildable(tried[t] ?? 0, j)) return found;
      }
    }
    return null;
  };
}
