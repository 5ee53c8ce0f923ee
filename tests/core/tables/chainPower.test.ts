import { describe, expect, test } from 'vitest';
import { powerConstants } from '../../../core/src/tables/chainPower.ts';
import { CHAIN_SIZES } from '../../../core/src/tables/chainSizes.ts';

describe('constants of the power limits', () => {
  // Constants as seen in a chain data sheet that cites the equations.
  test.each([
    ['25', 0.004, 29],
    ['35', 0.004, 29],
    ['41', 0.0022, 3.4],
    ['40', 0.004, 17],
    ['50', 0.004, 17],
    ['60', 0.004, 17],
    ['80', 0.004, 17],
  ])(
    'chain %s: %d for its link plates, %d for its rollers [mechanical-engineering-design, eq. 17-32 and 17-33, seen]',
    (number, plates, rollers) => {
      expect(powerConstants(number)).toEqual({ linkPlateFactor: plates, rollerFactor: rollers });
    },
  );

  test('both names of a chain have one row [iso-606, annex B, from memory]', () => {
    for (const [iso, american] of [
      ['04C', '25'],
      ['06C', '35'],
      ['085', '41'],
      ['08A', '40'],
      ['10A', '50'],
      ['12A', '60'],
      ['16A', '80'],
    ] as const)
      expect(powerConstants(iso), iso).toEqual(powerConstants(american));
  });

  test('every chain of the A series has them, none of the B series: for those no constants are published', () => {
    for (const { number, series } of CHAIN_SIZES) expect(powerConstants(number) !== null, number).toBe(series === 'A');
  });

  test('as typed, and what is not known', () => {
    expect(powerConstants(' #40 ')?.rollerFactor).toBe(17);
    for (const written of ['', '42', '40-2', 'C2040']) expect(powerConstants(written), written).toBeNull();
  });

  test('example of the docstring', () => expect(powerConstants('08A')?.rollerFactor).toBe(17));
});
