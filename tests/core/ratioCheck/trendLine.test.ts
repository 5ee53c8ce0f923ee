import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { studentQuantile } from '../../../core/src/ratioCheck/student.ts';
import { meets, trendLine } from '../../../core/src/ratioCheck/trendLine.ts';

/** y, x of the reference data set Norris [NIST Statistical Reference Datasets, linear regression; from memory, it reproduces]. */
const NORRIS: readonly (readonly [y: number, x: number])[] = [
  [0.1, 0.2],
  [338.8, 337.4],
  [118.1, 118.2],
  [888.0, 884.6],
  [9.2, 10.1],
  [228.1, 226.5],
  [668.5, 666.3],
  [998.5, 996.3],
  [449.1, 448.6],
  [778.9, 777.0],
  [559.2, 558.2],
  [0.3, 0.4],
  [0.1, 0.6],
  [778.1, 775.5],
  [668.8, 666.9],
  [339.3, 338.0],
  [448.9, 447.5],
  [10.8, 11.6],
  [557.7, 556.0],
  [228.3, 228.1],
  [998.0, 995.8],
  [888.8, 887.6],
  [119.6, 120.2],
  [0.3, 0.3],
  [0.6, 0.3],
  [557.6, 556.8],
  [339.3, 339.1],
  [888.0, 887.2],
  [998.5, 999.0],
  [778.9, 779.0],
  [10.2, 11.1],
  [117.6, 118.3],
  [228.9, 229.2],
  [668.4, 669.1],
  [449.2, 448.9],
  [0.2, 0.5],
];

describe('the reference data set Norris [NIST Statistical Reference Datasets; certified values from memory]', () => {
  const line = trendLine(NORRIS.map(([y, x]) => ({ x, y })));
  test.each([
    ['at 0', line?.at0, -0.262323073774029],
    ['its deviation', line?.at0Deviation, 0.232818234301152],
    ['slope', line?.slope, 1.00211681802045],
    ['its deviation', line?.slopeDeviation, 0.429796848199937e-3],
    ['about the line', line?.deviation, 0.884796396144373],
  ])('%s: %f', (_what, found, certified) => {
    expect(Math.abs((found ?? Number.NaN) / certified - 1)).toBeLessThan(1e-9);
  });
  test('34 degrees of freedom', () => expect(line?.degreesOfFreedom).toBe(34));
});

test('at both ends of the place where it meets a limit, the line is just not told from it [the test that the interval inverts]', () => {
  const values = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 3, maxLength: 12 });
  const steep = fc.double({ min: 1, max: 20, noNaN: true });
  fc.assert(
    fc.property(values, steep, fc.double({ min: -30, max: 30, noNaN: true }), (noise, slope, limit) => {
      const line = trendLine(noise.map((one, x) => ({ x, y: slope * x + one })));
      if (line === null) throw new RangeError('no line');
      const meeting = meets(line, limit, 0.95);
      const t = studentQuantile(0.95, line.degreesOfFreedom);
      if (meeting === null) {
        expect(Math.abs(line.slope)).toBeLessThanOrEqual(t * line.slopeDeviation * (1 + 1e-12));
        return;
      }
      for (const x of [meeting.from, meeting.to]) {
        if (x === null) continue;
        const apart = line.at0 + line.slope * x - limit;
        const allowed = (t * line.deviation) ** 2 * (1 / line.count + (x - line.meanX) ** 2 / line.spreadX);
        expect(Math.abs(apart ** 2 - allowed)).toBeLessThan(1e-6 * (1 + allowed));
      }
      expect(line.at0 + line.slope * meeting.x).toBeCloseTo(limit, 6);
    }),
    { numRuns: 400 },
  );
});

test('three points on one line meet a limit at one place', () => {
  const line = trendLine([
    { x: 0, y: 1 },
    { x: 10, y: 0.99 },
    { x: 20, y: 0.98 },
  ]);
  const meeting = line && meets(line, 0.95, 0.95);
  expect(meeting?.x).toBeCloseTo(50, 9);
  expect(meeting?.from).toBeCloseTo(50, 6);
  expect(meeting?.to).toBeCloseTo(50, 6);
});

test('points that tell no slope meet no limit, and two points tell nothing', () => {
  const flat = trendLine([
    { x: 0, y: 1 },
    { x: 1, y: 1.1 },
    { x: 2, y: 1 },
    { x: 3, y: 1.1 },
  ]);
  expect(flat && meets(flat, 0, 0.95)).toBeNull();
  expect(
    trendLine([
      { x: 0, y: 1 },
      { x: 1, y: 2 },
    ]),
  ).toBeNull();
  expect(trendLine([1, 2, 3].map((y) => ({ x: 5, y })))).toBeNull();
});
