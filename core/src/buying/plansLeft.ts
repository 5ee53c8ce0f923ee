import type { Multisets } from './multisets.ts';
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

export function plansLeft(sets: Multisets, parts: number, purchases: number): PlansLeft {
  let count = sets.from(purchases + 1) - sets.from(purchases);
  const needs = everyNeed(parts, purchases, count);
  const atLeast = new Float64Array(count);
  const need = Array<number>(purchases).fill(0);
  const read = (plan: number): Need => {
    for (let i = 0; i < purchases; i++) need[i] = needs[plan * purchases + i] ?? 0;
    return need;
  };
  const move = (from: number, to: number): void => {
    if (from === to) return;
    atLeast[to] = atLeast[from] ?? 0;
    for (let i = 0; i < purchases; i++) needs[to * purchases + i] = needs[from * purchases + i] ?? 0;
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
      keep((plan) => {
        const subsets = sets.within(read(plan));
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
    dropAbove: (offRatio) => keep((plan) => (atLeast[plan] ?? 0) <= offRatio),
    takeLeast: (wanted) => {
      const taken: number[] = [];
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
  for (let plan = 0; plan < count && parts > 0; plan++) {
    needs.set(need, plan * size);
    let i = 0;
    while (i + 1 < size && need[i] === need[i + 1]) i++;
    need[i] = (need[i] ?? 0) + 1;
    need.fill(0, 0, i);
  }
  return needs;
}
