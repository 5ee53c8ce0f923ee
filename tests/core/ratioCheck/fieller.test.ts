import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fiellerInterval, type PairedMeans } from '../../../core/src/ratioCheck/fieller.ts';
import { studentQuantile } from '../../../core/src/ratioCheck/student.ts';

const NAMES = { a: 'a', b: 'b' };

/** Crossed and self-fertilised maize of each pot, eighths of an inch [Darwin, in Fisher, Design of Experiments, chapter 3; from memory]. */
const CROSSED = [188, 96, 168, 176, 153, 172, 177, 163, 146, 173, 186, 168, 177, 184, 96];
const SELF = [139, 163, 160, 160, 147, 149, 149, 122, 132, 144, 130, 144, 102, 124, 144];

function meansOf(a: readonly number[], b: readonly number[]): PairedMeans {
  const count = a.length;
  const mean = (of: readonly number[]) => of.reduce((sum, one) => sum + one, 0) / count;
  const [A, B] = [mean(a), mean(b)];
  const cross = (x: readonly number[], X: number, y: readonly number[], Y: number) =>
    x.reduce((sum, one, index) => sum + (one - X) * ((y[index] ?? 0) - Y), 0) / (count - 1) / count;
  return { a: A, b: B, varianceA: cross(a, A, a, A), varianceB: cross(b, B, b, B), covariance: cross(a, A, b, B) };
}

describe('Darwin’s maize: crossed over self-fertilised', () => {
  const inches = (eighths: readonly number[]) => eighths.map((one) => one / 8);
  const means = meansOf(inches(SELF), inches(CROSSED));

  test('means 20.1917 and 17.575, difference 2.6167, its interval 0.0039 to 5.2294 [Fisher, Design of Experiments, chapter 3; from memory]', () => {
    expect(means.b).toBeCloseTo(20.1917, 4);
    expect(means.a).toBeCloseTo(17.575, 4);
    const half = studentQuantile(0.95, 14) * Math.sqrt(means.varianceA + means.varianceB - 2 * means.covariance);
    expect(means.b - means.a - half).toBeCloseTo(0.0039, 3);
    expect(means.b - means.a + half).toBeCloseTo(5.2294, 3);
  });

  test('ratio 1.148886, 1.0002124 to 1.312156 [formula of Fieller 1954; worked out by the quadratic and by inverting the t-test]', () => {
    const interval = fiellerInterval(means, studentQuantile(0.95, 14), NAMES);
    expect(means.b / means.a).toBeCloseTo(1.148886, 6);
    expect(interval?.from.value).toBeCloseTo(1.0002124, 6);
    expect(interval?.to.value).toBeCloseTo(1.312156, 6);
  });
});

test('at both ends the difference b − r a is just not told from nothing [the test that the interval inverts]', () => {
  const positive = fc.double({ min: 0.01, max: 100, noNaN: true });
  const slope = fc.double({ min: -0.99, max: 0.99, noNaN: true });
  fc.assert(
    fc.property(positive, positive, positive, positive, slope, fc.integer({ min: 1, max: 40 }), (a, b, u, v, correlation, degrees) => {
      const quantile = studentQuantile(0.95, degrees);
      const [varianceA, varianceB] = [(u * a * a) / 2e4, (v * b * b) / 2e4];
      const covariance = correlation * Math.sqrt(varianceA * varianceB);
      const interval = fiellerInterval({ a, b, varianceA, varianceB, covariance }, quantile, NAMES);
      if (interval === null) {
        expect(a).toBeLessThanOrEqual(quantile * Math.sqrt(varianceA));
        return;
      }
      expect(interval.from.value).toBeLessThanOrEqual(b / a);
      expect(interval.to.value).toBeGreaterThanOrEqual(b / a);
      for (const { value } of [interval.from, interval.to]) {
        const difference = b - value * a;
        const allowed = quantile ** 2 * (varianceB - 2 * value * covariance + value ** 2 * varianceA);
        expect(Math.abs(difference ** 2 - allowed)).toBeLessThan(1e-6 * (b * b + (value * a) ** 2));
      }
    }),
    { numRuns: 500 },
  );
});

test('where the divisor is not told from nothing there are no two ends', () => {
  expect(fiellerInterval({ a: 1, b: 2, varianceA: 0.06, varianceB: 0.01, covariance: 0 }, 4.3, NAMES)).toBeNull();
});
