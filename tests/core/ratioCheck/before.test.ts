import { describe, expect, test } from 'vitest';
import { NOT_GIVEN } from '../../../core/src/given.ts';
import { Fraction, float, ONE } from '../../../core/src/ratio.ts';
import { catchesWorthMaking, leastReadable_kg, smallestCatch } from '../../../core/src/ratioCheck/before.ts';
import type { Scale } from '../../../core/src/ratioCheck/model.ts';
import { grams } from './someCheck.ts';

const scale = (step_g: string, readings: 1 | 2): Scale => ({ step_kg: grams(step_g), readings, uncertainty_kg: NOT_GIVEN });
const LIMITS = { low: new Fraction(-1, 35), high: new Fraction(1, 35) };
const WANTED = ONE.div(new Fraction('2.38929'));

describe('the smallest catch worth making', () => {
  test('the invented example on a scale of 0.1 g: 47.6 g of A, 19.9 g of B; half of that where the scale is tared', () => {
    const two = smallestCatch(WANTED, LIMITS, scale('0.1', 2));
    expect(1000 * float(two?.A.value ?? ONE)).toBeCloseTo(47.55, 2);
    expect(1000 * float(two?.B.value ?? ONE)).toBeCloseTo(19.9, 1);
    const one = smallestCatch(WANTED, LIMITS, scale('0.1', 1));
    expect(one?.A.value.mul(2).equals(two?.A.value ?? ONE)).toBe(true);
  });

  test('half a step the worst way in every reading moves that catch by a quarter of the way, and no smaller one by less', () => {
    const found = smallestCatch(WANTED, LIMITS, scale('0.1', 2));
    if (found === null) throw new RangeError('no catch');
    const half = grams('0.1');
    const moved = found.B.value.add(half).div(found.A.value.sub(half)).div(WANTED).sub(ONE);
    expect(moved.equals(new Fraction(1, 140))).toBe(true);
  });

  test('a target that lies on its limit cannot be proven', () => {
    expect(smallestCatch(WANTED, { low: new Fraction(0), high: new Fraction(1, 35) }, scale('0.1', 2))).toBeNull();
  });
});

test('whole grams read to one per cent: 50 g', () => {
  expect(leastReadable_kg(scale('1', 1), new Fraction(1, 100)).equals(grams('50'))).toBe(true);
});

describe('how many catches are worth making', () => {
  const amount = { A: grams('244'), B: grams('102') };
  const of = (repeatability: number | null) =>
    catchesWorthMaking(amount, LIMITS, { scale: scale('0.1', 2), confidence: 0.95, repeatability });

  test('three while nobody knows how catches repeat', () => expect(of(null)).toBe(3));
  test('three where they repeat well, more where they do not, and not even ten where they are wild', () => {
    expect(of(0.001)).toBe(3);
    const some = of(0.01) ?? 0;
    expect(some).toBeGreaterThan(3);
    expect(some).toBeLessThan(10);
    expect(of(0.1)).toBeNull();
  });
});
