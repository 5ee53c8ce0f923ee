// The documented JSON of purchases, for the invented demo shop; its answers were worked out apart from this program, and the
// figures that follow from teeth by hand stand beside them.
import { describe, expect, test } from 'vitest';
import { type BuyingTarget, type BuyingWish, layBuying, planBuying, targetOf } from '../../../core/src/buying/index.ts';
import { planWindowLevels } from '../../../core/src/buying/planWindowLevels.ts';
import { buyingJson } from '../../../core/src/buyingJson.ts';
import { triedRatios } from '../../../core/src/nearRatios.ts';
import { nearRatiosJson } from '../../../core/src/nearRatiosJson.ts';
import { ONE, ratioOf } from '../../../core/src/ratio.ts';
import { windowBuyingJson } from '../../../core/src/windowBuyingJson.ts';
import { demoPlan } from '../../file/demoPlan.ts';
import type { Change } from '../../file/shop.ts';

function target(material: string, ...changes: readonly Change[]): BuyingTarget {
  const found = targetOf(demoPlan({ machine: 'bench-1', material }, ...changes));
  if (found === null) throw new Error(`${material} has no limits`);
  return found;
}
function document(targets: readonly BuyingTarget[], wish: BuyingWish) {
  const [{ plan } = expect.unreachable()] = targets;
  const found = planBuying(targets, wish);
  return buyingJson(plan, targets, found, layBuying(targets, found, 5));
}
const exactly = (exact: string, number: number) => ({ exact, number: expect.closeTo(number, 10) });
const anExact = { exact: expect.stringMatching(/^-?\d+\/\d+$/), number: expect.any(Number) };
const all = [target('e12'), target('u40'), target('l5')];
const teeth = { from: 13, to: 40 };
const BENCH_1 = { id: 'bench-1', name: 'Bench 1' };
const SHOP = { name: all[0]?.plan.shop, inventedExample: true };
const RACK = { id: 'main', name: 'Sprocket rack' };

