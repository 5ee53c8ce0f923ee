import { describe, expect, test } from 'vitest';
import { oilLimits } from '../../../core/src/tables/chainOil.ts';
import { CHAIN_SIZES } from '../../../core/src/tables/chainSizes.ts';

/** 1 ft/min is 0.3048 m in 60 s [NIST SP 811, exact]. */
const FT_PER_MIN = 0.3048 / 60;

// asme-b29.1, supplementary information: most chain speed with oil by hand or drip (type A) and in a bath (type B), ft/min; from memory.
const PRINTED = [
  ['25', 480, 3250],
  ['35', 350, 2650],
  ['41', 300, 2200],
  ['40', 300, 2200],
  ['50', 250, 1900],
  ['60', 215, 1750],
  ['80', 165, 1475],
] as const;

function limits(written: string) {
  const found = oilLimits(written);
  if (found === null) throw new Error(`chain ${written} should have limits`);
  return found;
}

describe('chain speed by the way of oiling [asme-b29.1, supplementary information, from memory]', () => {
  test.each(PRINTED)('chain %s: by hand to %d ft/min, in a bath to %d', (number, byHand, bath) => {
    const { number: whose, byHand_m_per_s, bath_m_per_s } = limits(number);
    expect(whose).toBe(number);
    expect(byHand_m_per_s / FT_PER_MIN).toBeCloseTo(byHand, 9);
    expect(bath_m_per_s / FT_PER_MIN).toBeCloseTo(bath, 9);
  });

  test('both names of a chain have one row [iso-606, annex B, from memory]', () => {
    expect(['04C', '06C', '085', '08A', '10A', '12A', '16A'].map((written) => limits(written).number)).toEqual([
      '25',
      '35',
      '41',
      '40',
      '50',
      '60',
      '80',
    ]);
  });

  test('the heavier the chain the slower, and a bath always does for more than a hand', () => {
    const rows = ['25', '35', '40', '50', '60', '80'].map(limits);
    for (const [index, { number, byHand_m_per_s, bath_m_per_s }] of rows.entries()) {
      expect(bath_m_per_s, number).toBeGreaterThan(byHand_m_per_s);
      const lighter = rows[index - 1];
      expect(byHand_m_per_s, number).toBeLessThan(lighter?.byHand_m_per_s ?? Number.POSITIVE_INFINITY);
      expect(bath_m_per_s, number).toBeLessThan(lighter?.bath_m_per_s ?? Number.POSITIVE_INFINITY);
    }
  });
});

describe('the B series goes by the A series chain of the same pitch (our choice)', () => {
  test.each([
    ['06B', '35'],
    ['08B', '40'],
    ['10B', '50'],
    ['12B', '60'],
    ['16B', '80'],
  ])('%s by %s', (metric, american) => expect(oilLimits(metric)).toEqual(limits(american)));

  test('05B, of 8 mm, has none; every other chain of the table has some', () => {
    expect(CHAIN_SIZES.filter(({ number }) => oilLimits(number) === null).map(({ number }) => number)).toEqual(['05B']);
  });
});

test('as typed, and what is not known', () => {
  expect(oilLimits(' no. 08b ')?.number).toBe('40');
  for (const written of ['', '42', '20B', 'C2040']) expect(oilLimits(written), written).toBeNull();
});

test('example of the docstring', () => expect(oilLimits('08B')?.number).toBe('40'));
