/** Something to be set in a row: where its middle would best stand, and how wide it is. */
export interface Label {
  readonly at: number;
  readonly width: number;
}

/**
 * Middles for labels in a row so that none overlap and all lie between the ends, each as near to its place as those to its left allow.
 *
 * @param labels  from left to right
 * @param least   left end of the row
 * @param most    right end; where all labels together are wider than the row, they run over it
 * @returns one middle for each label, in the same order
 * @source our choice
 * @example spread([{ at: 10, width: 20 }, { at: 12, width: 20 }], 0, 100)  // [10, 30]
 */
export function spread(labels: readonly Label[], least: number, most: number): readonly number[] {
  const middles: number[] = [];
  let from = least;
  for (const { at, width } of labels) {
    const middle = Math.max(at, from + width / 2);
    middles.push(middle);
    from = middle + width / 2;
  }
  // What was pushed out on the right is pushed back, last first.
  let to = most;
  return labels
    .map(({ width }, index) => ({ width, index }))
    .toReversed()
    .map(({ width, index }) => {
      const middle = Math.min(middles[index] ?? 0, to - width / 2);
      to = middle - width / 2;
      return middle;
    })
    .toReversed();
}
