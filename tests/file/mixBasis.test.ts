import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactText, type Fraction, float, ONE, ratioOf } from '../../core/src/ratio.ts';
import {
  aPerB,
  byVolume,
  byWeight,
  celsius,
  density,
  exactly,
  expectPrinted,
  f,
  type Json,
  mixOf,
  notes,
  numberOf,
  percentOff,
  planOf,
} from './mixFixture.ts';
import { say } from './shop.ts';

describe('one mix, said by weight and by volume', () => {
  test('2 : 1 by volume and 100 : 44 by weight: B is 0.88 times as dense; the weight ratio taken for the volume one is 12 % short of B [data sheet; arithmetic]', () => {
    const both = mixOf({ ratio: byVolume('2:1'), otherRatio: byWeight('100:44') });
    expect(exactText(aPerB(both))).toBe('2/1');
    expect(exactly(both.densityBOverA)).toBe('22/25');
    const turned = mixOf({ ratio: byWeight('100:44'), otherRatio: byVolume('2:1') });
    expect([exactText(aPerB(turned)), exactly(turned.densityBOverA)]).toEqual(['2/1', '22/25']);
    const confused = mixOf({ ratio: byVolume('100:44') });
    expectPrinted(float(aPerB(confused)), '2.27273');
    expectPrinted(percentOff(confused.wantedBPerA, both.wantedBPerA), '-12.0');
  });
  test('5 : 1 by volume and 100 : 18 by weight: density ratio 0.9; weighing 100 : 20 is 11.11 % off [data sheets of two systems; arithmetic]', () => {
    const { densityBOverA } = mixOf({ ratio: byVolume('5:1'), otherRatio: byWeight('100:18') });
    expect(exactly(densityBOverA)).toBe('9/10');
    expectPrinted(percentOff(f('0.2'), f('0.18')), '11.11111');
    const equallyDense = mixOf({ ratio: byWeight('5:1'), A: { density: density('1.1') }, B: { density: density('1.1') } });
    expect(exactText(aPerB(equallyDense))).toBe('5/1');
  });
  test('100 : 47 by weight, 2 : 1 by volume, A 1.16 g/mL: B is 1.0904 g/mL [data sheet; arithmetic]', () => {
    const ratios = { ratio: byWeight('100:47'), otherRatio: byVolume('2:1') };
    const fromA = mixOf({ ...ratios, A: { density: density('1.16', undefined, 'g/mL') } });
    expect(exactly(fromA.densityBOverA)).toBe('47/50');
    expectPrinted(numberOf(fromA.density_kg_per_m3.B) / 1000, '1.0904');
    const fromB = mixOf({ ...ratios, B: { density: density('1.0904', undefined, 'g/mL') } });
    expect(exactly(fromB.density_kg_per_m3.A)).toBe('1160/1');
    expect(exactText(aPerB(fromA))).toBe('2/1');
  });
  test('all four numbers, and one of them wrong: they are held against each other [arithmetic]', () => {
    const sheet = (b: string) => ({
      ratio: byWeight('100:47'),
      otherRatio: byVolume('2:1'),
      A: { density: density('1.16') },
      B: { density: density(b) },
    });
    const disagreeing = (b: string) => planOf(sheet(b)).findings.filter(({ check }) => check === 'material.twoRatios');
    // 1.0904 and 1 % of it either way: just that still agrees.
    for (const agreeing of ['1.0904', '1.079496', '1.101304']) expect(disagreeing(agreeing)).toEqual([]);
    for (const wrong of ['1.079495', '1.101305']) expect(disagreeing(wrong)).toHaveLength(1);
    const [finding] = disagreeing('1.16');
    expect(finding).toMatchObject({ severity: 'warns', where: ['materials', 0, 'otherRatio'], limit: { value: 1, unit: '%' } });
    expectPrinted(finding?.figure?.value ?? Number.NaN, '6.383');
    expect(finding?.what).toBe(
      'The ratios by weight and by volume ask for B to be 0.9400 times as dense as A; the densities say 1.0000. One of the four numbers is wrong: ask the supplier.',
    );
    expect(
      planOf(sheet('1.16'), { ...say, decimal: ',' })
        .findings.map(({ what }) => what)
        .join(),
    ).toContain('0,9400 times');
  });
  test('a density that the ratios stand in for is carried to where the machine runs: A grown by 1.01 makes 2.02 : 1 [definition of volume expansion]', () => {
    const heated = { density: density('1.16', '20'), expansion: { value: '0.001', unit: '1/K' }, runAt: celsius('30') };
    const sheet = (at: Json) => ({
      ratio: byWeight('100:47', at),
      otherRatio: byVolume('2:1'),
      A: heated,
      B: { expansion: { value: '0', unit: '1/K' }, runAt: celsius('20') },
    });
    const mix = mixOf(sheet({ at: celsius('20') }));
    expect(exactText(aPerB(mix))).toBe('101/50');
    expectPrinted(numberOf(mix.density_kg_per_m3.B) / 1000, '1.0904');
    expect(notes(sheet({ at: celsius('20') }))).toEqual([]);
    expect(notes(sheet({}))).toEqual(
      ['A', 'B'].map(
        (side) =>
          `material.referenceTemperature notes: ${side}: no temperature is given for the ratio by volume; it is taken as holding at ${side === 'A' ? 30 : 20}\u00A0°C.`,
      ),
    );
  });
  test('they are held against each other where the volumes of the sheet hold, not where the machine runs [definition of volume expansion]', () => {
    const heated = { expansion: { value: '0.0007', unit: '1/K' }, runAt: celsius('60') };
    const sheet = (at: Json) => ({
      ratio: byWeight('100:47', at),
      otherRatio: byVolume('2:1'),
      A: { density: density('1.16', '25'), ...heated },
      B: { density: density('1.0904', '25'), runAt: celsius('25'), expansion: { value: '0', unit: '1/K' } },
    });
    // 35 K of A are worth 2.4 %, but the sheet speaks of 25 °C.
    for (const at of [{}, { at: celsius('25') }]) expect(notes(sheet(at))).toEqual([]);
    expect(notes(sheet({ at: celsius('60') })).join()).toContain('material.twoRatios warns');
  });
  test.each(['100A:38B', '38B:100A', '38b : 100a'])(
    '%s by weight: the letters say which is which: A/B 50/19 [data sheet; arithmetic]',
    (parts) => {
      const { sheet } = mixOf({ ratio: byWeight(parts), A: { density: density('1') }, B: { density: density('1') } });
      expect([exactText(sheet.partsA), exactText(sheet.partsB), exactText(sheet.partsA.div(sheet.partsB))]).toEqual([
        '100/1',
        '38/1',
        '50/19',
      ]);
    },
  );
  test('10.25 and 9.7 lb/gal at 1 : 1 by volume: 1.0567 by weight; equal weights are 5.36585 % short of the heavier one [foam data sheet; arithmetic]', () => {
    const heavy = { density: density('10.25', undefined, 'lb/gal') };
    const light = { density: density('9.7', undefined, 'lb/gal') };
    const heavyIsB = mixOf({ ratio: byVolume('1:1'), A: light, B: heavy });
    expectPrinted(numberOf(heavyIsB.densityBOverA), '1.0567');
    const share = numberOf(heavyIsB.densityBOverA) / (1 + numberOf(heavyIsB.densityBOverA));
    expectPrinted(100 * share, '51.37845');
    const weightWanted = f('10.25').div(f('9.7'));
    expectPrinted(percentOff(ONE, weightWanted), '-5.36585');
    // The letters are not the same in every country: with the sides exchanged the same catch is B-rich.
    const heavyIsA = mixOf({ ratio: byVolume('1:1'), A: heavy, B: light });
    expect(exactly(heavyIsA.densityBOverA)).toBe(exactText(ONE.div(weightWanted)));
    expectPrinted(percentOff(ONE, ONE.div(weightWanted)), '5.67010');
  });
});

