import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { writeShopFile } from '../../core/src/file/write.ts';
import { demoWith, opened } from '../file/shop.ts';
import { examples, ratiowright } from './run.ts';

interface PlanJson {
  readonly buy: readonly { readonly teeth: number; readonly quantity: number; readonly addsAlone: readonly string[] }[];
  readonly buyPumps: readonly { readonly side: string; readonly pump: { readonly id: string } }[];
  readonly serves: readonly string[];
  readonly options: readonly {
    readonly material: string;
    readonly option: { readonly inside: boolean; readonly ratioAPerBByVolume: { readonly exact: string } } | null;
  }[];
}
interface BuyJson {
  readonly targets: readonly { readonly material: { readonly id: string } }[];
  readonly coverage: readonly { readonly purchases: number; readonly servedCount: number; readonly planCount: number }[];
  readonly allServed: boolean;
  readonly neverServed: readonly string[];
  readonly fewest: { readonly purchases: number; readonly plans: readonly PlanJson[] };
  readonly cheapest: { readonly price: { readonly number: number }; readonly plans: readonly PlanJson[] } | null;
}
const demo = ['buy', 'demo.ratiowright', '--machine', 'bench-1', '--teeth', '13-40'] as const;
const jsonOf = (...args: string[]): BuyJson => JSON.parse(ratiowright(...demo, '--json', ...args).out) as BuyJson;

