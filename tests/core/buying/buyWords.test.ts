// The invented demo shop; its answers were worked out apart from this program.
import { expect, test } from 'vitest';
import { bestLevel, type GapClosers, gapClosers, layBuying, planBuying, pricesOf, targetOf } from '../../../core/src/buying/index.ts';
import {
  boreText,
  boughtCount,
  boughtText,
  closersSentence,
  countOf,
  gainText,
  materialsSentences,
  priceSentence,
  priceText,
  shortText,
  wheelsOf,
  wheelsText,
} from '../../../core/src/buyWords.ts';
import { known, NOT_GIVEN } from '../../../core/src/given.ts';
import { ONE, ratioOf } from '../../../core/src/ratio.ts';
import { demoPlan } from '../../file/demoPlan.ts';
import { say } from '../../file/shop.ts';

const plain = (text: string) => text.replaceAll('\u00A0', ' ');
const wheel = (teeth: number, bore: number | null = 25) => ({
  kind: 'chain',
  size: '08B',
  teeth,
  bore_m: bore === null ? NOT_GIVEN : known(ratioOf(bore, 1000)),
});
const row = (id: string, from: number, to: number, price: string) => ({ id, kind: 'chain', size: '08B', from, to, price });

function targets(materials: readonly string[], ...prices: readonly unknown[]) {
  return materials.flatMap((material) => targetOf(demoPlan({ machine: 'bench-1', material }, [['racks', 0, 'prices'], prices])) ?? []);
}
function planned(materials: readonly string[], mostPurchases = 3, ...prices: readonly unknown[]) {
  const wanted = targets(materials, ...prices);
  const [priceOf] = wanted.map(({ plan }) => pricesOf(plan));
  const found = planBuying(wanted, { teeth: { from: 13, to: 40 }, mostPurchases, ...(priceOf && { priceOf }) });
  return { wanted, found, names: wanted.map(({ plan }) => plan.material.name) };
}

test('wheels, bores and prices', () => {
  expect(plain(wheelsText([wheel(14), wheel(14), wheel(37)]))).toBe('2 of 08B 14 T and 08B 37 T');
  expect([boreText(wheel(14), say), boreText(wheel(14, null), say)].map(plain)).toEqual(['bore 25.00 mm', 'bore as the shaft']);
  expect([priceText(1850, 'crowns', say), priceText(1850, null, { ...say, decimal: ',' })].map(plain)).toEqual(['18.50 crowns', '18,50']);
});

test('which wheels close a gap: one, several, only pairs, none', () => {
  const bench = demoPlan({ machine: 'bench-1', material: 'e12' });
  const window = { low: ratioOf(1, 5), high: ONE, tolerance: ratioOf(1, 50) };
  const teeth = { from: 13, to: 40 };
  const inner = gapClosers(bench, { below: ratioOf(3, 14), above: ratioOf(8, 35) }, window, teeth);
  expect(closersSentence(inner)).toBe('2 wheels close it, each alone.');
  expect(closersSentence({ ...inner, closingCount: 1 })).toBe('One wheel closes it.');
  const beyond = gapClosers(bench, { below: null, above: ratioOf(3, 14) }, window, teeth);
  expect(closersSentence(beyond)).toMatch(/^No single wheel closes it; \d+ pairs do\.$/);
  expect(closersSentence({ ...beyond, closingCount: 0 })).toBe('Neither one wheel nor two close it; these narrow it most.');
  const none: GapClosers = gapClosers(bench, { below: null, above: ratioOf(3, 14) }, window, { from: 20, to: 21 });
  expect(closersSentence(none)).toBe('No wheel that may be bought narrows it, alone or with another.');
});

test('the three materials: one wheel is the fewest, two equal plans, and what it is good for', () => {
  const { wanted, found, names } = planned(['e12', 'u40', 'l5']);
  expect(materialsSentences(found, names, false)).toEqual([
    '1 wheel, the fewest, brings all 3 materials inside their limits; 2 equal plans.',
  ]);
  const [plan] = bestLevel(found).plans;
  expect(plan?.purchases.map((one) => gainText(one, names))).toEqual([
    'alone it adds L5 laminating resin; without it L5 laminating resin would be lost',
  ]);
  expect(wheelsOf([{ wheel: wheel(14), quantity: 2 }]).map(({ teeth }) => teeth)).toEqual([14, 14]);
  const { fewest, cheapest } = layBuying(wanted, found, 1);
  expect([fewest.map(({ purchases }) => purchases[0]?.wheel.teeth), cheapest]).toEqual([[14], []]);
  expect(fewest[0]?.options.map((option) => option?.inside)).toEqual([true, true, true]);
});

test('nothing to buy, one material, and what cannot be served', () => {
  const rack = planned(['e12', 'u40']);
  expect(materialsSentences(rack.found, rack.names, false)).toEqual([
    'Nothing to buy: the rack as it is brings all 2 materials inside their limits.',
  ]);
  const one = planned(['l5']);
  expect(materialsSentences(one.found, one.names, false)).toEqual([
    '1 wheel, the fewest, brings L5 laminating resin inside its limits; 2 equal plans.',
  ]);
  const never = planBuying(targets(['e12', 'l5']), { teeth: { from: 20, to: 24 }, mostPurchases: 1 });
  expect(materialsSentences(never, ['E12', 'L5'], false)).toEqual([
    'Nothing to buy: the rack as it is brings 1 of 2 materials inside their limits.',
    'No plan of up to 1 wheel brings these inside their limits: L5.',
  ]);
});

