/** Parts to buy, by their index in the list of what may be bought, ascending; one that is needed twice stands there twice. */
export type Need = readonly number[];

/** By number, then by the last part, then by the one before. */
export function inOrder(a: Need, b: Need): number {
  const apart = a.findLastIndex((part, i) => part !== b[i]);
  return a.length - b.length || (a[apart] ?? 0) - (b[apart] ?? 0);
}

/** Whether one multiset holds the other; both ascend. */
export function holdsAll(need: Need, wanted: Need): boolean {
  let at = 0;
  for (const part of wanted) {
    while (at < need.length && (need[at] ?? 0) < part) at++;
    if (need[at++] !== part) return false;
  }
  return true;
}
