import { compareRatios, type Ratio } from './distinct.ts';
import type { Space } from './space.ts';

/** Ranked ratios gathered by equal rank: one ratio, or one above and one below the wanted ratio at the same distance. */
export function* tiesOf(space: Space, ranked: readonly Ratio[]): Generator<readonly Ratio[]> {
  let tie: Ratio[] = [];
  for (const ratio of ranked) {
    const [first] = tie;
    if (first && compareRatios(space, first, ratio) !== 0) {
      yield tie;
      tie = [];
    }
    tie.push(ratio);
  }
  if (tie.length > 0) yield tie;
}