test('one wheel serves all three materials, by two equal plans; exit 0', () => {
  const ran = ratiowright(...demo);
  expect([ran.exit, ran.err]).toEqual([0, '']);
  expect(ran.out).toMatch(/^0 +2 of 3 +1$/m);
  expect(ran.out).toMatch(/^1 +3 of 3 +2$/m);
  expect(ran.out).toContain('buy 08B 14 T, bore 25.00 mm: alone it adds L5 laminating resin');
  expect(ran.out).toMatch(/^ {2}L5 laminating resin +15 to 37 +74 : 15 +1\.351 % B-rich +inside/m);
});
test('the same in JSON', () => {
  const found = jsonOf();
  expect(found.targets.map(({ material }) => material.id)).toEqual(['e12', 'u40', 'l5']);
  expect(found.coverage.map(({ purchases, servedCount, planCount }) => [purchases, servedCount, planCount])).toEqual([
    [0, 2, 1],
    [1, 3, 2],
  ]);
  expect([found.allServed, found.neverServed, found.cheapest]).toEqual([true, [], null]);
  expect(found.fewest.plans.map(({ buy }) => buy.map(({ teeth }) => teeth))).toEqual([[14], [37]]);
  expect(found.fewest.plans[0]?.options.map(({ material, option }) => [material, option?.ratioAPerBByVolume.exact])).toEqual([
    ['e12', '50/23'],
    ['u40', '20/7'],
    ['l5', '5/1'],
  ]);
});
test('with prices the cheapest plan is said apart; wheels without a price take no part in it', () => {
  const found = jsonOf('--materials', 'l5', '--prices', '13-20=30.50,37=25');
  expect(found.fewest.plans).toHaveLength(2);
  expect([found.cheapest?.price.number, found.cheapest?.plans.map(({ buy }) => buy.map(({ teeth }) => teeth))]).toEqual([25, [[37]]]);
  expect(jsonOf('--materials', 'l5', '--prices', '14=30.5').cheapest?.price.number).toBe(30.5);
  const none = ratiowright(...demo, '--materials', 'l5', '--most', '1', '--prices', '20=5');
  expect(none.out).toContain('Lowest price: every plan that serves all materials needs a wheel that has no price.');
});
test('prices of the file are used where none are asked for, in the money of the shop', () => {
  const row = { id: 'p1', kind: 'chain', size: '08B', from: 30, to: 40, price: '25' };
  const text = readFileSync(path.join(examples, 'demo.ratiowright'), 'utf8');
  const file = opened(text);
  const priced = { ...file, shop: { ...file.shop, currency: 'crowns' }, racks: file.racks.map((rack) => ({ ...rack, prices: [row] })) };
  const place = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-prices-')), 'priced.ratiowright');
  writeFileSync(place, writeShopFile(priced, 'test'));
  const asked = ['buy', place, '--machine', 'bench-1', '--teeth', '13-40', '--materials', 'l5'];
  expect(ratiowright(...asked).out).toContain('Lowest price: 25.00 crowns, however many parts it takes');
  const json = JSON.parse(ratiowright(...asked, '--json').out) as BuyJson & { readonly currency: string };
  expect([json.currency, json.cheapest?.plans.map(({ buy }) => buy.map(({ teeth }) => teeth))]).toEqual(['crowns', [[37]]]);
  expect(ratiowright(...asked, '--prices', '14=3').out).toContain('Lowest price: 3.00 crowns');
});
test('exit 1 where no purchase serves a material', () => {
  const ran = ratiowright('buy', 'demo.ratiowright', '--machine', 'bench-1', '--teeth', '20-24', '--most', '1');
  expect(ran.exit).toBe(1);
  expect(ran.out).toContain('Served by no such plan: L5 laminating resin.');
});
test('exit 2 where flags are wrong, all of it said', () => {
  const ran = ratiowright('buy', 'demo.ratiowright', '--most', '9', '--buy', '1', '--prices', '20-13=5');
  expect([ran.exit, ran.out]).toEqual([2, '']);
  for (const words of ['--most takes a whole number from 1 to 8', '--buy does not belong to buy', '--prices takes teeth'])
    expect(ran.err).toContain(words);
  expect(ratiowright(...demo, '--prices', '13-20=5,20=6').err).toContain('a second price');
  expect(ratiowright(...demo, '--materials', 'e12,none').err).toContain('There is no material with the id "none"');
});
test('a window of ratios in place of materials: the one wheel that does, and what shows that none is not enough', () => {
  const ran = ratiowright(...demo, '--window', '1:4.5', '--tolerance', '1.5');
  expect([ran.exit, ran.err]).toEqual([0, '']);
  expect(ran.out).toMatch(/^Fewest wheels: 1\n {2}08B 36 T, bore 25\.00 mm\nFewer cannot serve all of these: .+\.$/m);
  expect(ran.out).toMatch(/^0 +2\.857 % +4\.5000 : 1 +1$/m);
  expect(ran.out).toMatch(/^1 +1\.449 % +4\.0580 : 1 +1 +08B 36 T, bore 25\.00 mm$/m);
  const json: unknown = JSON.parse(ratiowright(...demo, '--window', '1:4.5', '--tolerance', '1.5', '--json').out);
  expect(json).toMatchObject({
    levels: [
      { purchases: 0, leastWorstOffRatio_percent: { exact: '20/7' }, worstAPerBByVolume: { exact: '9/2' }, noGain: false, plans: [[]] },
      { purchases: 1, leastWorstOffRatio_percent: { exact: '100/69' }, planCount: 1, plans: [[{ size: '08B', teeth: 36 }]] },
      { purchases: 2, leastWorstOffRatio_percent: { exact: '100/71' } },
      { purchases: 3 },
    ],
    fewestPurchases: 1,
    morePlans: false,
    plans: [[{ size: '08B', teeth: 36 }]],
  });
  const none = ratiowright(...demo, '--window', '1:4.5', '--tolerance', '0.8', '--most', '1');
  expect([none.exit, none.out.includes('No plan of up to 1 wheels does.')]).toEqual([1, true]);
  const { err } = ratiowright(...demo, '--window', '5:1', '--prices', '20=3');
  for (const words of ['--window takes two numbers', '--prices belongs to the plan for materials']) expect(err).toContain(words);
});

