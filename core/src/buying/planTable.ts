import type { Need } from './need.ts';

/** Every choice of wheels to buy, up to a number of them, with one bit for each target that it serves. */
export interface PlanTable {
  /** Largest number of wheels for which there is room. */
  readonly mostPurchases: number;
  /** How many choices of just so many wheels there are; a sweep shows them in one order. */
  readonly planCount: (purchases: number) => number;
  /** Notes that these wheels serve a target; more than there is room for are passed over. */
  readonly mark: (target: number, need: Need) => void;
  /** Whether it is noted that some of these wheels, or all, serve a target. */
  readonly isServed: (target: number, need: Need) => boolean;
  /**
   * Adds to every choice of so many wheels what the choices of one fewer serve, and shows each with how many targets it serves.
   * Once for each number of wheels, from 0 up, after the last mark; what is shown is good until the next.
   */
  readonly sweep: (purchases: number, visit: (need: Need, count: number) => void) => void;
  /** The targets that these wheels serve, for numbers that were swept. */
  readonly served: (need: Need) => readonly number[];
}

/** 64 MB. */
const MOST_WORDS = 2 ** 24;

/**
 * A table over all multisets of up to `most` wheels. Those of one size stand in the order of their last wheel, then of the one before
 * it, so that their places are counted with binomial coefficients, and each is reached from those with one wheel fewer.
 *
 * @param wheelCount  how many kinds may be bought
 * @param targetCount how many targets, 1 or more
 * @param most        wheels to buy, a whole number; fewer where there is no room for as many
 * @source our choice: the lattice of subsets, level by level
 */
export function planTable(wheelCount: number, targetCount: number, most: number): PlanTable {
  const words = Math.ceil(targetCount / 32);
  const over = binomials(wheelCount + most, most);
  const levels: Int32Array[] = [];
  let room = MOST_WORDS;
  for (let size = 0; size <= most; size++) {
    const entries = size === 0 ? 1 : (over[size]?.[wheelCount + size - 1] ?? 0);
    room -= entries * words;
    if (room < 0) break;
    levels.push(new Int32Array(entries * words));
  }
  /** Of the wheels that a bit field picks. */
  const wordOf = (target: number, need: Need, picked: number): number => {
    let place = 0;
    let size = 0;
    for (let i = 0; i < need.length; i++) {
      if (!((picked >> i) & 1)) continue;
      place += over[size + 1]?.[(need[i] ?? 0) + size] ?? 0;
      size += 1;
    }
    return place * words + (target >> 5);
  };
  const holds = (target: number, need: Need, picked: number): boolean =>
    ((levels[bitsIn(picked)]?.[wordOf(target, need, picked)] ?? 0) & (1 << (target & 31))) !== 0;
  const mark = (target: number, need: Need): void => {
    const level = levels[need.length];
    if (level === undefined) return;
    const word = wordOf(target, need, -1);
    level[word] = (level[word] ?? 0) | (1 << (target & 31));
  };

  return {
    mostPurchases: levels.length - 1,
    planCount: (purchases) => (levels[purchases]?.length ?? 0) / words,
    mark,
    isServed: (target, need) => {
      const all = 2 ** need.length - 1;
      if (holds(target, need, all)) return true;
      for (let picked = all - 1; picked >= 0; picked--) {
        if (!holds(target, need, picked)) continue;
        // the same wheels are asked for again and again
        mark(target, need);
        return true;
      }
      return false;
    },
    sweep: (purchases, visit) => {
      const level = levels[purchases];
      if (level === undefined) throw new RangeError(`planTable: no room for ${purchases} wheels`);
      const below = levels[purchases - 1];
      const need = Array<number>(purchases).fill(0);
      for (let place = 0; place < level.length; place += words) {
        for (let i = 0, from = placeWithout(over, need); below && i < purchases; i++) {
          const at = from(i) * words;
          for (let w = 0; w < words; w++) level[place + w] = (level[place + w] ?? 0) | (below[at + w] ?? 0);
        }
        let count = 0;
        for (let w = 0; w < words; w++) count += bitsIn(level[place + w] ?? 0);
        visit(need, count);
        step(need);
      }
    },
    served: (need) =>
      Array.from({ length: targetCount }, (_, target) => target).filter((target) => holds(target, need, 2 ** need.length - 1)),
  };
}

/** The next multiset of its size. */
function step(need: number[]): void {
  let i = 0;
  while (i + 1 < need.length && need[i] === need[i + 1]) i++;
  need[i] = (need[i] ?? 0) + 1;
  need.fill(0, 0, i);
}

/** Where a multiset stands once one wheel is left out, for each in turn from the first. */
function placeWithout(over: readonly Float64Array[], need: Need): (left: number) => number {
  // all after the one that is left out move down by one
  let place = 0;
  for (let i = 1; i < need.length; i++) place += over[i]?.[(need[i] ?? 0) + i - 1] ?? 0;
  return (left) => {
    if (left > 0) place += (over[left]?.[(need[left - 1] ?? 0) + left - 1] ?? 0) - (over[left]?.[(need[left] ?? 0) + left - 1] ?? 0);
    return place;
  };
}

/** `[k][n]`: how many ways to take k of n. */
export function binomials(most: number, sizes: number): readonly Float64Array[] {
  const rows = Array.from({ length: sizes + 1 }, () => new Float64Array(most + 1));
  for (let n = 0; n <= most; n++)
    for (const [k, row] of rows.entries()) row[n] = k === 0 ? 1 : n === 0 ? 0 : (row[n - 1] ?? 0) + (rows[k - 1]?.[n - 1] ?? 0);
  return rows;
}

function bitsIn(word: number): number {
  let left = word;
  let bits = 0;
  for (; left !== 0; left &= left - 1) bits++;
  return bits;
}
