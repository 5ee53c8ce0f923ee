import type { Candidate } from './problem.ts';
import type { Space } from './space.ts';

/** Who receives the options of a cell. */
export interface Taker {
  /** more changed parts than this are not wanted */
  readonly mostChanged: () => number;
  readonly take: (candidate: Candidate, changed: number) => void;
}

/** Runs through the options of a cell, one choice for each factor's ratio, fewest changed parts first within each ratio. */
export function expander(space: Space, { mostChanged, take }: Taker): (groups: Int32Array) => void {
  const { factors } = space;
  const picked: number[] = factors.map(() => 0);
  // least number of parts changed by this factor and all after it
  const least = new Int32Array(factors.length + 1);
  const step = (groups: Int32Array, f: number, changed: number): void => {
    const list = factors[f];
    if (!list) {
      take({ pump: picked[f - 1] ?? 0, pairs: picked.slice(0, -1) }, changed);
      return;
    }
    const group = groups[f] ?? 0;
    const end = list.first[group + 1] ?? 0;
    for (let m = list.first[group] ?? 0; m < end; m++) {
      const choice = list.member[m] ?? 0;
      const now = changed + (list.ranks.changed[choice] ?? 0);
      if (now + (least[f + 1] ?? 0) > mostChanged()) return;
      picked[f] = choice;
      step(groups, f + 1, now);
    }
  };
  return (groups) => {
    for (let f = factors.length - 1; f >= 0; f--) least[f] = (least[f + 1] ?? 0) + (factors[f]?.fewest[groups[f] ?? 0] ?? 0);
    step(groups, 0, 0);
  };
}
