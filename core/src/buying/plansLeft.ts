import { type Multisets, multisetCount, toNext } from './multisets.ts';
import type { Need } from './need.ts';

/** The plans of just so many parts that nothing rules out yet, each with what it leaves at least: the worst off-ratio of the targets so far. */
export interface PlansLeft {
  readonly count: () => number;
  /** Holds against every plan how far off one target is at best, by the number of what is needed for it; Infinity rules out. */
  readonly hold: (offs: Float64Array) => void;
  /** Rules out what leaves more. */
  readonly dropAbove: (offRatio: number) => void;
  /** Takes out so many of those that leave least, by what is known. */
  readonly takeLeast: (count: number) => readonly { readonly need: Need; readonly leastOffRatio: number }[];
  /** 1 for every multiset that some plan still left may hold: nothing else need be looked at. */
  readonly held: Uint8Array;
}

/** @param most parts that any option needs together */
export function plansLeft(sets: Multisets, parts: number, purchases: number, most: number): PlansLeft {
  let count = sets.from(purchases + 1) - sets.from(purchases);
  // not written down before it is known of what few they may be
  let needs: Uint16Array | null = null;
  let atLeast = new Float64Array(0);
  const write = (plans: Uint16Array): void => {
    needs = plans;
    count = purchases === 0 ? count : plans.length / purchases;
    atLeast = new Float64Array(count);
  };
  const written = (): Uint16Array => {
    if (needs === null) write(everyNeed(parts, purchases, count));
    return needs ?? new Uint16Array(0);
  };
  const need = Array<number>(purchases).fill(0);
  const read = (plan: number): Need => {
    const plans = written();
    for (let i = 0; i < purchases; i++) need[i] = plans[plan * purchases + i] ?? 0;
    return need;
  };
  const move = (from: number, to: number): void => {
    if (from === to) return;
    atLeast[to] = atLeast[from] ?? 0;
    const plans = written();
    for (let i = 0; i < purchases; i++) plans[to * purchases + i] = plans[from * purchases + i] ?? 0;
  };
  const keep = (isLeft: (plan: number) => boolean): void => {
    let kept = 0;
    for (let plan = 0; plan < count; plan++) if (isLeft(plan)) move(plan, kept++);
    count = kept;
  };
  const { places } = sets;
  const held = new Uint8Array(sets.count).fill(1);
  return {
    count: () => count,
    held,
    hold: (offs) => {
      held.fill(0);
      if (needs === null) write(holdingSome(sets, parts, purchases, offs) ?? everyNeed(parts, purchases, count));
      keep((plan) => {
        const subsets = sets.within(read(plan), most);
        let best = Infinity;
        for (let k = 0; k < subsets; k++) {
          const off = offs[places[k] ?? 0] ?? Infinity;
          if (off < best) best = off;
        }
        if (best === Infinity) return false;
        for (let k = 0; k < subsets; k++) held[places[k] ?? 0] = 1;
        if (best > (atLeast[plan] ?? 0)) atLeast[plan] = best;
        return true;
      });
    },
    dropAbove: (offRatio) => {
      if (needs !== null) keep((plan) => (atLeast[plan] ?? 0) <= offRatio);
    },
    takeLeast: (wanted) => {
      const taken: number[] = [];
      written();
      const before = (a: number, b: number): number => (atLeast[a] ?? 0) - (atLeast[b] ?? 0) || a - b;
      for (let plan = 0; plan < count; plan++) {
        const last = taken.at(-1);
        if (taken.length === wanted && last !== undefined && before(plan, last) >= 0) continue;
        taken.push(plan);
        taken.sort(before);
        if (taken.length > wanted) taken.pop();
      }
      const found = taken.map((plan) => ({ need: [...read(plan)], leastOffRatio: atLeast[plan] ?? 0 }));
      const out = new Set(taken);
      keep((plan) => !out.has(plan));
      return found;
    },
  };
}

/** One after another, in their order. */
function everyNeed(parts: number, size: number, count: number): Uint16Array {
  const needs = new Uint16Array(count * size);
  const need = new Uint16Array(size);
  for (let plan = 0; plan < count && parts > 0; plan++, toNext(need)) needs.set(need, plan * size);
  return needs;
}

/**
 * The plans of just so many parts that hold some multiset which does anything for a target, in their order, made from these multisets
 * rather than picked from all plans; null where that would be no quicker.
 */
function holdingSome(sets: Multisets, parts: number, purchases: number, offs: Float64Array): Uint16Array | null {
  const serves = (place: number): boolean => offs[place] !== Infinity;
  const [begin, end] = [sets.from(purchases), sets.from(purchases + 1)];
  let any = false;
  for (let place = 0; place < end && !any; place++) any = serves(place);
  if (!any) return new Uint16Array(0);
  if (purchases === 0 || serves(0)) return null;
  const needed = sets.readUpTo(purchases, serves).filter((need) => {
    const subsets = sets.within(need);
    const own = sets.placeOf(need);
    return sets.places.subarray(0, subsets).every((place) => place === own || !serves(place));
  });
  const made = needed.reduce((sum, need) => sum + multisetCount(parts, purchases - need.length), 0);
  if (made * MADE_COST >= end - begin) return null;
  const marked = new Uint8Array(end - begin);
  for (const need of needed) {
    const more = new Uint16Array(purchases - need.length);
    const plan = new Uint16Array(purchases);
    for (let left = multisetCount(parts, more.length); left > 0; left--, toNext(more)) {
      plan.set(need);
      plan.set(more, need.length);
      marked[sets.placeOf([...plan.sort()]) - begin] = 1;
    }
  }
  return Uint16Array.from(sets.readUpTo(purchases, (place) => place >= begin && marked[place - begin] === 1).flat());
}

/** What it costs to make a plan, against passing one over. */
const MADE_COST = 4;
