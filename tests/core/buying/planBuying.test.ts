import { describe, expect, it } from 'vitest';
import { type Buying, type Purchase, planBuying } from '../../../core/src/buying/index.ts';
import { diceOf } from '../search/randomProblem.ts';
import { type Kind, nameOf, type RandomShop, randomShop } from './randomShop.ts';
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
    const found = known.get(key) ?? servedBy(targets, wheels);
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
  const full = Array.from({ length: wish.mostPurchases + 1 }, (_, purchases) => choices(kinds, purchases))
    .flat()
    .filter((wheels) => before === targets.length && served(wheels).length === before)
    .filter((wheels) => wheels.every((kind) => served(without(wheels, kind)).length < before))
    .map((wheels) => ({
      name: wheels.map(nameOf).sort().join('; '),
      price: wheels.reduce((sum, kind) => sum + (wish.priceOf(kind) ?? Infinity), 0),
    }));
  const price = Math.min(...full.map((plan) => plan.price));
  const cheap = full.filter((plan) => plan.price === price).map(({ name }) => name);
  return {
    levels,
    fewest: before === targets.length ? levels.length - 1 : null,
    unserved: minus([...targets.keys()], [...ever]),
    cheapest: price === Infinity ? null : { price, plans: cheap.sort() },
  };
}

const texts = (plans: readonly (readonly string[])[]): readonly string[] => plans.map((plan) => [...plan].sort().join('; ')).sort();

const nameOfPurchase = ({ wheel: { size, teeth, bore_m } }: Purchase): string =>
  nameOf({ size, teeth, bore: bore_m.known ? bore_m.value.mul(1000).toString() : null });

function found({ levels, fewestPurchases, unserved, cheapest }: Buying) {
  return {
    levels: levels.map(({ plans, ...level }) => ({
      ...level,
      plans: texts(plans.map(({ purchases }) => purchases.map((one) => line(nameOfPurchase(one), one.quantity, one.alone, one.lost)))),
    })),
    fewest: fewestPurchases,
    unserved,
    cheapest: cheapest && {
      price: cheapest.price,
      plans: cheapest.plans
        .map(({ purchases }) =>
          purchases
            .flatMap((one) => Array<string>(one.quantity).fill(nameOfPurchase(one)))
            .sort()
            .join('; '),
        )
        .sort(),
    },
  };
}

describe('planBuying against trying every choice of purchases [slow twin]', () => {
  it.each([0, 40, 80, 120])('agrees on 40 random shops from seed %i', (from) => {
    const told = { gained: 0, several: 0, never: 0, priced: 0 };
    for (let seed = from; seed < from + 40; seed++) {
      const shop = randomShop(diceOf(seed));
      const answer = planBuying(shop.targets, shop.wish);
      expect(answer.mostPurchases).toBe(shop.wish.mostPurchases);
      expect(found(answer), `seed ${seed}`).toEqual(everyPlan(shop));
      if (answer.levels.length > 1 && answer.levels.some(({ purchases, noGain }) => purchases > 0 && !noGain)) told.gained += 1;
      if (answer.levels.some(({ purchases, planCount }) => purchases > 0 && planCount > 1)) told.several += 1;
      if (answer.unserved.length > 0) told.never += 1;
      if ((answer.cheapest?.plans[0]?.purchases.length ?? 0) > 0) told.priced += 1;
    }
    // none of it is shown by shops in which nothing happens
    for (const count of Object.values(told)) expect(count).toBeGreaterThan(2);
  });
});
