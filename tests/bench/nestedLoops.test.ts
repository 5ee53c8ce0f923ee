import { describe, expect, it } from 'vitest';
import { Fraction, ONE, ratioOf, ZERO } from '../../core/src/ratio.ts';
import { anything, changes, row, stageOf, teethFrom, trainProblem } from '../core/search/racks.ts';
import { diceOf, randomProblem } from '../core/search/randomProblem.ts';
import { everyOption } from '../core/search/slowTwin.ts';
import { nearest } from './nearest.ts';
import { nestedLoops, rawCount } from './nestedLoops.ts';

describe('the nested loops of the benchmark against listing every option [slow twin]', () => {
  it.each(Array.from({ length: 4 }, (_, i) => 60_000 + i * 100))('agree row for row on 100 random problems from seed %i', (from) => {
    for (let seed = from; seed < from + 100; seed++) {
      const dice = diceOf(seed);
      const { problem, rules } = randomProblem(dice);
      const free = { ...problem, limits: null };
      const keep = dice.pick([1, 2, 5, 10, 50]);
      const expected = everyOption(free, rules).slice(0, keep);
      expect(nestedLoops(free, rules, keep).map(row), `seed ${seed}`).toEqual(expected.map(row));
    }
  });

  it('agree where all options tie, more than the loops first make room for', () => {
    const rack = teethFrom(9, 18);
    const problem = trainProblem('3/2', [stageOf('none', rack, rack, [12, 15])]);
    const pumps = Array.from({ length: 90 }, (_, order) => ({
      ratio: ONE,
      changed: changes([5, 5], [order, 5]),
      work: ZERO,
      failed: 0,
      order,
    }));
    const tied = { ...problem, pumps };
    const every = everyOption(tied, anything);
    expect(every.length).toBeGreaterThan(2 * 4096);
    expect(nestedLoops(tied, anything, 7).map(row)).toEqual(every.slice(0, 7).map(row));
  });
});

it('the combinations counted are those that pass, times the pumps [the definition]', () => {
  const problem = trainProblem('1', [stageOf('B', [9, 10, 11]), stageOf('B', [9, 10])]);
  const [first, ...rest] = problem.stages;
  if (first === undefined) throw new Error('no stage');
  const fewer = { ...first, pairs: first.pairs.map((pair, i) => ({ ...pair, failed: i < 4 ? 1 : 0 })) };
  expect(rawCount(problem)).toBe(36);
  expect(rawCount({ ...problem, stages: [fewer, ...rest] })).toBe(20);
});

it('limits are refused', () => {
  const problem = { ...trainProblem('1', []), limits: { low: ratioOf(-1, 10), high: new Fraction(0) } };
  expect(() => nestedLoops(problem, anything, 1)).toThrow(RangeError);
});

it('what is nearest is held, and what a float cannot tell from the last of it [the definition]', () => {
  const held = nearest(2, 1e-15);
  const dice = diceOf(5);
  for (let number = 10; number < 20_000; number++) held.take(1 + dice.below(1000) / 1000, number);
  held.take(-0.25, 1);
  held.take(0.25, 2);
  held.take(-0.25 - 1e-15, 3);
  held.take(0.25 + 1e-13, 4);
  expect([...held.numbers()].sort()).toEqual([1, 2, 3]);
});
