import { describe, expect, test } from 'vitest';
import { byVolume, byWeight, density, refused } from './mixFixture.ts';

describe('what is missing', () => {
  test('a density, for a ratio by weight: the side is named', () => {
    const missing = (place: string, name: string) =>
      `materials 0 ${place} density: The density of ${name} is missing: a ratio by weight needs all densities, or the sheet's ratio by volume as well.`;
    const known = { density: density('1.1') };
    expect(refused({ ratio: byWeight('2:1'), A: known })).toEqual([missing('B', 'B')]);
    expect(refused({ ratio: byWeight('2:1'), B: known })).toEqual([missing('A', 'A')]);
    expect(refused({ ratio: byWeight('2:1') })).toEqual([missing('A', 'A'), missing('B', 'B')]);
    const three = byWeight('4:1:1', { thirdInto: 'B' });
    expect(refused({ ratio: three, A: known, B: known, third: {} })).toEqual([missing('third', 'the third part')]);
  });
  test('the ratio, its parts, or its basis, which is never guessed', () => {
    const basis = 'Whether the mix ratio is by weight or by volume is missing; it is never guessed, the data sheet says it.';
    const parts = 'The mix ratio is missing: the data sheet of the material gives it.';
    expect(refused({})).toEqual([`materials 0 ratio: ${parts}`, `materials 0 ratio: ${basis}`]);
    expect(refused({ ratio: {} })).toEqual([`materials 0 ratio parts: ${parts}`, `materials 0 ratio basis: ${basis}`]);
    expect(refused({ ratio: { parts: '2:1' } })).toEqual([`materials 0 ratio basis: ${basis}`]);
    expect(refused({ ratio: { basis: 'weight' } })).toEqual([`materials 0 ratio parts: ${parts}`]);
  });
  test('both ratios on one basis, and a count of B that is not above 0', () => {
    expect(refused({ ratio: byVolume('2:1'), otherRatio: byVolume('2:1') })).toEqual([
      "materials 0 otherRatio basis: Both ratios are by volume: this one is the sheet's ratio on the other basis.",
    ]);
    for (const perHundredA of ['0', '-5']) {
      expect(refused({ ratio: { basis: 'volume', perHundredA } })).toEqual([
        `materials 0 ratio perHundredA: ${perHundredA} is out of range: the parts of B per 100 A must be above 0.`,
      ]);
    }
  });
});
