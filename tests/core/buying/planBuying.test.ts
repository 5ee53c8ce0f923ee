import { describe, expect, it } from 'vitest';
import { type Buying, type PurchasePlan, planBuying } from '../../../core/src/buying/index.ts';
import { diceOf } from '../search/randomProblem.ts';
import { type Kind, nameOf, nameOfPump, nameOfWheel, type RandomShop, randomShop } from './randomShop.ts';
import { choices, servedBy } from './slowPurchases.ts';

const without = (wheels: readonly Kind[], one: Kind): readonly Kind[] => wheels.toSpliced(wheels.indexOf(one), 1);
const minus = (a: readonly number[], b: readonly number[]): readonly number[] => a.filter((target) => !b.includes(target));
const line = (name: string, quantity: number, alone: readonly number[], lost: readonly number[]): string =>
  `${quantity} of ${name}: alone ${alone.join()}, lost ${lost.join()}`;

/** The same answer by trying every choice of purchases, one after another. */
function everyPlan({ targets, wish, kinds }: RandomShop) {
  const known = new Map<string, readonly number[]>();
  const served = (wheels: readonly Kind[]): readonly number[] => {
    const key = wheels.map(nameOf).sort().join('; ');
    const found = known.get(key) ?? servedBy(targets, wheels, wish.pumps);
    known.set(key, found);
    return found;
  };
  const levels: unknown[] = [];
  let before = -1;
  const ever = new Set<number>();
  for (let purchases = 0; purchases <= wish.mostPurchases && before < targets.length; purchases++) {
    const all = choices(kinds, purchases);
    for (const wheels of all) for (const target of served(wheels)) ever.add(target);
    const best = Math.max(before, ...all.map((wheels) => served(wheels).length));
    const plans = best === before ? [] : all.filter((wheels) => served(wheels).length === best);
    const lines = plans.map((wheels) =>
      [...new Set(wheels)].map((kind) =>
        line(
          nameOf(kind),
          wheels.filter((other) => other === kind).length,
          minus(served([kind]), served([])),
          minus(served(wheels), served(without(wheels, kind))),
        ),
      ),
    );
    levels.push({ purchases, servedCount: best, noGain: best === before, planCount: plans.length, plans: texts(lines) });
    before = best;
  }
  return {
    levels,
    fewest: before === targets.length ? levels.length - 1 : null,
    unserved: minus([...targets.keys()], [...ever]),
    servesAll: (parts: readonly Kind[]): boolean => served(parts).length === targets.length,
  };
}

/** So many choices of parts are tried for the lowest price, and of so many parts at most. */
const MOST_TRIED = 80;
const MOST_PARTS = 5;

/** The cheapest of all plans of a few parts that serve all, none with a part it could do without. */
function cheapestOfFew({ wish, kinds }: RandomShop, servesAll: (parts: readonly Kind[]) => boolean, mostParts: number) {
  const priceOf = (kind: Kind): number => ('pump' in kind ? wish.pumpPrice(kind) : wish.priceOf(kind)) ?? Infinity;
  let tried = 0;
  let parts = -1;
  const plans: { readonly name: string; readonly price: number }[] = [];
  for (let size = 0; size <= mostParts; size++) {
    const all = choices(kinds, size);
    tried += all.length;
    if (tried > MOST_TRIED && size > wish.mostPurchases) break;
    parts = size;
    for (const plan of all) {
      if (!servesAll(plan) || plan.some((kind) => servesAll(without(plan, kind)))) continue;
      plans.push({ name: namesOf(plan), price: plan.reduce((sum, kind) => sum + priceOf(kind), 0) });
    }
  }
  const price = Math.min(...plans.map((plan) => plan.price));
  return { parts, price, plans: plans.filter((plan) => plan.price === price && price < Infinity).map(({ name }) => name) };
}

