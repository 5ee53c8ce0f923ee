import type { Candidate } from './problem.ts';
import type { Space } from './space.ts';

/** Who receives the options of a cell. */
export interface Taker {
  /** more changed parts than this are not wanted */
  readonly mostChanged: () => number;
  /** the candidate is good until the next call: millions come by, and few are kept */
  readonly take: (candidate: Candidate, changed: number) => void;
}

/** Runs through the options of a cell, one choice for each factor's ratio, fewest changed parts first within each ratio. */
export function expander(space: Space, { mostChanged, take }: Taker): (groups: Int32Array) => void {
  const { factors } = space;
  const pairs = factors.slice(1).map(() => 0);
  const candidate = { pump: 0, pairs };
  // least number of parts changed by this factor and all after it
  const least = new Int32Array(factors.length + 1);
  const step = (groups: Int32Array, f: number, changed: number): void => {
    const list = factors[f];
    if (!list) {
      take(candidate, changed);
      return;
    }
    const group = groups[f] ?? 0;
    const end = list.first[group + 1] ?? 0;
    for (let m = list.first[group] ?? 0; m < end; m++) {
      const choice = list.member[m] ?? 0;
      const now = changed + (list.ranks.changed[choice] ?? 0);
      if (now + (least[f + 1] ?? 0) > mostChanged()) return;
      if (f < pairs.length) pairs[f] = choice;
      else candidate.pump = choice;
      step(groups, f + 1, now);
    }
  };
  return (groups) => {
    for (let f = factors.length - 1; f >= 0; f--) least[f] = (least[f + 1] ?? 0) + (factors[f]?.fewest[groups[f] ?? 0] ?? 0);
    step(groups, 0, 0);
  };
}
