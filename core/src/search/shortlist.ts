import type { Fraction } from '../ratio.ts';
import type { Candidate } from './problem.ts';
import type { RatioList } from './ratioLists.ts';
import type { Space } from './space.ts';

/** An option that may be listed, with what its place among options of equal |e| depends on. */
export interface Entry extends Candidate {
  readonly y: Fraction;
  readonly inside: boolean;
  readonly changed: number;
  readonly purchases: number;
}

/** Order of options that make the same |e|: parts changed, purchases, pumps in the order of the file, teeth slot by slot. */
export function compareTied(space: Space, a: Entry, b: Entry): number {
  return a.changed - b.changed || a.purchases - b.purchases || comparePlacing(space, a, b);
}

function comparePlacing({ factors }: Space, a: Candidate, b: Candidate): number {
  const pumps = factors.at(-1);
  const byPump = (pumps?.ranks.order[a.pump] ?? 0) - (pumps?.ranks.order[b.pump] ?? 0);
  if (byPump !== 0) return byPump;
  for (let s = 0; s < a.pairs.length; s++) {
    const order = factors[s]?.ranks.order;
    const byTeeth = (order?.[a.pairs[s] ?? 0] ?? 0) - (order?.[b.pairs[s] ?? 0] ?? 0);
    if (byTeeth !== 0) return byTeeth;
  }
  return byIndex(a, b);
}

/** The order does not tell pairs of equal teeth apart, nor pumps of equal order; their indices keep the answer the same every time. */
function byIndex(a: Candidate, b: Candidate): number {
  return a.pump - b.pump || a.pairs.reduce((difference, pair, s) => difference || pair - (b.pairs[s] ?? 0), 0);
}

/** The best entries of one tie, however many are offered. */
export interface Shortlist {
  /** more changed parts than this are not wanted any more */
  readonly mostChanged: () => number;
  /** whether no purchases could be few enough for this candidate */
  readonly hopeless: (candidate: Candidate, changed: number) => boolean;
  /** the same of every candidate a cell of this space stands for */
  readonly hopelessCell: (space: Space, groups: Int32Array) => boolean;
  /** the same of every candidate of a space that is a part of one level */
  readonly hopelessPart: (part: Space) => boolean;
  readonly add: (entry: Entry) => void;
  readonly entries: () => readonly Entry[];
}

export function shortlist(space: Space, wanted: number): Shortlist {
  let kept: Entry[] = [];
  let worst: Entry | null = null;
  const cut = (): void => {
    kept = kept.sort((a, b) => compareTied(space, a, b)).slice(0, wanted);
    worst = kept.length === wanted ? (kept.at(-1) ?? null) : null;
  };
  // an entry of as few changed parts could still come in with fewer purchases, so only 0 of them lets the places decide
  const hopeless = (changed: number, placing: (worst: Entry) => number): boolean =>
    worst !== null && (changed > worst.changed || (changed === worst.changed && worst.purchases === 0 && placing(worst) > 0));
  return {
    mostChanged: () => worst?.changed ?? Infinity,
    hopeless: (candidate, changed) => hopeless(changed, (entry) => comparePlacing(space, candidate, entry)),
    hopelessCell: (part, groups) => hopeless(fewestIn(part, groups), (entry) => earliestAgainst(part, groups, entry)),
    hopelessPart: ({ changed, factors }) =>
      changed !== null && hopeless(changed, ({ pump }) => earliestOf(factors.at(-1)) - (factors.at(-1)?.ranks.order[pump] ?? 0)),
    add: (entry) => {
      kept.push(entry);
      // once full, sorting only when half of it is new keeps the cost per entry small
      if (kept.length >= (worst ? 2 * wanted : wanted)) cut();
    },
    entries: () => {
      cut();
      return kept;
    },
  };
}

function earliestOf(list: RatioList | undefined): number {
  let earliest = Infinity;
  for (const place of list?.earliest ?? []) earliest = Math.min(earliest, place);
  return earliest;
}

function fewestIn({ factors }: Space, groups: Int32Array): number {
  let changed = 0;
  for (let f = 0; f < factors.length; f++) changed += factors[f]?.fewest[groups[f] ?? 0] ?? 0;
  return changed;
}

/** Slot by slot the earliest choice of the cell: no candidate of it comes before that. */
function earliestAgainst({ factors }: Space, groups: Int32Array, { pump, pairs }: Entry): number {
  const pumps = factors.length - 1;
  const byPump = (factors[pumps]?.earliest[groups[pumps] ?? 0] ?? 0) - (factors[pumps]?.ranks.order[pump] ?? 0);
  if (byPump !== 0) return byPump;
  for (let s = 0; s < pumps; s++) {
    const byTeeth = (factors[s]?.earliest[groups[s] ?? 0] ?? 0) - (factors[s]?.ranks.order[pairs[s] ?? 0] ?? 0);
    if (byTeeth !== 0) return byTeeth;
  }
  return 0;
}