test('another pump is a part to buy, with a price of its own (invented example)', () => {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-buy-'));
  const file = path.join(folder, 'pumps.ratiowright');
  // 15 teeth drive 35 with the fitted 12 and 6 cc/rev, so 12 over 5.6 cc/rev times 35 over 15 is 5 exactly
  writeFileSync(
    file,
    demoWith([['machines', 0, 'B', 'pumps', 1], { id: 'spare', name: 'Spare', displacement: { value: '5.6', unit: 'cc/rev' } }]),
  );
  const call = ['buy', file, '--machine', 'bench-1', '--teeth', '14-14', '--materials', 'l5', '--most', '1'] as const;
  const ran = ratiowright(...call, '--any-pump');
  expect([ran.exit, ran.err]).toEqual([0, '']);
  expect(ran.out).toContain('Each pump that a side may carry and that is not fitted is one part to buy.');
  expect(ran.out).toMatch(/^1 +1 of 1 +2$/m);
  expect(ran.out).toContain('buy pump B Spare, 5.600 cc/rev: alone it adds L5 laminating resin');
  // the teeth alone would make 14 : 3
  expect(ran.out).toMatch(/^ {2}L5 laminating resin +15 to 35; pump B Spare +5 : 1 +exact +inside/m);
  const json = JSON.parse(ratiowright(...call, '--any-pump', '--prices', '14=20', '--pump-prices', 'spare=19.50', '--json').out) as BuyJson;
  expect(
    json.fewest.plans.map(({ buy, buyPumps }) => [buy.map(({ teeth }) => teeth), buyPumps.map(({ side, pump }) => [side, pump.id])]),
  ).toEqual([
    [[14], []],
    [[], [['B', 'spare']]],
  ]);
  expect(json.cheapest).toMatchObject({
    price: { exact: '39/2' },
    provenUpTo: null,
    plans: [{ buy: [], buyPumps: [{ pump: { id: 'spare' } }] }],
  });
  expect(ratiowright(...call).out).not.toContain('Spare');
  const wrong = ratiowright(...call, '--any-pump', '--prices', '14=20', '--pump-prices', 'none=3');
  expect([wrong.exit, wrong.err]).toEqual([2, '--pump-prices: Bench 1 has no pump with the id "none".\n']);
  const flags = ratiowright(...call, '--pump-prices', 'spare');
  for (const words of ['--pump-prices takes pumps', '--pump-prices needs --any-pump', '--pump-prices needs --prices'])
    expect(flags.err).toContain(words);
  rmSync(folder, { recursive: true });
});

test('a window asks no limits of a material', () => {
  const file = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-buy-')), 'bare.ratiowright');
  writeFileSync(file, demoWith(...[0, 1, 2].map((material) => [['materials', material, 'limits'], undefined] as const)));
  const window = ['--machine', 'bench-1', '--teeth', '13-40', '--window', '1:5'] as const;
  const ran = ratiowright('buy', file, ...window);
  expect([ran.exit, ran.err]).toEqual([0, '']);
  expect(ran.out).toBe(ratiowright('buy', 'demo.ratiowright', ...window).out);
});
test('where no wheel may change, what no purchase serves is still told', () => {
  const file = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-buy-')), 'fixed.ratiowright');
  const slot = (end: string) => ['machines', 0, 'stages', 0, end, 'mayChange'] as const;
  writeFileSync(file, demoWith([slot('driver'), false], [slot('driven'), false]));
  const ran = ratiowright('buy', file, '--machine', 'bench-1', '--teeth', '13-40', '--window', '2:3', '--tolerance', '1');
  expect([ran.exit, ran.err]).toEqual([1, '']);
  // 21 to 30 teeth with 12 and 6 cc/rev make 20 : 7 and nothing else, which is furthest from 2 : 1
  expect(ran.out).toContain('They cannot serve all of these: 2.0000 : 1.');
});

test('more parts than there is room for are not passed over in silence', () => {
  const wish = ['--machine', 'bench-1', '--teeth', '13-60', '--most', '8'] as const;
  const short = 'Plans of more than 5 wheels were not looked at: they are too many.';
  const window = ratiowright('buy', 'demo.ratiowright', ...wish, '--window', '2:3', '--tolerance', '1');
  expect([window.exit, window.out.split('\n').includes(short)]).toEqual([1, true]);
  const file = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-buy-')), 'tight.ratiowright');
  writeFileSync(file, demoWith([['materials', 0, 'limits'], { definition: '% of B per A', low: '-0.01', high: '0.01' }]));
  const e12 = ratiowright('buy', file, ...wish, '--materials', 'e12');
  expect([e12.exit, e12.out.split('\n').includes(short)]).toEqual([1, true]);
  expect(e12.out).toContain('Nothing is served; with what is at hand:');
  expect(e12.out).not.toContain('Nothing need be bought');
});
