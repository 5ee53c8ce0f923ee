// The oracle is a general solver of integer programs (the npm package highs), which knows nothing of wheels.
import { beforeAll, describe, expect, it } from 'vitest';
import { cheapestNeeds } from '../../../core/src/buying/cheapestSearch.ts';
import { type BuyingTarget, planBuying, targetOf } from '../../../core/src/buying/index.ts';
import { holdsAll, type Need } from '../../../core/src/buying/need.ts';
import type { Requirements } from '../../../core/src/buying/requirements.ts';
import { type Fraction, ratioOf } from '../../../core/src/ratio.ts';
import { Cancelled } from '../../../core/src/search/index.ts';
import { inLine, pieceRow, planOf, shopOf, stageRow } from '../planFixture.ts';
import { type Dice, diceOf } from '../search/randomProblem.ts';
import { type IntegerSolver, integerSolver } from './integerProgram.ts';

let solver: IntegerSolver;
beforeAll(async () => {
  solver = await integerSolver();
});

const MOST_s = 10;

function randomNeeds(dice: Dice, parts: number, targets: number): Requirements {
  const need = (): Need => Array.from({ length: dice.between(1, 3) }, () => dice.between(0, parts - 1)).sort((a, b) => a - b);
  return Array.from({ length: targets }, () => Array.from({ length: dice.between(1, 6) }, need));
}

/** Every choice of up to three pieces of each part that serves all and has none to spare. */
function everyPlan(requirements: Requirements, prices: readonly number[]): readonly { readonly need: Need; readonly price: number }[] {
  const all = prices.reduce<readonly Need[]>(
    (known, _, part) => known.flatMap((one) => [0, 1, 2, 3].map((n) => [...one, ...Array<number>(n).fill(part)])),
    [[]],
  );
  const serves = (need: Need): boolean => requirements.every((ways) => ways.some((way) => holdsAll(need, way)));
  return all
    .filter((need) => serves(need) && need.every((_, i) => !serves(need.toSpliced(i, 1))))
    .map((need) => ({ need, price: need.reduce((sum, part) => sum + (prices[part] ?? 0), 0) }));
}

describe('cheapestNeeds', () => {
  it('the example of its docstring', () => {
    expect(cheapestNeeds([[[0], [1]], [[1, 2]]], [5, 2, 1], null)).toEqual({ price: 3, plans: [[1, 2]], more: false, proven: true });
  });
  it('has the price of the integer program and all plans of trying every choice, on 80 random lists of needs', () => {
    let several = 0;
    for (let seed = 0; seed < 80; seed++) {
      const dice = diceOf(seed);
      const prices = Array.from({ length: dice.between(2, 5) }, () => dice.between(0, 4));
      const requirements = randomNeeds(dice, prices.length, dice.between(1, 4));
      const found = cheapestNeeds(requirements, prices, null);
      const every = everyPlan(requirements, prices).filter(({ price }) => price === found.price);
      expect([found.price, found.more], `seed ${seed}`).toEqual([solver.lowest(requirements, prices, MOST_s), false]);
      expect(found.plans.map((need) => need.join()).sort(), `seed ${seed}`).toEqual(every.map(({ need }) => need.join()).sort());
      if (every.length > 1) several += 1;
    }
    expect(several).toBeGreaterThan(10);
  });
  it('has the price of the integer program on 15 lists of forty parts', () => {
    for (let seed = 200; seed < 215; seed++) {
      const dice = diceOf(seed);
      const prices = Array.from({ length: 40 }, () => dice.between(1, 30));
      const requirements = randomNeeds(dice, prices.length, 8);
      expect(cheapestNeeds(requirements, prices, null).price, `seed ${seed}`).toBe(solver.lowest(requirements, prices, MOST_s));
    }
  });
  it('says so where the work it may do is used up, and keeps what was known before', () => {
    const requirements = randomNeeds(diceOf(3), 30, 12);
    const prices = Array.from({ length: 30 }, (_, i) => 1 + (i % 7));
    const all = [...new Set(requirements.flat(2))].flatMap((part) => [part, part, part]).sort((a, b) => a - b);
    expect(cheapestNeeds(requirements, prices, all, {}, 5)).toMatchObject({ plans: [all], more: true, proven: false });
    expect(cheapestNeeds(requirements, prices, null, {}, 5)).toMatchObject({ price: Infinity, plans: [], proven: false });
    const found = cheapestNeeds(requirements, prices, all);
    expect([found.proven, found.price]).toEqual([true, solver.lowest(requirements, prices, MOST_s)]);
  });
  it('stops when told to', () => {
    expect(() => cheapestNeeds([[[0]]], [1], null, { cancelled: () => true })).toThrow(Cancelled);
  });
});