const namesOf = (parts: readonly Kind[]): string => parts.map(nameOf).sort().join('; ');
const texts = (plans: readonly (readonly string[])[]): readonly string[] => plans.map((plan) => [...plan].sort().join('; ')).sort();

function found({ levels, fewestPurchases, unserved }: Buying) {
  return {
    levels: levels.map(({ plans, ...level }) => ({
      ...level,
      plans: texts(
        plans.map(({ purchases, pumps }) => [
          ...purchases.map((one) => line(nameOfWheel(one.wheel), one.quantity, one.alone, one.lost)),
          ...(pumps ?? []).map((one) => line(nameOfPump(one), 1, one.alone, one.lost)),
        ]),
      ),
    })),
    fewest: fewestPurchases,
    unserved,
  };
}

/** Every part of a plan. */
const partsIn = ({ purchases, pumps }: PurchasePlan): readonly string[] => [
  ...purchases.flatMap((one) => Array<string>(one.quantity).fill(nameOfWheel(one.wheel))),
  ...(pumps ?? []).map(nameOfPump),
];

function expectCheapest(shop: RandomShop, { cheapest }: Buying, servesAll: (parts: readonly Kind[]) => boolean): void {
  // of three stages an option may need more parts than are gone through
  const all = (shop.targets[0]?.plan.stages.length ?? 0) < 3 || cheapest?.provenUpTo === null;
  const few = cheapestOfFew(shop, servesAll, all ? MOST_PARTS : shop.wish.mostPurchases);
  if (cheapest === null) {
    expect(few.plans).toEqual([]);
    return;
  }
  const plans = cheapest.plans.map(partsIn);
  // prices may be 0, so that a plan of more parts may cost as much
  expect(
    plans
      .filter((parts) => parts.length <= few.parts)
      .map((parts) => [...parts].sort().join('; '))
      .sort(),
  ).toEqual(cheapest.price === few.price ? [...few.plans].sort() : []);
  expect(cheapest.price).toBeLessThanOrEqual(few.price);
  expect([cheapest.planCount, cheapest.more]).toEqual([plans.length, false]);
  expect(cheapest.provenUpTo).toBe(all ? null : shop.wish.mostPurchases);
  for (const { served } of cheapest.plans) expect(served).toEqual([...shop.targets.keys()]);
  for (const parts of plans) expect(servesAll(parts.flatMap((name) => shop.kinds.find((kind) => nameOf(kind) === name) ?? []))).toBe(true);
}

describe('planBuying against trying every choice of purchases [slow twin]', () => {
  it.each([0, 40, 80, 120])('agrees on 40 random shops from seed %i', (from) => {
    const told = { gained: 0, several: 0, never: 0, priced: 0, beyond: 0, pumps: 0 };
    for (let seed = from; seed < from + 40; seed++) {
      const shop = randomShop(diceOf(seed));
      const answer = planBuying(shop.targets, shop.wish);
      expect(answer.mostPurchases).toBe(shop.wish.mostPurchases);
      const { servesAll, ...every } = everyPlan(shop);
      expect(found(answer), `seed ${seed}`).toEqual(every);
      expectCheapest(shop, answer, servesAll);
      if (answer.levels.length > 1 && answer.levels.some(({ purchases, noGain }) => purchases > 0 && !noGain)) told.gained += 1;
      if (answer.levels.some(({ purchases, planCount }) => purchases > 0 && planCount > 1)) told.several += 1;
      if (answer.unserved.length > 0) told.never += 1;
      const longest = Math.max(0, ...(answer.cheapest?.plans ?? []).map((plan) => partsIn(plan).length));
      if (longest > 0) told.priced += 1;
      if (longest > answer.mostPurchases) told.beyond += 1;
      if (answer.levels.some(({ plans }) => plans.some(({ pumps }) => (pumps ?? []).length > 0))) told.pumps += 1;
    }
    // none of it is shown by shops in which nothing happens
    for (const count of Object.values(told)) expect(count).toBeGreaterThan(0);
  });
});
