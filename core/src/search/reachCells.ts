/** One product of the short side times one of the long side, by index. */
export interface PointCell {
  readonly short: number;
  readonly long: number;
  readonly log: number;
}

/** Cells by the logarithm of their product. */
export function cellFinder(short: Float64Array, long: Float64Array, upTo: (value: number) => number) {
  return {
    /** of those strictly beyond `from` the logarithm that comes first; infinite where there is none */
    nearest: (from: number, way: 1 | -1): number => {
      let best = way * Infinity;
      for (let i = 0; i < short.length; i++) {
        const own = short[i] ?? 0;
        // the sum is rounded: one place back, then on to the first that lies beyond
        let j = Math.max(0, Math.min(long.length - 1, upTo(from - own) - way));
        while (j >= 0 && j < long.length && way * (own + (long[j] ?? 0) - from) <= 0) j += way;
        if (j < 0 || j >= long.length) continue;
        const log = own + (long[j] ?? 0);
        if (way * (log - best) < 0) best = log;
      }
      return best;
    },
    between: (a: number, b: number): readonly PointCell[] => {
      const [low, high] = a < b ? [a, b] : [b, a];
      const found: PointCell[] = [];
      for (let i = 0; i < short.length; i++) {
        const own = short[i] ?? 0;
        for (let j = Math.max(0, upTo(low - own) - 1); j < long.length; j++) {
          const log = own + (long[j] ?? 0);
          if (log > high) break;
          if (log >= low) found.push({ short: i, long: j, log });
        }
      }
      return found;
    },
  };
}

/** Counts by a map of equal steps over the ascending list, about one entry to a step. */
export function counterOf(log: Float64Array): (value: number) => number {
  const size = log.length;
  const [low, high] = [log[0] ?? 0, log[size - 1] ?? 0];
  const perUnit = high > low ? size / (high - low) : 0;
  const start = new Int32Array(size + 2);
  let step = 0;
  for (let j = 0; j < size; j++) {
    const own = Math.trunc(((log[j] ?? 0) - low) * perUnit);
    while (step < own) start[++step] = j;
  }
  return (value) => {
    if (value < low) return 0;
    if (value >= high) return size;
    let j = start[Math.trunc((value - low) * perUnit)] ?? 0;
    while ((log[j] ?? Infinity) <= value) j += 1;
    return j;
  };
}