describe('what to buy for three materials', () => {
  // crowns 25.50 for 37 teeth, 30 for 14
  const priceOf = (wheel: { readonly teeth: number }) => (wheel.teeth === 37 ? 2550 : wheel.teeth === 14 ? 3000 : null);
  const found = document(all, { teeth, mostPurchases: 2, priceOf });

  test('whose it is, and what is wanted', () => {
    expect(found).toMatchObject({
      format: 'ratiowright buying plan',
      version: 1,
      shop: SHOP,
      machine: BENCH_1,
      rack: RACK,
      teethToBuy: null,
      mostPurchases: 2,
      currency: null,
      allServed: true,
      neverServed: [],
    });
    expect(found.targets).toEqual([
      {
        material: { id: 'e12', name: 'E12 casting epoxy' },
        written: '100 : 38.9 by weight',
        ratioAPerBByVolume: anExact,
        limits: { written: '-2 to 2 % of B per A', lowOffRatio_percent: exactly('-2/1', -2), highOffRatio_percent: exactly('2/1', 2) },
      },
      {
        material: { id: 'u40', name: 'U40 elastomer' },
        written: '31.0 % NCO on OH 165, index 105',
        ratioAPerBByVolume: anExact,
        limits: {
          written: 'index 102 to 108',
          lowOffRatio_percent: exactly('-20/7', -20 / 7),
          highOffRatio_percent: exactly('20/7', 20 / 7),
        },
      },
      {
        material: { id: 'l5', name: 'L5 laminating resin' },
        written: '5 : 1 by volume',
        ratioAPerBByVolume: exactly('5/1', 5),
        limits: {
          written: '-1.5 to 1.5 % of B per A',
          lowOffRatio_percent: exactly('-3/2', -1.5),
          highOffRatio_percent: exactly('3/2', 1.5),
        },
      },
    ]);
  });

  test('each number of parts, and the fewest: 14 or 37 teeth, which serve L5', () => {
    expect(found.coverage).toEqual([
      { purchases: 0, servedCount: 2, noGain: false, planCount: 1 },
      { purchases: 1, servedCount: 3, noGain: false, planCount: 2 },
    ]);
    const bought = (count: number) => ({
      kind: 'chain',
      size: '08B',
      teeth: count,
      bore_mm: exactly('25/1', 25),
      quantity: 1,
      addsAlone: ['l5'],
      lostWithoutOne: ['l5'],
    });
    expect(found.fewest).toMatchObject({
      purchases: 1,
      planCount: 2,
      plans: [14, 37].map((count) => ({ buy: [bought(count)], buyPumps: [], serves: ['e12', 'u40', 'l5'] })),
    });
  });

  test('the first option of every material then: 12 over 6 cc times 25/23, 30/21 and 35/14', () => {
    const made = (material: string, ratio: readonly [string, number], stage: readonly [number, number], partsChanged: number) => ({
      material,
      option: {
        inside: true,
        ratioAPerBByVolume: exactly(...ratio),
        partsChanged,
        pumps: { A: 'pa12', B: 'pb6' },
        stages: [{ stage: 's1', driverTeeth: stage[0], drivenTeeth: stage[1] }],
      },
    });
    expect(found.fewest.plans[0]?.options).toMatchObject([
      made('e12', ['50/23', 50 / 23], [23, 25], 2),
      made('u40', ['20/7', 20 / 7], [21, 30], 0),
      made('l5', ['5/1', 5], [14, 35], 2),
    ]);
    // 15 to 37 makes 74 : 15 where 5 : 1 is wanted: 5 · 15/74 − 1 = 1/74
    expect(found.fewest.plans[1]?.options[2]?.option).toEqual({
      inside: true,
      ratioAPerBByVolume: exactly('74/15', 74 / 15),
      ratioBPerAByVolume: exactly('15/74', 15 / 74),
      offRatio: exactly('1/74', 1 / 74),
      offRatio_percent: exactly('50/37', 50 / 37),
      sense: 'B-rich',
      partsChanged: 2,
      pumps: { A: 'pa12', B: 'pb6' },
      stages: [{ stage: 's1', driverTeeth: 15, drivenTeeth: 37 }],
    });
  });

  test('the lowest price, in whole money: 25.50 for the 37', () => {
    expect(found.cheapest).toMatchObject({
      price: exactly('51/2', 25.5),
      planCount: 1,
      morePlans: false,
      provenUpTo: null,
      plans: [{ buy: [{ teeth: 37 }] }],
    });
  });
});

test('without prices there is no lowest one; a material that nothing serves is named, and has no option', () => {
  const found = document(all, { teeth: { from: 13, to: 13 }, mostPurchases: 1 });
  expect(found).toMatchObject({ cheapest: null, allServed: false, neverServed: ['l5'] });
  expect(found.fewest.plans[0]).toMatchObject({ buy: [], serves: ['e12', 'u40'] });
  expect(found.fewest.plans[0]?.options.map(({ material, option }) => [material, option?.inside ?? null])).toContainEqual(['e12', true]);
});

test('a pump is a part: side, id and name, with what it serves; 12 over 5.6 cc times 35/15 is 5', () => {
  const spare: Change = [['machines', 0, 'B', 'pumps', 1], { id: 'spare', name: 'Spare', displacement: { value: '5.6', unit: 'cc/rev' } }];
  const found = document([target('l5', spare)], { teeth: { from: 14, to: 14 }, mostPurchases: 1, pumps: true });
  expect(found.fewest.plans).toMatchObject([
    { buy: [{ teeth: 14 }], buyPumps: [] },
    {
      buy: [],
      buyPumps: [{ side: 'B', pump: { id: 'spare', name: 'Spare' }, addsAlone: ['l5'], lostWithoutOne: ['l5'] }],
      serves: ['l5'],
      options: [{ option: { ratioAPerBByVolume: exactly('5/1', 5), pumps: { A: 'pa12', B: 'spare' } } }],
    },
  ]);
});

