import { describe, expect, test } from 'vitest';
import { D2_OF_TWO, individualsChart } from '../../../core/src/ratioCheck/individuals.ts';

test('ten flows of a batch: 50.81, moving range 1.8778, 45.8159 to 55.8041 [NIST/SEMATECH e-Handbook 6.3.2.2; the ten values from memory]', () => {
  const chart = individualsChart([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]);
  expect(chart?.mean).toBeCloseTo(50.81, 10);
  expect(chart?.movingRange).toBeCloseTo(1.8778, 4);
  expect(chart?.high).toBeCloseTo(55.8041, 4);
  expect(chart?.low).toBeCloseTo(45.8159, 4);
  expect(chart?.beyond).toEqual([]);
});

test('d₂ of two is 2 / √π to the places that tables print [1.128 in published tables of control chart constants]', () => {
  expect(D2_OF_TWO).toBeCloseTo(2 / Math.sqrt(Math.PI), 3);
});

describe('what stands out', () => {
  test('a value beyond the limits', () => {
    const steady = [10, 10.1, 9.9, 10, 10.1, 9.9, 10, 10.1, 9.9, 10];
    expect(individualsChart([...steady, 12])?.beyond).toEqual([10]);
    expect(individualsChart(steady)?.beyond).toEqual([]);
  });

  test('a run of eight on one side of the mean', () => {
    const values = [10, 8, 10, 8, 10, 8, 10, 8, 9.2, 9.3, 9.2, 9.3, 9.2, 9.3, 9.2, 9.3, 9.2];
    const { runs = [], mean = 0 } = individualsChart(values) ?? {};
    expect(mean).toBeLessThan(9.2);
    expect(runs).toEqual([15, 16]);
  });
});

test('one value has no range', () => expect(individualsChart([1])).toBeNull());
