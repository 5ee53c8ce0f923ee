import { describe, expect, test } from 'vitest';
import { exactText, float } from '../../core/src/ratio.ts';
import { aPerB, byVolume, byWeight, celsius, density, exactly, expectPrinted, mixOf, notes, numberOf, refused } from './mixFixture.ts';

describe('three parts for two pumps: 4 : 1 : 1 [arithmetic]', () => {
  test('shares of 66.66667, 16.66667 and 16.66667 %; 5 : 1 with the third in A, 2 : 1 with it in B, 4 : 1 without it', () => {
    const into = (thirdInto: 'A' | 'B') => mixOf({ ratio: byVolume('4:1:1', { thirdInto }) });
    expect(exactText(aPerB(into('A')))).toBe('5/1');
    expect(exactText(aPerB(into('B')))).toBe('2/1');
    expect(exactText(aPerB(mixOf({ ratio: byVolume('4:1') })))).toBe('4/1');
    const { partsA, partsB } = into('B').sheet;
    expectPrinted((100 * float(partsA)) / float(partsA.add(partsB)), '66.66667');
    expect([exactText(partsA), exactText(partsB)]).toEqual(['4/1', '2/1']);
  });
  test('the tank of the third part is never guessed, nor a third part that is not there', () => {
    expect(refused({ ratio: byVolume('4:1:1') })).toEqual([
      'materials 0 ratio thirdInto: "4:1:1" has three parts for two pumps: say into which tank, A or B, the third is premixed.',
    ]);
    expect(refused({ ratio: byVolume('4:1', { thirdInto: 'A' }) })).toEqual([
      'materials 0 ratio parts: "4:1" has two parts, but a third is said to be premixed into A: write A : B : third.',
    ]);
    expect(refused({ ratio: { basis: 'volume', perHundredA: '25', thirdInto: 'B' } })).toEqual([
      'materials 0 ratio thirdInto: A third part needs its own number: write the ratio as A : B : third.',
    ]);
    expect(refused({ ratio: byVolume('4:1:1', { thirdInto: 'A' }), otherRatio: byWeight('100:22') })).toEqual([
      'materials 0 otherRatio parts: "100:22" and the ratio by volume must have the same number of parts.',
    ]);
  });
  test('by weight, 4 parts of 1.1 and 1 of 0.9 make a tank of 1.05319 g/cm3 [conservation of mass and volume]', () => {
    const ratio = byWeight('4:1:1', { thirdInto: 'A' });
    const parts = { A: { density: density('1.1') }, third: { density: density('0.9') }, B: { density: density('1') } };
    const mixed = mixOf({ ratio, ...parts });
    expectPrinted(numberOf(mixed.density_kg_per_m3.A) / 1000, '1.05319');
    // 5 kg in 4/1.1 + 1/0.9 litres against 1 litre of B.
    expectPrinted(float(aPerB(mixed)), (4 / 1.1 + 1 / 0.9).toFixed(5));
    const typed = mixOf({ ratio, ...parts, premix: { density: density('1.05') } });
    expect(exactly(typed.density_kg_per_m3.A)).toBe('1050/1');
    expectPrinted(float(aPerB(typed)), (5 / 1.05).toFixed(5));
  });
  test('by volume, 4 litres of 1.1 and 1 of 0.9 make 1.06 g/cm3; heated, each grows by its own expansion [definition of volume expansion]', () => {
    const grows = (expansion: string) => ({ expansion: { value: expansion, unit: '1/K' } });
    const mixed = mixOf({
      ratio: byVolume('4:1:1', { thirdInto: 'A', at: celsius('20') }),
      A: { density: density('1.1', '20'), ...grows('0.001'), runAt: celsius('30') },
      // It stands in the tank of A, whatever is said of it by itself.
      third: { density: density('0.9', '20'), ...grows('0.002'), runAt: celsius('90') },
      B: { density: density('1', '20'), ...grows('0'), runAt: celsius('20') },
    });
    // 4 x 1.01 + 1 x 1.02 litres of 5.3 kg.
    expect(exactText(aPerB(mixed))).toBe('253/50');
    expectPrinted(numberOf(mixed.density_kg_per_m3.A), (5300 / 5.06).toFixed(4));
  });
  test('a third part that the ratio does not count is left out, and that is said', () => {
    const found = notes({ ratio: byVolume('4:1'), third: { name: 'Thinner' } });
    expect(found).toContain('material.third notes: A third part is described, but the ratio has only two parts: it is left out.');
  });
});