const FITTED = [11, 40, 12, 41] as const;
const HAND = [15, 20];
const BOUGHT = Array.from({ length: 16 }, (_, i) => 13 + i);

/** What two open stages of one size need for B per A of half the teeth ratios, by four loops over the teeth: two pieces are on hand, one of what is fitted. */
function needsByLoops(wanted: Fraction, off: Fraction): readonly Need[] {
  const [low, high] = [wanted.mul(ratioOf(1, 1).sub(off)).mul(2).valueOf(), wanted.mul(ratioOf(1, 1).add(off)).mul(2).valueOf()];
  const needs = new Map<string, Need>();
  const teeth = [...BOUGHT, ...FITTED];
  const lacking = (used: readonly number[]): readonly number[] =>
    [...used]
      .sort((x, y) => x - y)
      .filter(
        (one, i, all) =>
          all.slice(0, i + 1).filter((other) => other === one).length > (HAND.includes(one) ? 2 : BOUGHT.includes(one) ? 0 : 1),
      );
  for (const a of teeth)
    for (const b of teeth)
      for (const c of teeth)
        for (const d of teeth) {
          const made = (a * c) / (b * d);
          if (made < low || made > high) continue;
          const parts = lacking([a, b, c, d]).map((one) => BOUGHT.indexOf(one));
          if (!parts.includes(-1)) needs.set(parts.join(), parts);
        }
  return [...needs.values()];
}

describe('planBuying beside the integer program', () => {
  it('two stages, 16 sizes, five targets: the same fewest and the same lowest price', () => {
    const [a, b, c, d] = FITTED;
    const machine = inLine([stageRow(a, b), stageRow(c, d)]);
    const limits = { definition: '% of B per A' as const, low: '-0.05', high: '0.05' };
    const plan = planOf(
      shopOf(
        machine,
        HAND.map((one) => pieceRow(one, 2)),
        { limits },
      ),
      { purchases: 4, teeth: { from: 13, to: 28 } },
    );
    const own = targetOf(plan);
    if (own === null) throw new Error('no limits');
    const targets = [31, 43, 57, 67, 83].map((n): BuyingTarget => ({ ...own, wantedBPerA: ratioOf(n, 100) }));
    const priceOf = (teethOf: number): number => 40 + ((teethOf * 7) % 23);
    const found = planBuying(targets, { teeth: { from: 13, to: 28 }, mostPurchases: 8, priceOf: (wheel) => priceOf(wheel.teeth) });
    const requirements = targets.map(({ wantedBPerA }) => needsByLoops(wantedBPerA, ratioOf(5, 10_000)));
    const fewest = solver.lowest(
      requirements,
      BOUGHT.map(() => 1),
      MOST_s,
    );
    expect(fewest).toBeGreaterThan(2);
    expect(found.levels.map(({ servedCount }) => servedCount)).toEqual(
      found.levels.map(({ purchases }) => solver.mostServed(requirements, purchases, MOST_s)),
    );
    expect(found.fewestPurchases).toBe(fewest);
    expect([found.cheapest?.price, found.cheapest?.provenUpTo]).toEqual([solver.lowest(requirements, BOUGHT.map(priceOf), MOST_s), null]);
  });
});