test('what serves nothing is not called nothing to buy, and what was not looked at is said', () => {
  const never = planBuying(targets(['l5']), { teeth: { from: 20, to: 24 }, mostPurchases: 1 });
  expect(materialsSentences(never, ['L5'], false)).toEqual(['No plan of up to 1 wheel brings these inside their limits: L5.']);
  expect(shortText(5, 8, false)).toBe('Plans of more than 5 wheels were not looked at: they are too many.');
  expect(shortText(1, 2, true)).toBe('Plans of more than 1 part were not looked at: they are too many.');
  expect(shortText(3, 3, false)).toBeNull();
});

test('the lowest price, whether it takes as few wheels as can be, and where it cannot be told', () => {
  const priced = planned(['l5'], 3, row('p1', 13, 20, '30.50'), row('p2', 37, 37, '25'));
  expect(plain(priceSentence(priced.found, 'crowns', say))).toBe(
    'The lowest price that serves all is 25.00 crowns, for 1 wheel: 08B 37 T.',
  );
  const unpriced = planned(['l5'], 1, row('p1', 20, 20, '5'));
  expect(priceSentence(unpriced.found, null, say)).toBe('No lowest price: every plan that serves all needs a part without a price.');
  const none = planBuying(targets(['l5']), { teeth: { from: 20, to: 24 }, mostPurchases: 1 });
  expect(priceSentence(none, null, say)).toBe('No lowest price: no plan was found that serves all.');
});

test('a lowest price that is not proven for every number of parts says how far it is', () => {
  const { found } = planned(['l5'], 1, row('p1', 14, 14, '30'), row('p2', 37, 37, '25'));
  if (found.cheapest === null) throw new Error('no price');
  const short = { ...found, cheapest: { ...found.cheapest, provenUpTo: 3 } };
  expect(plain(priceSentence(short, 'crowns', say))).toBe(
    'The lowest price found that serves all is 25.00 crowns, for 1 wheel: 08B 37 T; no plan of up to 3 wheels is cheaper.',
  );
});

test('a lowest price with more wheels than the fewest, and equal ones', () => {
  const { found } = planned(['l5'], 1, row('p1', 14, 14, '30'), row('p2', 37, 37, '25'));
  if (found.cheapest === null) throw new Error('no price');
  const [plan] = found.cheapest.plans;
  const [purchase] = plan?.purchases ?? [];
  if (plan === undefined || purchase === undefined) throw new Error('no plan');
  const twice = { ...plan, purchases: [{ ...purchase, quantity: 2 }] };
  const said = (change: Partial<typeof found.cheapest>) =>
    plain(priceSentence({ ...found, cheapest: { ...found.cheapest, ...change } as typeof found.cheapest }, 'crowns', say));
  expect(said({ plans: [twice] })).toBe(
    'The lowest price that serves all is 25.00 crowns, for 2 wheels, where 1 wheel would do: 2 of 08B 37 T.',
  );
  expect(said({ planCount: 3 })).toBe('The lowest price that serves all is 25.00 crowns, for 1 wheel: 3 equal plans.');
  expect(said({ planCount: 50, more: true })).toBe(
    'The lowest price that serves all is 25.00 crowns, for 1 wheel: 50 or more equal plans.',
  );
  expect(said({ planCount: 1, more: true })).toBe('The lowest price that serves all is 25.00 crowns, for 1 wheel: 1 or more equal plans.');
});

test('where pumps are bought too, both are parts', () => {
  const row = { id: 'pb9', name: 'PB9', displacement: { value: '9.0', unit: 'cc/rev' } };
  const wanted = ['e12', 'l5'].flatMap(
    (material) => targetOf(demoPlan({ machine: 'bench-1', material }, [['machines', 0, 'B', 'pumps', 1], row])) ?? [],
  );
  const found = planBuying(wanted, { teeth: { from: 13, to: 14 }, mostPurchases: 2, pumps: true });
  expect(materialsSentences(found, ['E12', 'L5'], true)).toEqual([
    '1 part, the fewest, brings all 2 materials inside their limits; one plan.',
  ]);
  const [plan] = bestLevel(found).plans;
  if (plan === undefined) throw new Error('no plan');
  expect([plain(boughtText(plan)), boughtCount(plan)]).toEqual(['08B 14 T', 1]);
  const [pump] = wanted[0]?.plan.sides.B.pumps.slice(1) ?? [];
  if (pump === undefined) throw new Error('no pump');
  const both = { ...plan, pumps: [{ side: 'B' as const, pump }] };
  expect([plain(boughtText(both)), boughtCount(both), countOf(2, true)]).toEqual(['08B 14 T and pump B PB9', 2, '2 parts']);
});
