import { describe, expect, it } from 'vitest';
import { Fraction } from '../../../core/src/ratio.ts';
import { findOptions } from '../../../core/src/search/index.ts';
import { anything, stageOf, teethFrom, trainProblem, wheelsOf } from './racks.ts';

const RACK = teethFrom(9, 28);
const FITTED = [
  [12, 20],
  [25, 17],
  [9, 28],
] as const;
const KEEP = 200;

/** An option in whole numbers, in the order of the ranking: |N q - D p| over D (wanted: p/q), parts changed, teeth slot by slot. */
type Row = readonly [distance: number, D: number, changed: number, ...teeth: number[]];

function compareRows(a: Row, b: Row): number {
  const byOff = a[0] * b[1] - b[0] * a[1];
  return byOff || a.slice(2).reduce((sign, x, i) => sign || x - (b[i + 2] ?? 0), 0);
}

/** All 64 million trains of three pairs, those within `reach` of p/q kept; integers stay under 2^53. */
function nearest(p: number, q: number, reach: number): readonly Row[] {
  const rows: Row[] = [];
  const isChanged = (s: number, a: number, b: number): number => Number(a !== FITTED[s]?.[0]) + Number(b !== FITTED[s]?.[1]);
  for (const a of RACK)
    for (const b of RACK)
      for (const c of RACK)
        for (const d of RACK) {
          const low = a * c;
          const high = b * d;
          for (const e of RACK)
            for (const f of RACK) {
              const D = high * f;
              const distance = Math.abs(low * e * q - D * p);
              if (distance <= reach * D * p)
                rows.push([distance, D, isChanged(0, a, b) + isChanged(1, c, d) + isChanged(2, e, f), a, b, c, d, e, f]);
            }
        }
  return rows.sort(compareRows);
}

describe('three stages of 20 wheels, the first 200 as by nested loops over all 64 million [integers]', () => {
  it.each([
    ['an ordinary ratio', 28193, 10000, 1e-4],
    ['exactly 1, made in many thousands of ways', 1, 1, 0],
    ['just beside 1, where the nearest is made in many thousands of ways', 1000001, 1000000, 1.1e-6],
  ])('%s: %i/%i', (_, p, q, reach) => {
    const problem = trainProblem(
      new Fraction(p, q),
      FITTED.map((fitted) => stageOf('B', RACK, RACK, fitted)),
    );
    const { options, more } = findOptions(problem, anything, KEEP);
    const found = options.map((option) => [option.changed, ...wheelsOf(problem, option).flatMap(({ driver, driven }) => [driver, driven])]);
    const expected = nearest(p, q, reach);
    expect(expected.length).toBeGreaterThan(KEEP);
    expect(found).toEqual(expected.slice(0, KEEP).map((line) => line.slice(2)));
    expect(more).toBe(true);
  });
});
