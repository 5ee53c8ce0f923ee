import { describe, expect, test } from 'vitest';
import { studentQuantile } from '../../../core/src/ratioCheck/student.ts';

const DEGREES = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20, 30, 60, 120];

describe('quantiles of Student’s distribution [NIST/SEMATECH e-Handbook 1.3.6.7.2, from memory]', () => {
  const both = [
    12.7062, 4.3027, 3.1824, 2.7764, 2.5706, 2.4469, 2.3646, 2.306, 2.2622, 2.2281, 2.1788, 2.1314, 2.086, 2.0423, 2.0003, 1.9799,
  ];
  test.each(DEGREES.map((degrees, index) => ({ degrees, printed: both[index] ?? Number.NaN })))(
    '95 %, $degrees degrees: $printed',
    ({ degrees, printed }) => {
      expect(Math.abs(studentQuantile(0.95, degrees) - printed)).toBeLessThan(5.1e-5);
    },
  );
  const ninety = [
    6.3138, 2.92, 2.3534, 2.1318, 2.015, 1.9432, 1.8946, 1.8595, 1.8331, 1.8125, 1.7823, 1.7531, 1.7247, 1.6973, 1.6706, 1.6577,
  ];
  test.each(DEGREES.map((degrees, index) => ({ degrees, printed: ninety[index] ?? Number.NaN })))(
    '90 %, $degrees degrees: $printed',
    ({ degrees, printed }) => {
      expect(Math.abs(studentQuantile(0.9, degrees) - printed)).toBeLessThan(5.1e-5);
    },
  );
});

test('one degree of freedom is the distribution of Cauchy, two have a root [closed forms: calculus]', () => {
  for (const confidence of [0.6, 0.9, 0.95, 0.99, 0.999]) {
    expect(studentQuantile(confidence, 1) / Math.tan((Math.PI * confidence) / 2)).toBeCloseTo(1, 12);
    expect(studentQuantile(confidence, 2) / (confidence * Math.sqrt(2 / (1 - confidence ** 2)))).toBeCloseTo(1, 12);
  }
});

test('a mean of 195 readings, 9.261460 with 0.02278881: 9.258242 to 9.264679 [NIST/SEMATECH e-Handbook 1.3.5.2, data set ZARR13]', () => {
  const half = (studentQuantile(0.95, 194) * 0.02278881) / Math.sqrt(195);
  // the mean is printed to six places too, so both roundings count
  expect(Math.abs(9.26146 - half - 9.258242)).toBeLessThan(1e-6);
  expect(Math.abs(9.26146 + half - 9.264679)).toBeLessThan(1e-6);
});

test('the sleep of ten, mean 1.58: 0.7001142 to 2.4598858 [Student, Biometrika 6 (1908), data set sleep of R; from memory]', () => {
  const more = [1.2, 2.4, 1.3, 1.3, 0, 1, 1.8, 0.8, 4.6, 1.4];
  const mean = more.reduce((sum, one) => sum + one, 0) / more.length;
  const deviation = Math.sqrt(more.reduce((sum, one) => sum + (one - mean) ** 2, 0) / 9);
  const half = (studentQuantile(0.95, 9) * deviation) / Math.sqrt(10);
  expect(mean - half).toBeCloseTo(0.7001142, 6);
  expect(mean + half).toBeCloseTo(2.4598858, 6);
});

test.each([
  [0.5, 3],
  [1, 3],
  [0.95, 0],
  [0.95, 1.5],
])('confidence %f with %f degrees is refused', (confidence, degrees) => {
  expect(() => studentQuantile(confidence, degrees)).toThrow(RangeError);
});
