import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { logMarks } from '../../core/src/logMarks.ts';
import { reachRule, type ShownReach } from '../../core/src/reachRule.ts';

const EMPTY: ShownReach = { low: 1, high: 4, ratios: [], density: null, gaps: [], flags: [], weightOverA: null };
const flag = (id: string, wanted: number, words = id): ShownReach['flags'][number] => ({ id, words, wanted, limits: null, best: null });

describe('marks of a log scale [our choice]', () => {
  test('round numbers first, both ends among them', () => {
    const written = (from: number, to: number) => logMarks(from, to, 0.1).map(({ value, places }) => value.toFixed(places));
    expect(written(1, 5)).toEqual(['1', '1.2', '1.5', '2', '2.5', '3', '4', '5']);
    expect(written(0.25, 4)).toContain('0.5');
  });
  test('whatever the scale: ascending, apart, on it, as many places as tell them apart, and never fewer than two', () => {
    const ends = fc.tuple(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), fc.double({ min: 1.002, max: 1e6, noNaN: true }));
    fc.assert(
      fc.property(ends, fc.double({ min: 0.02, max: 0.2, noNaN: true }), ([from, times], share) => {
        const marks = logMarks(from, from * times, share);
        expect(marks.length).toBeGreaterThanOrEqual(2);
        marks.slice(1).forEach(({ at }, index) => {
          expect(at - (marks[index]?.at ?? 0)).toBeGreaterThanOrEqual(100 * share - 1e-9);
        });
        for (const { at, value, places } of marks) {
          expect(at).toBeGreaterThanOrEqual(-1e-4);
          expect(at).toBeLessThanOrEqual(100.0001);
          expect(Number(value.toFixed(places)) / value).toBeCloseTo(1, 9);
        }
      }),
    );
  });
});

describe('the rule of a reach [geometry of a log scale]', () => {
  test('ratios stand by their logarithm; what lies outside is not drawn', () => {
    const { strokes, most } = reachRule({ ...EMPTY, ratios: [0.5, 1, 2, 2.0001, 4, 5] }, 80);
    expect(strokes).toBe('M0.0 0V100M50.0 0V100M100.0 0V100');
    // 2 and 2.0001 stand in one stretch.
    expect(most).toBe(2);
  });
  test('counts of another window go where they belong', () => {
    const density = { low: 0.5, high: 2, counts: [7, 3] };
    const { hill, most } = reachRule({ ...EMPTY, density }, 80);
    expect([hill, most]).toEqual(['M0.00 100L0.00 0.0L50.00 0.0L50.00 100Z', 3]);
  });
  test('a gap is cut at the ends of the window, one beyond the last ratio has none', () => {
    const gaps = [
      { low: 0.5, high: 2 },
      { low: 2.5, high: null },
      { low: 5, high: 6 },
    ];
    expect(reachRule({ ...EMPTY, gaps }, 80).gaps.map(({ index, from, to }) => [index, Math.round(from), Math.round(to)])).toEqual([
      [0, 0, 50],
      [1, 66, 100],
    ]);
  });
  test('a gap that only touches an end of the window has no width there and is not drawn; a hair inside it is', () => {
    const drawn = (low: number | null, high: number | null) => reachRule({ ...EMPTY, gaps: [{ low, high }] }, 80).gaps.length;
    expect([drawn(0.5, 1), drawn(null, 1), drawn(4, 5), drawn(4, null)]).toEqual([0, 0, 0, 0]);
    expect([drawn(0.5, 1.001), drawn(null, 1.001), drawn(3.999, 5), drawn(3.999, null), drawn(null, null)]).toEqual([1, 1, 1, 1, 1]);
  });
  test('by weight the same scale is shifted by the densities', () => {
    const { above, below } = reachRule({ ...EMPTY, weightOverA: 2 }, 80);
    expect(above.find(({ value }) => value === 2)?.at).toBeCloseTo(50);
    expect(below.find(({ value }) => value === 4)?.at).toBeCloseTo(50);
    expect(reachRule(EMPTY, 80).below).toEqual([]);
  });
});

describe('flags', () => {
  test('neighbours take lanes of their own; at the right end the words stand to the left', () => {
    const { flags, lanes } = reachRule({ ...EMPTY, flags: [flag('b', 2.03), flag('a', 2), flag('c', 3.9, 'a long word')] }, 80);
    expect(flags.map(({ id, row, toLeft }) => [id, row, toLeft])).toEqual([
      ['a', 0, false],
      ['b', 1, false],
      ['c', 0, true],
    ]);
    expect(lanes).toBe(2);
  });
  test('a flag without room keeps its pole and leaves its words to the table; outside the window there is none', () => {
    const crowd = Array.from({ length: 6 }, (_, index) => flag(`m${index}`, 2));
    const { flags } = reachRule({ ...EMPTY, flags: [...crowd, flag('far', 9)] }, 80);
    expect(flags.map(({ row }) => row)).toEqual([0, 1, 2, 3, null, null]);
  });
  test('limits and best option stand on the same scale', () => {
    const one = { ...flag('a', 2), limits: { low: 0.5, high: 4 }, best: 2 };
    const [drawn] = reachRule({ ...EMPTY, flags: [one] }, 80).flags;
    expect(drawn?.limits).toEqual({ from: 0, to: 100 });
    expect(drawn?.best).toBeCloseTo(50);
  });
});
