/** How many values of an ascending list are at most `value`: the index of the first above it. */
export function firstAbove(ascending: ArrayLike<number>, value: number): number {
  let from = 0;
  let to = ascending.length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((ascending[middle] ?? 0) > value) to = middle;
    else from = middle + 1;
  }
  return from;
}

/** The index of a value that is in the ascending list. */
export const placeIn = (ascending: ArrayLike<number>, value: number): number => firstAbove(ascending, value) - 1;

/** Ascending, each value once. Typed arrays sort numbers several times faster than a comparison function would. */
export function distinctAscending(values: Float64Array): Float64Array {
  const sorted = values.slice().sort();
  let kept = 0;
  for (let i = 0; i < sorted.length; i++) {
    const value = sorted[i] ?? 0;
    if (kept === 0 || value !== sorted[kept - 1]) sorted[kept++] = value;
  }
  return sorted.slice(0, kept);
}
