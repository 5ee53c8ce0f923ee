import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { linkPlateLimit, ratedPower, rollerLimit } from '../../../core/src/drives/chainPower.ts';
import { inUnit } from '../../../core/src/format.ts';
import { float } from '../../../core/src/ratio.ts';
import { powerConstants } from '../../../core/src/tables/chainPower.ts';
import { chainSize } from '../../../core/src/tables/chainSizes.ts';
import { input, type Worked } from '../../../core/src/working.ts';
import { expectPrinted } from '../printedFormula.ts';

// The book counts in horsepower, inches and revolutions a minute; its title and edition stand in core/SOURCES.md.

function rated(number: string, teeth: number, speed_rpm: number): Worked<number> {
  const constants = powerConstants(number);
  const size = chainSize(number);
  if (constants === null || size === null) throw new Error(`chain ${number} should have a rating`);
  return ratedPower(constants, input('pitch', float(size.pitch_m), 'length'), teeth, input('speed', speed_rpm / 60, 'speed'));
}
const horsepower = (value: number): number => Number(inUnit(value, 'power', 'hp'));
const rating_hp = (number: string, teeth: number, speed_rpm: number): number => horsepower(rated(number, teeth, speed_rpm).value);

/** What the link plates and what the rollers take, both in horsepower. */
function limits_hp(number: string, teeth: number, speed_rpm: number): readonly [plates: number, rollers: number] {
  const [plates, rollers] = rated(number, teeth, speed_rpm).put.map(([, { value }]) => horsepower(Number(value)));
  return [plates ?? Number.NaN, rollers ?? Number.NaN];
}

describe('chain 40 on 17 teeth at 1000 rpm [mechanical-engineering-design, text after eq. 17-33, from memory]', () => {
  test('link plates 5.48 hp, rollers 21.64 hp; the smaller counts', () => {
    const [plates, rollers] = limits_hp('40', 17, 1000);
    expect(plates).toBeCloseTo(5.48, 2);
    expect(rollers).toBeCloseTo(21.64, 2);
    expect(rating_hp('40', 17, 1000)).toBe(plates);
  });
});

const SPEEDS_rpm = [50, 100, 200, 300, 400, 500] as const;

/** Half of the last digit printed; the last bit of a float must not decide. */
function expectHundredths(number: string, printed_hp: readonly number[]): void {
  for (const [index, hp] of printed_hp.entries()) {
    const speed_rpm = SPEEDS_rpm[index] ?? Number.NaN;
    expect(Math.abs(rating_hp(number, 17, speed_rpm) - hp), `${number} at ${speed_rpm} rpm`).toBeLessThan(0.005 + 1e-9);
  }
}

describe('rated power of one strand on 17 teeth at 50, 100, 200, 300, 400, 500 rpm', () => {
  test.each([
    ['25', [0.05, 0.09, 0.16]],
    ['40', [0.37, 0.69, 1.29, 1.85, 2.4, 2.93]],
  ] as const)('chain %s, hp: %j [mechanical-engineering-design, table 17-20, from memory]', (number, printed) => {
    expectHundredths(number, printed);
  });
  test.each([
    ['25', [0.05, 0.09, 0.16, 0.23, 0.3, 0.37]],
    ['35', [0.16, 0.29, 0.54, 0.78, 1.01, 1.24]],
    ['41', [0.2, 0.38, 0.71, 1.02, 1.32, 1.61]],
    ['50', [0.72, 1.34, 2.5, 3.61, 4.67, 5.71]],
    ['60', [1.24, 2.31, 4.3, 6.2, 8.03, 9.81]],
  ] as const)('chain %s, hp: %j [mechanical-engineering-design, eq. 17-32, recomputed apart from this code]', (number, recomputed) => {
    expectHundredths(number, recomputed);
  });
});

