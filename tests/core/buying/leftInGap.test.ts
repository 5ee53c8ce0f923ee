// What ratios leave of a gap, quickly and exactly, by the definition: the target of a window that is farthest from the nearest ratio.
import { describe, expect, test } from 'vitest';
import { compareMeasured, isWithin, measureOf } from '../../../core/src/buying/leftInGap.ts';
import { exactText, type Fraction, float, ratioOf } from '../../../core/src/ratio.ts';
import type { ReachWindow } from '../../../core/src/search/index.ts';
import { diceOf } from '../search/randomProblem.ts';

const windowOf = (low: Fraction, high: Fraction): ReachWindow => ({ low, high, tolerance: ratioOf(1, 100) });
const hundredths = (n: number): Fraction => ratioOf(n, 100);

describe('one ratio on either side [arithmetic]', () => {
  const left = (below: number | null, above: number | null, low: number, high: number, ...between: readonly number[]) => {
    const ends = { below: below === null ? null : hundredths(below), above: above === null ? null : hundredths(above) };
    const measured = measureOf(ends, windowOf(hundredths(low), hundredths(high)), between.map(hundredths))([...between.keys()]);
    const { worstTarget, offRatio } = measured.exact();
    expect(measured.offRatio).toBeCloseTo(float(offRatio), 14);
    return [exactText(worstTarget), exactText(offRatio)];
  };
  test('1/2 and 1: worst at 3/4, off by 1/3', () => expect(left(50, 100, 25, 400)).toEqual(['3/4', '1/3']));
  test('a window that begins above the middle: at its low end, 0.8, the upper is nearer', () => {
    expect(left(50, 100, 80, 400)).toEqual(['4/5', '1/4']);
  });
  test('a window that ends below the middle: at its high end, 0.6, the lower is nearer', () => {
    expect(left(50, 100, 25, 60)).toEqual(['3/5', '1/6']);
  });
  test('no neighbour below, none above: at the end of the window', () => {
    expect(left(null, 100, 80, 400)).toEqual(['4/5', '1/4']);
    expect(left(100, null, 25, 125)).toEqual(['5/4', '1/5']);
  });
  test('a ratio between them leaves the worse of two gaps', () => {
    expect(left(50, 100, 25, 400, 60)).toEqual(['4/5', '1/4']);
    expect(left(50, 100, 25, 400, 90)).toEqual(['7/10', '2/7']);
    expect(left(50, 100, 25, 400, 60, 80)).toEqual(['7/10', '1/7']);
  });
  test('no neighbour at all is no gap', () => expect(() => left(null, null, 25, 400)).toThrow(RangeError));
});

test('no target of a fine comb errs by more than what is told, and the one that is told errs by just that [slow twin]', () => {
  for (let seed = 1; seed <= 60; seed++) {
    const dice = diceOf(seed);
    const ratios = Array.from({ length: dice.between(0, 4) }, () => dice.between(51, 149)).sort((a, b) => a - b);
    const [below, above] = [dice.chance(20) ? null : hundredths(50), hundredths(150)];
    const low = hundredths(dice.between(30, 140));
    const high = low.mul(ratioOf(dice.between(101, 300), 100));
    const measured = measureOf({ below, above }, windowOf(low, high), ratios.map(hundredths))([...ratios.keys()]);
    const { worstTarget, offRatio } = measured.exact();
    const all = [below, ...ratios.map(hundredths), above].flatMap((one) => (one === null ? [] : [float(one)]));
    const off = (target: number): number => Math.min(...all.map((one) => Math.abs(one / target - 1)));
    const [from, to] = [Math.max(float(low), below === null ? 0 : 0.5), Math.min(float(high), 1.5)];
    const comb = Array.from({ length: 401 }, (_, i) => from + ((to - from) * i) / 400);
    expect(off(float(worstTarget)), `seed ${seed}`).toBeCloseTo(float(offRatio), 12);
    expect(measured.offRatio, `seed ${seed}`).toBeCloseTo(float(offRatio), 12);
    expect(Math.max(...comb.map(off)), `seed ${seed}`).toBeLessThanOrEqual(float(offRatio) + 1e-12);
  }
});

test('equal to the last digit is told exactly, whichever way the floats fall', () => {
  const third = { offRatio: 1 / 3 + 1e-15, exact: () => ({ worstTarget: hundredths(75), offRatio: ratioOf(1, 3) }) };
  const more = { offRatio: 1 / 3, exact: () => ({ worstTarget: hundredths(75), offRatio: ratioOf(333_333_333_333_334, 10 ** 15 - 1) }) };
  expect([compareMeasured(third, more) < 0, compareMeasured(more, third) > 0, compareMeasured(third, third)]).toEqual([true, true, 0]);
  expect([isWithin(third, ratioOf(1, 3)), isWithin(more, ratioOf(1, 3))]).toEqual([true, false]);
  expect([isWithin(third, hundredths(34)), isWithin(third, hundredths(33))]).toEqual([true, false]);
});
