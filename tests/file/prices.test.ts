import { describe, expect, test } from 'vitest';
import { pricesOf } from '../../core/src/buying/index.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import { known, NOT_GIVEN } from '../../core/src/given.ts';
import { readPrice } from '../../core/src/price.ts';
import { ratioOf } from '../../core/src/ratio.ts';
import { demoPlan } from './demoPlan.ts';
import { demoWith, lines, opened } from './shop.ts';

const row = (id: string, from: number, to: number, price: string, size = '08B') => ({ id, kind: 'chain', size, from, to, price });
const withPrices = (...prices: readonly unknown[]) => demoWith([['racks', 0, 'prices'], prices]);

test.each([
  ['18', 1800],
  ['18.5', 1850],
  ['18,50', 1850],
  [' 0 ', 0],
  ['1000000', 100_000_000],
])('readPrice reads %s in hundredths', (text, price) => {
  expect(readPrice(text)).toEqual({ ok: true, value: price });
});
test.each(['', '-1', '18.505', '1000001', 'free'])('readPrice refuses "%s" and says what was expected', (text) => {
  expect(readPrice(text)).toMatchObject({ ok: false, expected: expect.stringMatching(/\S/) });
});

test('prices are read and kept as typed, in money that has the word of the shop', () => {
  const text = demoWith([['racks', 0, 'prices'], [row('p1', 13, 20, '18,50')]], [['shop', 'currency'], 'crowns']);
  const file = opened(text);
  expect([file.shop.currency, file.racks[0]?.prices]).toEqual(['crowns', [row('p1', 13, 20, '18,50')]]);
  expect(readShopFile(text).findings).toEqual([]);
});

describe('what is wrong with prices is said with its place', () => {
  test.each([
    [[row('p1', 20, 13, '18')], ['racks 0 prices 0 from: The teeth run from 20 to 13: the first must not be larger.']],
    [
      [row('p1', 13, 20, '18'), row('p2', 20, 40, '25')],
      ['racks 0 prices 1 from: 08B, 20 to 40 teeth: some of these have a price already.'],
    ],
    // 40 and 08A are two names of one chain [ISO 606, from memory]
    [
      [row('p1', 13, 20, '18', '40'), row('p2', 15, 15, '25', '08A')],
      ['racks 0 prices 1 from: 08A, 15 to 15 teeth: some of these have a price already.'],
    ],
    [[row('p1', 13, 20, '18'), row('p1', 21, 40, '25')], ['racks 0 prices 1 id: The id "p1" is used twice.']],
    [
      [row('p1', 13, 20, '18.505')],
      ['racks 0 prices 0 price: "18.505" is no price. Expected a number from 0 to 1000000 with at most two places, as 18.50.'],
    ],
    [
      [{ ...row('p1', 13, 20, '18'), price: 18 }],
      ['racks 0 prices 0 price: 18 must be written in quotation marks, as "18", so that it stays exactly as typed.'],
    ],
    [[row('p1', 4, 20, '18')], ['racks 0 prices 0 from: 4 is out of range: it must be at least 5.']],
  ])('%j', (prices, said) => {
    const read = readShopFile(withPrices(...prices));
    expect([read.ok, lines(read.findings)]).toEqual([false, said]);
  });
  test('two sizes may have one range', () => {
    expect(readShopFile(withPrices(row('p1', 13, 20, '18'), row('p2', 13, 20, '12', '06B'))).ok).toBe(true);
  });
});

test('a plan knows the price of a wheel by its size and teeth; without prices it knows none at all', () => {
  const selection = { machine: 'bench-1', material: 'l5' };
  const plan = demoPlan(
    selection,
    [
      ['racks', 0, 'prices'],
      [row('p1', 13, 20, '18.5'), row('p2', 21, 40, '25')],
    ],
    [['shop', 'currency'], ' crowns '],
  );
  const wheel = (size: string, teeth: number) => ({ kind: 'chain', size, teeth, bore_m: known(ratioOf(25, 1000)) });
  const of = pricesOf(plan);
  expect([13, 20, 21, 41].map((teeth) => of?.(wheel('08B', teeth)))).toEqual([1850, 1850, 2500, null]);
  expect([of?.(wheel('06B', 13)), of?.({ ...wheel('08B', 13), bore_m: NOT_GIVEN }), plan.currency]).toEqual([null, 1850, 'crowns']);
  expect([pricesOf(demoPlan(selection)), demoPlan(selection).currency]).toEqual([undefined, null]);
});
