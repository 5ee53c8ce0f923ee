import { describe, expect, it } from 'vitest';
import { ONE, ratioOf, whole, ZERO } from '../../../core/src/ratio.ts';
import {
  bestPerChange,
  Cancelled,
  countOptions,
  fewestRelaxations,
  findOptions,
  type Hooks,
  type SearchProblem,
  tradeOff,
  withoutFailures,
} from '../../../core/src/search/index.ts';
import { anything, stageOf, teethFrom, trainProblem } from './racks.ts';

describe('the examples of the docstrings', () => {
  const pairs = [
    { driver: 20, driven: 20, changed: 0, work: ZERO, failed: 0 },
    { driver: 20, driven: 30, changed: 1, work: whole(720), failed: 0 },
  ] as const;
  const problem: SearchProblem = {
    stages: [
      { effect: 'B', pairs },
      { effect: 'none', pairs },
    ],
    pumps: [
      { ratio: ONE, changed: 0, work: ZERO, failed: 0, order: 0 },
      { ratio: ratioOf(3, 2), changed: 1, work: whole(5400), failed: 1, order: 1 },
    ],
    fixed: ONE,
    wanted: ratioOf(7, 10),
    limits: { low: ratioOf(-1, 10), high: ratioOf(1, 10) },
  };
  it('findOptions', () => expect(findOptions(problem, { admit: () => 0 }, 1).options[0]?.ratio.toFraction()).toBe('2/3'));
  it('bestPerChange', () => expect(bestPerChange(problem, { admit: () => 0 })[0]?.ratio.toFraction()).toBe('1'));
  it('tradeOff', () => expect(tradeOff(problem, { admit: () => 0 }).map(({ ratio }) => ratio.toFraction())).toEqual(['1', '2/3']));
  it('countOptions', () => expect(countOptions(problem, { admit: () => 0 }).ways).toBe(8));
  it('fewestRelaxations', () => expect(fewestRelaxations(problem, () => 0, 2).masks).toEqual([0]));
  it('withoutFailures', () => {
    const free = withoutFailures(problem);
    expect(free.pumps.map(({ failed }) => failed)).toEqual([0, 0]);
    expect(countOptions(free, anything).buildable).toBe(8);
    expect(countOptions(problem, anything).buildable).toBe(4);
  });
});

const rack = teethFrom(9, 40);
const problem: SearchProblem = {
  ...trainProblem('1.2345', [stageOf('B', rack), stageOf('A', rack), stageOf('B', rack)]),
  limits: { low: ratioOf(-1, 10 ** 4), high: ratioOf(1, 10 ** 4) },
};
const two: SearchProblem = { ...problem, stages: problem.stages.slice(0, 2) };
const nothing = { admit: () => null };
const searches: readonly (readonly [string, (hooks: Hooks) => unknown])[] = [
  ['findOptions', (hooks) => findOptions(problem, anything, 50, hooks)],
  ['findOptions inside', (hooks) => findOptions(problem, nothing, 50, hooks, 'inside')],
  ['bestPerChange', (hooks) => bestPerChange(problem, anything, hooks)],
  ['tradeOff', (hooks) => tradeOff(problem, anything, hooks)],
  ['countOptions', (hooks) => countOptions(two, anything, hooks, 1000)],
  ['fewestRelaxations', (hooks) => fewestRelaxations(withoutFailures(problem), () => 7, 3, hooks)],
];

describe.each(searches)('%s', (_, search) => {
  it('reports progress that never falls and ends at 1', () => {
    const seen: number[] = [];
    search({ progress: (done) => seen.push(done) });
    expect(seen.length).toBeGreaterThan(1);
    expect(seen.at(-1)).toBe(1);
    expect(seen.every((done, i) => done >= (seen[i - 1] ?? 0) && done <= 1)).toBe(true);
  });

  it('stops when cancelled, at once or later', () => {
    for (const calls of [0, 3]) {
      let asked = 0;
      expect(() => search({ cancelled: () => asked++ >= calls })).toThrow(Cancelled);
    }
  });
});

describe('what no plan can hold is refused', () => {
  const find =
    (change: Partial<SearchProblem>, keep = 1) =>
    () =>
      findOptions({ ...problem, ...change }, anything, keep);
  const ratio = (value: number) => ({ ratio: ratioOf(value, 1), changed: 0, work: ZERO, failed: 0, order: 0 }) as const;
  it.each([
    ['no pumps', find({ pumps: [] })],
    ['a ratio of nothing', find({ wanted: ratioOf(0, 1) })],
    ['a fixed ratio below nothing', find({ fixed: ratioOf(-1, 1) })],
    ['a pump ratio of nothing', find({ pumps: [ratio(1), ratio(0)] })],
    ['limits on one side only', find({ limits: { low: ratioOf(1, 10), high: ratioOf(2, 10) } })],
    ['limits that B cannot go below', find({ limits: { low: ratioOf(-1, 1), high: ONE } })],
    ['a wheel without teeth', find({ stages: [stageOf('B', [0, 20])] })],
    ['half an option', find({}, 0.5)],
  ])('%s', (_, search) => expect(search).toThrow(RangeError));
});
