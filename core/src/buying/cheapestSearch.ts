import { Cancelled, type Hooks } from '../search/index.ts';
import type { Need } from './need.ts';
import type { Requirements } from './requirements.ts';

export interface CheapestNeeds {
  readonly price: number;
  /** None holds a part it could do without. */
  readonly plans: readonly Need[];
  /** There may be more. */
  readonly more: boolean;
  /** Whether none is cheaper; else the work that may go into it was used up. */
  readonly proven: boolean;
}

/** A way to serve a target, and what all of it costs. */
interface Way {
  readonly need: Need;
  readonly price: number;
}

/** What serving a target costs on top of what is bought already. */
interface Rest {
  readonly ways: readonly Way[];
  readonly added: number;
}

/** More equal plans are not counted. */
const MOST_EQUAL = 1000;
/** Ways looked at, for the price and again for all plans of that price: some seconds. */
const MOST_LOOKS = 2 ** 26;

/**
 * The cheapest choices that hold, of every target, one of the ways to serve it.
 *
 * @param requirements at least one way for each target
 * @param prices       of each part, whole numbers from 0
 * @param known        a choice that does, null where none is known
 * @throws Cancelled when asked to stop
 * @source our choice of method: depth first along the ways of the target that is dearest to serve; what it costs at least is a bound
 * @example cheapestNeeds([[[0], [1]], [[1, 2]]], [5, 2, 1], null).plans  // [[1, 2]]
 */
export function cheapestNeeds(
  requirements: Requirements,
  prices: readonly number[],
  known: Need | null,
  { cancelled }: Hooks = {},
  mostLooks = MOST_LOOKS,
): CheapestNeeds {
  const priceOf = (need: Need): number => need.reduce((sum, part) => sum + (prices[part] ?? 0), 0);
  const targets = requirements.map((needs) => needs.map((need): Way => ({ need, price: priceOf(need) })).sort((a, b) => a.price - b.price));
  const held = new Int32Array(prices.length);
  let least = known === null ? Infinity : priceOf(known);
  let plans: Need[] = known === null ? [] : [[...known]];
  let looks = 0;
  let steps = 0;

  /** The parts of a way that are not held yet; null where all are. */
  const lacking = (need: Need): Need | null => {
    let lacks: number[] | null = null;
    for (let i = 0, same = 0; i < need.length; i++) {
      const part = need[i] ?? 0;
      same = i > 0 && need[i - 1] === part ? same + 1 : 1;
      if (same > (held[part] ?? 0)) lacks = [...(lacks ?? []), part];
    }
    return lacks;
  };
  /** What a way costs on top of what is held; -1 where all of it is. */
  const addedBy = (need: Need): number => {
    let added = -1;
    for (let i = 0, same = 0; i < need.length; i++) {
      const part = need[i] ?? 0;
      same = i > 0 && need[i - 1] === part ? same + 1 : 1;
      if (same > (held[part] ?? 0)) added = Math.max(added, 0) + (prices[part] ?? 0);
    }
    return added;
  };
  /** Null where the target is served. */
  const restOf = (ways: readonly Way[], spent: number): Rest | null => {
    let added = Infinity;
    for (const { need, price } of ways) {
      // what is held can save no more than it cost
      if (price - spent > 0 && price - spent >= added) break;
      looks += 1;
      const more = addedBy(need);
      if (more < 0) return null;
      if (more < added) added = more;
    }
    return { ways, added };
  };
  const isSpare = (part: number): boolean => {
    held[part] = (held[part] ?? 0) - 1;
    const spare = targets.every((ways) => ways.some(({ need }) => lacking(need) === null));
    held[part] = (held[part] ?? 0) + 1;
    return spare;
  };

  /** Depth first; `equal`: also what costs as much as the cheapest so far. */
  const go = (left: readonly (readonly Way[])[], need: Need, seen: Set<string>, equal: boolean): void => {
    if (steps++ % 256 === 0 && cancelled?.()) throw new Cancelled();
    if (looks > mostLooks || (equal && plans.length >= MOST_EQUAL)) return;
    const spent = priceOf(need);
    const isDear = (price: number): boolean => (equal ? price > least : price >= least);
    const rests = left.flatMap((ways) => restOf(ways, spent) ?? []);
    const dearest = rests.reduce<Rest | null>((worst, rest) => (worst === null || rest.added > worst.added ? rest : worst), null);
    if (dearest === null) {
      if (isDear(spent) || (equal && need.some(isSpare))) return;
      least = spent;
      plans = equal ? [...plans, need] : [need];
      return;
    }
    const next = dearest.ways
      .map((way) => lacking(way.need) ?? [])
      .map((lacks) => ({ lacks, price: spent + priceOf(lacks) }))
      .filter(({ price }) => !isDear(price))
      .sort((a, b) => a.price - b.price);
    for (const { lacks, price } of next) {
      if (isDear(price) || isDear(spent + dearest.added)) break;
      const bigger = [...need, ...lacks].sort((a, b) => a - b);
      const key = bigger.join();
      if (seen.has(key)) continue;
      seen.add(key);
      for (const part of lacks) held[part] = (held[part] ?? 0) + 1;
      go(
        rests.map(({ ways }) => ways),
        bigger,
        seen,
        equal,
      );
      for (const part of lacks) held[part] = (held[part] ?? 0) - 1;
    }
  };

  go(targets, [], new Set(), false);
  if (looks > mostLooks) return { price: least, plans, more: true, proven: false };
  const [one] = plans;
  plans = [];
  looks = 0;
  go(targets, [], new Set(), true);
  const more = looks > mostLooks || plans.length >= MOST_EQUAL;
  return { price: least, plans: plans.length === 0 && one !== undefined ? [one] : plans, more, proven: true };
}