describe('laws', () => {
  const natural = fc.integer({ min: 1, max: 500 });
  const densityText = fc.integer({ min: 500, max: 2500 }).map((n) => `${n / 1000}`);
  const same = (a: Fraction, b: Fraction) => expect(exactText(a)).toBe(exactText(b));
  const parts = (a: number, b: number, da: string, db: string) => ({
    ratio: byWeight(`${a}:${b}`),
    A: { density: density(da) },
    B: { density: density(db) },
  });

  test('by weight → by volume → by weight returns exactly', () => {
    fc.assert(
      fc.property(natural, natural, densityText, densityText, (a, b, da, db) => {
        const run = mixOf(parts(a, b, da, db));
        const again = mixOf({ ...parts(a, b, da, db), ratio: byVolume(`1 : ${exactText(run.wantedBPerA)}`) });
        same(again.wantedBPerA, run.wantedBPerA);
        same(again.wantedBPerA.mul(again.densityBOverA.known ? again.densityBOverA.value : ONE), ratioOf(b, a));
      }),
    );
  });
  test('exchanging A and B inverts the wanted ratio', () => {
    fc.assert(
      fc.property(natural, natural, densityText, densityText, (a, b, da, db) => {
        same(mixOf(parts(b, a, db, da)).wantedBPerA, ONE.div(mixOf(parts(a, b, da, db)).wantedBPerA));
      }),
    );
  });
  test('B per 100 A says the same as 100 : B', () => {
    fc.assert(
      fc.property(natural, (b) => {
        const said = [byVolume(`100 : ${b}`), { basis: 'volume', perHundredA: String(b) }].map((ratio) => mixOf({ ratio }));
        expect(said.map((mix) => [exactText(mix.wantedBPerA), mix.sheet.written])).toEqual([
          [exactText(ratioOf(b, 100)), `100 : ${b} by volume`],
          [exactText(ratioOf(b, 100)), `100 : ${b} by volume`],
        ]);
      }),
    );
  });
});
