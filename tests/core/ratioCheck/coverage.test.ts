import { describe, expect, test } from 'vitest';
import { COARSE, coverage, FINE, uniformOf } from './simulated.ts';

// How often the interval of 95 % holds the true ratio, in simulated checks from a fixed seed. Fieller's interval is exact for normal
// catches [Fieller, Journal of the Royal Statistical Society B 16 (1954)]; the benchmark runs the same with ten times as many.

const CHECKS = 2_000;
const SEED = 3;
/** Three standard deviations of a share of 95 % in so many. */
const WITHIN = 3 * Math.sqrt((0.95 * 0.05) / CHECKS);

describe('where the steps of the scale are small against the spread', () => {
  test.each(FINE)('$name: 95 %', (of) => {
    expect(Math.abs(coverage(of, CHECKS, SEED) - 0.95)).toBeLessThan(WITHIN);
  });
});

describe('where the steps are as wide as the spread, or wider', () => {
  test.each(COARSE.filter(({ readings }) => readings === 2))('$name: no less than 95 %, as each reading counts its half step', (of) => {
    expect(coverage(of, CHECKS, SEED)).toBeGreaterThan(0.95 - WITHIN);
  });
  test.each(COARSE.filter(({ readings }) => readings === 1))('$name: no less than 95 %', (of) => {
    expect(coverage(of, CHECKS, SEED)).toBeGreaterThan(0.95 - WITHIN);
  });
});

test('the dice are even: mean 1/2, variance 1/12, and no two neighbours go together [uniform distribution]', () => {
  const uniform = uniformOf(SEED);
  const thrown = Array.from({ length: 100_000 }, uniform);
  const mean = thrown.reduce((sum, one) => sum + one, 0) / thrown.length;
  const variance = thrown.reduce((sum, one) => sum + (one - mean) ** 2, 0) / thrown.length;
  const together = thrown.slice(1).reduce((sum, one, index) => sum + (one - mean) * ((thrown[index] ?? mean) - mean), 0) / thrown.length;
  expect(Math.abs(mean - 0.5)).toBeLessThan(0.004);
  expect(Math.abs(variance - 1 / 12)).toBeLessThan(0.001);
  expect(Math.abs(together)).toBeLessThan(0.001);
});