describe('what to buy for a window, from 1 to 4.5 : 1 within 1.5 %', () => {
  const plan = demoPlan({ machine: 'bench-1', material: 'e12' });
  const window = { low: ONE.div(ratioOf(9, 2)), high: ONE, tolerance: ratioOf(3, 200) };
  test('the window, each number of wheels and the one of 36 teeth', () => {
    const found = windowBuyingJson(plan, window, planWindowLevels(plan, window, { teeth, mostPurchases: 1 }));
    const wheel = { kind: 'chain', size: '08B', teeth: 36, bore_mm: exactly('25/1', 25) };
    expect(found).toEqual({
      format: 'ratiowright buying plan for a window',
      version: 1,
      shop: SHOP,
      machine: BENCH_1,
      rack: RACK,
      teethToBuy: null,
      mostPurchases: 1,
      window: { lowAPerBByVolume: exactly('1/1', 1), highAPerBByVolume: exactly('9/2', 4.5), tolerance_percent: exactly('3/2', 1.5) },
      levels: [
        {
          purchases: 0,
          leastWorstOffRatio_percent: exactly('20/7', 20 / 7),
          worstAPerBByVolume: exactly('9/2', 4.5),
          noGain: false,
          planCount: 1,
          morePlans: false,
          plans: [[]],
        },
        {
          purchases: 1,
          leastWorstOffRatio_percent: exactly('100/69', 100 / 69),
          worstAPerBByVolume: exactly('280/69', 280 / 69),
          noGain: false,
          planCount: 1,
          morePlans: false,
          plans: [[wheel]],
        },
      ],
      fewestPurchases: 1,
      plans: [[wheel]],
      morePlans: false,
      proofAPerBByVolume: expect.any(Array),
    });
    expect(found.proofAPerBByVolume.length).toBeGreaterThan(0);
    for (const { number } of found.proofAPerBByVolume) expect([1 <= number, number <= 4.5]).toEqual([true, true]);
  });
});

test('near ratios: 23 to 25 with 12 and 6 cc is 50 : 23, 38.929 parts by weight on 100', () => {
  const plan = demoPlan({ machine: 'bench-1', material: 'e12' });
  const wanted = plan.mix.wantedBPerA;
  const found = nearRatiosJson(plan, { written: '100 : 38.9 by weight', bPerA: wanted }, triedRatios(plan).near(wanted, 2));
  expect(found).toMatchObject({
    format: 'ratiowright near ratios',
    version: 1,
    shop: SHOP,
    machine: BENCH_1,
    material: { id: 'e12', name: 'E12 casting epoxy' },
    rack: RACK,
    tried: {
      written: '100 : 38.9 by weight',
      basis: 'weight',
      ratioAPerBByVolume: { number: expect.closeTo(1 / wanted.valueOf(), 10) },
      ratioBPerAByVolume: { number: expect.closeTo(wanted.valueOf(), 10) },
    },
  });
  expect(found.ratios).toHaveLength(2);
  const [first] = found.ratios;
  const off = 23 / 50 / wanted.valueOf() - 1;
  expect(first).toEqual({
    ratioAPerBByVolume: exactly('50/23', 50 / 23),
    ratioBPerAByVolume: exactly('23/50', 0.46),
    offRatio: { exact: expect.any(String), number: expect.closeTo(off, 10) },
    offRatio_percent: { exact: expect.any(String), number: expect.closeTo(100 * off, 8) },
    sense: 'B-lean',
    partsBPer100A: { basis: 'weight', exact: expect.any(String), number: expect.closeTo(38.9 * (1 + off), 8) },
    inside: true,
    partsChanged: 2,
    pumps: { A: 'pa12', B: 'pb6' },
    stages: [{ stage: 's1', driverTeeth: 23, drivenTeeth: 25 }],
  });
});