describe('tooth correction from 17 teeth', () => {
  const plates = (N: number): number => linkPlateLimit.of({ k: 0.004, N, n: 10, q: 0.5 });
  const rollers = (N: number): number => rollerLimit.of({ K: 17, N, n: 10, q: 0.5 });

  test('21 teeth beyond the extreme power: 1.37 [mechanical-engineering-design, table 17-22, seen in a worked example]', () => {
    expect(rollers(21) / rollers(17)).toBeCloseTo(1.37, 2);
  });
  test.each([
    [11, 0.62, 0.52],
    [12, 0.69, 0.59],
    [13, 0.75, 0.67],
    [14, 0.81, 0.75],
    [15, 0.87, 0.83],
    [16, 0.94, 0.91],
    [18, 1.06, 1.09],
    [19, 1.13, 1.18],
    [20, 1.19, 1.28],
  ])('%d teeth: %d before, %d beyond [mechanical-engineering-design, table 17-22, from memory]', (teeth, before, beyond) => {
    expect(plates(teeth) / plates(17)).toBeCloseTo(before, 2);
    expect(rollers(teeth) / rollers(17)).toBeCloseTo(beyond, 2);
  });
  test('(N/17)^1.08 of the link plates, (N/17)^1.5 of the rollers, at any count [mechanical-engineering-design, table 17-22, seen]', () => {
    for (const teeth of [9, 25, 30, 45, 60]) {
      expect(plates(teeth) / plates(17) / (teeth / 17) ** 1.08).toBeCloseTo(1, 12);
      expect(rollers(teeth) / rollers(17) / (teeth / 17) ** 1.5).toBeCloseTo(1, 12);
    }
  });
});

const chain = fc.constantFrom('25', '35', '41', '40', '50', '60', '80');
const teeth = fc.integer({ min: 9, max: 60 });
const speed_rpm = fc.integer({ min: 1, max: 6000 });

describe('laws', () => {
  test('both limits as printed, in horsepower, inches and rpm [mechanical-engineering-design, eq. 17-32 and 17-33; constants seen in a data sheet]', () => {
    // Pitch in inches, 0.004 of the link plates but 0.0022 for the lighter 41, K of the rollers.
    const printed: Readonly<Record<string, readonly [p: number, k: number, K: number]>> = {
      '25': [0.25, 0.004, 29],
      '35': [0.375, 0.004, 29],
      '41': [0.5, 0.0022, 3.4],
      '40': [0.5, 0.004, 17],
      '50': [0.625, 0.004, 17],
      '60': [0.75, 0.004, 17],
      '80': [1, 0.004, 17],
    };
    fc.assert(
      fc.property(chain, teeth, speed_rpm, (number, N, n) => {
        const [p, k, K] = printed[number] ?? [Number.NaN, Number.NaN, Number.NaN];
        const [plates, rollers] = limits_hp(number, N, n);
        expect(plates / (k * N ** 1.08 * n ** 0.9 * p ** (3 - 0.07 * p))).toBeCloseTo(1, 9);
        expect(rollers / ((1000 * K * N ** 1.5 * p ** 0.8) / n ** 1.5)).toBeCloseTo(1, 9);
        expect(rating_hp(number, N, n)).toBe(Math.min(plates, rollers));
      }),
    );
  });

  test('more teeth never take less power at the same speed', () => {
    fc.assert(
      fc.property(chain, teeth, speed_rpm, (number, N, n) => {
        expect(rating_hp(number, N + 1, n)).toBeGreaterThan(rating_hp(number, N, n));
      }),
    );
  });

  test('the rating rises with speed while the link plates count, and falls once the rollers do', () => {
    fc.assert(
      fc.property(chain, teeth, speed_rpm, (number, N, n) => {
        const [plates, rollers] = limits_hp(number, N, n);
        const near = rating_hp(number, N, plates < rollers ? n * 0.99 : n * 1.01);
        expect(near).toBeLessThan(rating_hp(number, N, n));
      }),
    );
  });
});

test('41 counts its weaker rollers from lower speeds on than 40 of the same pitch [mechanical-engineering-design, eq. 17-33: K of 3.4 against 17]', () => {
  const rollersCount = (number: string): boolean => {
    const [plates, rollers] = limits_hp(number, 17, 1500);
    return rollers < plates;
  };
  expect([rollersCount('41'), rollersCount('40')]).toEqual([true, false]);
});

test('printed as computed, on both sides of the extreme power [mathjs, npm]', () => {
  for (const speed of [100, 1000, 3000]) expectPrinted(rated('40', 17, speed));
  expectPrinted(rated('41', 21, 500));
});
