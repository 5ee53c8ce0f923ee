import { describe, expect, test } from 'vitest';
import { known, NOT_GIVEN } from '../../../core/src/given.ts';
import { Fraction, float } from '../../../core/src/ratio.ts';
import { evaluate } from '../../../core/src/ratioCheck/evaluate.ts';
import { checkOf, grams } from './someCheck.ts';

// Figures of the invented example were worked out apart from the program.

const U40 = {
  wanted: '143/408',
  limits: ['-1/35', '1/35'],
  densities: ['1.01795', '1.21573'],
} as const;

describe('the three past ratio checks of the invented example', () => {
  test.each([
    {
      catches: [
        [244.6, 101.9],
        [244.1, 101.6],
        [244.4, 101.8],
      ],
      ratio: 2.4012,
      off: -0.5,
      from: -0.66,
      to: -0.34,
      verdict: 'pass',
      unstable: 0,
    },
    {
      catches: [
        [244.3, 101.1],
        [244.8, 101.2],
        [244.0, 100.9],
      ],
      ratio: 2.4179,
      off: -1.18,
      from: -1.35,
      to: -1.01,
      verdict: 'pass',
      unstable: 0,
    },
    {
      catches: [
        [244.5, 100.4],
        [243.2, 98.6],
        [244.9, 101.3],
      ],
      ratio: 2.4396,
      off: -2.06,
      from: -4.55,
      to: 0.38,
      verdict: 'not proven',
      unstable: 1,
    },
  ] as const)('$ratio A per B: $off %, $from to $to %: $verdict', ({ catches, ratio, off, from, to, verdict, unstable }) => {
    const found = evaluate(checkOf({ ...U40, wantedByWeight: '1/2.38929', catches }));
    expect(1 / float(found.bPerA.value)).toBeCloseTo(ratio, 4);
    expect(100 * float(found.offRatio.value)).toBeCloseTo(off, 2);
    expect(100 * (found.interval?.from.value ?? Number.NaN)).toBeCloseTo(from, 2);
    expect(100 * (found.interval?.to.value ?? Number.NaN)).toBeCloseTo(to, 2);
    expect(found.verdict).toBe(verdict);
    expect(found.unstable).toHaveLength(unstable);
    expect(found.further).toEqual(verdict === 'pass' ? null : { kind: 'find the cause' });
  });
});

test('176 g and 17 g on a scale of whole grams: 10.353 to 1, −3.41 %, and −6.52 to −0.28 % by its steps alone', () => {
  const found = evaluate(checkOf({ wantedByWeight: '1/10', limits: ['-3/100', '3/100'], step: '1', readings: 1, catches: [[176, 17]] }));
  expect(1 / float(found.bPerA.value)).toBeCloseTo(10.35294, 5);
  const [only] = found.counted;
  expect(100 * float(only.offRatio)).toBeCloseTo(-3.40909, 5);
  expect(100 * float(only.byStep?.from ?? new Fraction(0))).toBeCloseTo(-6.51558, 5);
  expect(100 * float(only.byStep?.to ?? new Fraction(0))).toBeCloseTo(-0.2849, 4);
  // One catch neither passes nor fails: nothing tells how catches spread.
  expect(found.verdict).toBe('not proven');
  expect(found.further).toEqual({ kind: 'a second catch' });
});

test('27, 30, 33 and 35 parts to 100 where 44 are wanted: 31.25, −28.98 %, deviation 3.5, fails, and the catches do not agree', () => {
  const parts = [27, 30, 33, 35];
  const found = evaluate(checkOf({ wantedByWeight: '44/100', limits: ['-5/100', '5/100'], catches: parts.map((b) => [100, b]) }));
  expect(100 * float(found.bPerA.value)).toBeCloseTo(31.25, 10);
  expect(100 * float(found.offRatio.value)).toBeCloseTo(-28.97727, 5);
  expect(100 * (found.deviation ?? 0) * 0.44).toBeCloseTo(3.5, 10);
  expect(found.counted.map(({ offRatio }) => 100 * float(offRatio)).at(0)).toBeCloseTo(-38.63636, 5);
  expect(found.counted.map(({ offRatio }) => 100 * float(offRatio)).at(3)).toBeCloseTo(-20.45455, 5);
  expect(found.verdict).toBe('fail');
  expect(found.unstable).toContain('range wider than the limits are apart');
});

test('a catch that is left out does not count, and keeps its number', () => {
  const check = checkOf({
    wantedByWeight: '1/2',
    limits: ['-1/50', '1/50'],
    catches: [
      [100, 50],
      [100, 90],
      [101, 50.4],
    ],
  });
  const [first, second, third] = check.catches;
  const found = evaluate({ ...check, catches: [first, { ...(second ?? first), leftOut: 'the cup tipped over' }, third ?? first] });
  expect(found.counted.map(({ number }) => number)).toEqual([1, 3]);
  expect(found.degreesOfFreedom).toBe(1);
});

