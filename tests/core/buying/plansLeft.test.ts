import { describe, expect, test } from 'vitest';
import { type Multisets, multisets } from '../../../core/src/buying/multisets.ts';
import { holdsAll, type Need } from '../../../core/src/buying/need.ts';
import { plansLeft } from '../../../core/src/buying/plansLeft.ts';
import { diceOf } from '../search/randomProblem.ts';

/** Every multiset of up to so many parts, by its number. */
function everyMultiset(parts: number, most: number): readonly Need[] {
  const extend = (size: number): readonly Need[] =>
    size === 0
      ? [[]]
      : Array.from({ length: parts }, (_, last) => last).flatMap((last) => upTo(last, size - 1).map((rest) => [...rest, last]));
  const upTo = (last: number, size: number): readonly Need[] => extend(size).filter((need) => need.every((part) => part <= last));
  return Array.from({ length: most + 1 }, (_, size) => extend(size)).flat();
}

/** The same multisets, and how often what a plan holds was asked. */
function counting(sets: Multisets): { readonly sets: Multisets; readonly looks: () => number } {
  let looked = 0;
  return {
    sets: {
      ...sets,
      within: (need, largest) => {
        looked += 1;
        return sets.within(need, largest);
      },
    },
    looks: () => looked,
  };
}

test('multisets by number: all of them, each once, and what each holds [the definition]', () => {
  const [parts, most] = [4, 3];
  const sets = multisets(parts, most);
  const all = everyMultiset(parts, most);
  expect(all.map((need) => sets.placeOf(need)).sort((a, b) => a - b)).toEqual([...all.keys()]);
  expect(sets.count).toBe(all.length);
  for (const need of all) {
    for (const largest of [0, 1, 2, 3]) {
      const found = sets.within(need, largest);
      const held = all.filter((other) => other.length <= largest && holdsAll(need, other)).map((other) => sets.placeOf(other));
      expect([...new Set(sets.places.subarray(0, found))].sort((a, b) => a - b)).toEqual(held.sort((a, b) => a - b));
    }
    expect(sets.places[sets.within(need) - 1]).toBe(sets.placeOf(need));
  }
  expect(sets.readUpTo(2, (place) => place % 3 === 0).map((need) => sets.placeOf(need))).toEqual([0, 3, 6, 9, 12]);
});

describe('plans that nothing rules out', () => {
  test('as by holding every plan against every target [slow twin], for few and for many needs', () => {
    let anyLeft = 0;
    for (let seed = 1; seed <= 120; seed++) {
      const dice = diceOf(seed);
      const [parts, size, largest] = [dice.between(0, 5), dice.between(0, 4), dice.between(1, 4)];
      const sets = multisets(parts, 4);
      const left = plansLeft(sets, parts, size, largest);
      const all = everyMultiset(parts, 4);
      let twin = all
        .filter((need) => need.length === size)
        .sort((a, b) => sets.placeOf(a) - sets.placeOf(b))
        .map((need) => ({ need, leastOffRatio: 0 }));
      expect(left.count()).toBe(twin.length);
      for (let target = 0; target < 3; target++) {
        const few = dice.pick([0, 5, 30, 60]);
        const offs = new Float64Array(sets.count).fill(Infinity);
        for (const need of all) if (need.length <= largest && dice.chance(few)) offs[sets.placeOf(need)] = dice.between(1, 9) / 10;
        left.hold(offs);
        twin = twin.flatMap(({ need, leastOffRatio }) => {
          const best = Math.min(...all.flatMap((other) => (holdsAll(need, other) ? (offs[sets.placeOf(other)] ?? 0) : [])));
          return best === Infinity ? [] : [{ need, leastOffRatio: Math.max(best, leastOffRatio) }];
        });
        expect([seed, target, left.count()]).toEqual([seed, target, twin.length]);
        anyLeft += Number(twin.length > 0);
      }
      // what leaves just so much stays, what leaves more goes
      const most = dice.pick([1, ...twin.map(({ leastOffRatio }) => leastOffRatio)]);
      left.dropAbove(most);
      twin = twin.filter(({ leastOffRatio }) => leastOffRatio <= most);
      expect([seed, left.count()]).toEqual([seed, twin.length]);
      const inOrder = twin.toSorted((a, b) => a.leastOffRatio - b.leastOffRatio);
      // the first few, the next few, the rest, then none
      const [few, more] = [dice.between(1, 4), dice.between(1, 4)];
      expect(left.takeLeast(few)).toEqual(inOrder.slice(0, few));
      expect(left.count()).toBe(Math.max(0, twin.length - few));
      expect(left.takeLeast(more)).toEqual(inOrder.slice(few, few + more));
      expect(left.takeLeast(twin.length + 1)).toEqual(inOrder.slice(few + more));
      expect([left.count(), left.takeLeast(2)]).toEqual([0, []]);
    }
    expect(anyLeft).toBeGreaterThan(80);
  });
  test('none of 475 thousand plans is looked at where nothing serves the target', () => {
    const { sets, looks } = counting(multisets(24, 6));
    const left = plansLeft(sets, 24, 6, 2);
    expect(left.count()).toBe(475_020);
    left.hold(new Float64Array(sets.count).fill(Infinity));
    expect([left.count(), looks()]).toEqual([0, 0]);
  });
  test('only plans that hold the one pair that serves it are looked at', () => {
    const { sets, looks } = counting(multisets(24, 6));
    const left = plansLeft(sets, 24, 6, 2);
    const offs = new Float64Array(sets.count).fill(Infinity);
    offs[sets.placeOf([3, 11])] = 0.01;
    left.hold(offs);
    // four more parts of 24: C(27, 4)
    expect(left.count()).toBe(17_550);
    expect(looks()).toBeLessThan(17_600);
  });
});