test('equal catches are still uncertain by the steps of the scale', () => {
  const found = evaluate(
    checkOf({
      wantedByWeight: '1/2',
      limits: ['-1/50', '1/50'],
      catches: [
        [100, 50],
        [100, 50],
      ],
    }),
  );
  expect(found.range.equals(0)).toBe(true);
  expect(found.interval?.to.value).toBeGreaterThan(0.005);
  const finer = evaluate(
    checkOf({
      wantedByWeight: '1/2',
      limits: ['-1/50', '1/50'],
      step: '0.001',
      catches: [
        [100, 50],
        [100, 50],
      ],
    }),
  );
  expect(finer.interval?.to.value).toBeLessThan(0.0002);
});

test('the error of the scale itself does not shrink with the number of catches', () => {
  const catches = Array.from({ length: 40 }, () => [100, 50] as const);
  const of = { wantedByWeight: '1/2', limits: ['-1/50', '1/50'], step: '0.001', catches } as const;
  const without = evaluate(checkOf(of));
  const check = checkOf(of);
  const withIt = evaluate({ ...check, scale: { ...check.scale, uncertainty_kg: known(grams('0.5')) } });
  expect(without.interval?.to.value).toBeLessThan(1e-4);
  expect(withIt.interval?.to.value).toBeGreaterThan(0.009);
});

test('volumes are judged by volume where nothing was weighed', () => {
  const check = checkOf({
    wantedByWeight: '1/2',
    limits: ['-1/50', '1/50'],
    densities: ['1', '1'],
    catches: [
      [100, 50],
      [100, 51],
    ],
  });
  const catches = check.catches.map(({ sides: { A, B } }) => ({
    sides: {
      A: { mass_kg: NOT_GIVEN, volume_m3: A.mass_kg },
      B: { mass_kg: NOT_GIVEN, volume_m3: B.mass_kg },
    },
    leftOut: null,
  }));
  const [first, ...rest] = catches;
  if (first === undefined) throw new RangeError('no catch');
  const found = evaluate({ ...check, catches: [first, ...rest] });
  expect(found.weighed).toBe(false);
  expect(100 * float(found.offRatio.value)).toBeCloseTo(1, 10);
  expect(found.volumeBPerA?.equals(found.bPerA.value)).toBe(true);
});

describe('what settles a check that is not proven', () => {
  test('catches that agree but are few: one more', () => {
    const catches = [
      [100, 50.5],
      [100, 50.7],
      [100, 50.8],
    ] as const;
    const found = evaluate(checkOf({ wantedByWeight: '1/2', limits: ['-1/50', '1/50'], step: '0.001', catches }));
    // by hand: mean 1.333 %, deviation 0.306 %; 4.303 × 0.306 / √3 = 0.759 goes beyond 2 %, 3.182 × 0.306 / √4 = 0.486 does not
    expect(found.verdict).toBe('not proven');
    expect(found.further).toEqual({ kind: 'more catches', catches: 1, toward: 'pass' });
  });

  test('a scale too coarse for so small a catch: larger ones', () => {
    const catches = [
      [20, 10.1],
      [20, 10.1],
    ] as const;
    const of = { wantedByWeight: '1/2', limits: ['-1/80', '1/80'], readings: 1, catches } as const;
    const { verdict, further } = evaluate(checkOf(of));
    expect(verdict).toBe('not proven');
    if (further?.kind !== 'larger catches') throw new RangeError(`${further?.kind}`);
    expect(further.toward).toBe('pass');
    const times = further.amount.A / 0.02;
    const larger = (by: number) =>
      evaluate(
        checkOf({
          ...of,
          catches: [
            [20 * by, 10.1 * by],
            [20 * by, 10.1 * by],
          ],
        }),
      ).verdict;
    expect(larger(times)).toBe('pass');
    expect(larger(times - 1)).toBe('not proven');
  });

  test('a mean on the very limit: nothing helps', () => {
    const catches = [
      [100, 51.0],
      [100, 51.01],
      [100, 50.99],
    ] as const;
    const found = evaluate(checkOf({ wantedByWeight: '1/2', limits: ['-1/50', '1/50'], step: '0.001', catches }));
    expect(found.further).toEqual({ kind: 'too near the limit' });
  });
});

describe('what the pumps delivered', () => {
  test('a worn pump: 10.00 of 11.69 in theory is 85.54 %, and 1.69 leak', () => {
    const found = evaluate(
      checkOf({
        wantedByWeight: '1/2',
        limits: null,
        densities: ['1', '1'],
        displacements: ['23.38', '11.69'],
        turns: '1',
        catches: [
          [23.38, 10],
          [23.38, 10],
        ],
      }),
    );
    expect(float(found.delivery.B?.share.value ?? new Fraction(0))).toBeCloseTo(0.85543, 5);
    expect(float(found.delivery.A?.share.value ?? new Fraction(0))).toBe(1);
  });

  test('nobody counted turns: no delivery is said', () => {
    const check = checkOf({ wantedByWeight: '1/2', limits: null, catches: [[100, 50]] });
    expect(evaluate({ ...check, run: null }).delivery).toEqual({ A: null, B: null });
  });
});
