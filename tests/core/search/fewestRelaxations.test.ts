import { describe, expect, it } from 'vitest';
import { ONE, ratioOf, ZERO } from '../../../core/src/ratio.ts';
import { fewestRelaxations, type Rules, type SearchProblem } from '../../../core/src/search/index.ts';
import { anything, onePump, stockRule } from './racks.ts';
import { diceOf, randomProblem } from './randomProblem.ts';
import { everyRelaxation } from './slowTwin.ts';

describe('fewestRelaxations against trying every set of checks [slow twin]', () => {
  it.each(Array.from({ length: 4 }, (_, i) => 20_000 + i * 100))('agrees on 100 random problems from seed %i', (from) => {
    for (let seed = from; seed < from + 100; seed++) {
      const dice = diceOf(seed);
      const { problem, rules } = randomProblem(dice, { bits: 4, percent: [60, 90, 100] });
      // the fifth check is the rule across stages
      const admitWith = (mask: number): Rules => ((mask >> 4) & 1 ? anything : rules);
      const expected = [...everyRelaxation(problem, admitWith, 5)].sort((a, b) => a - b);
      const found = [...fewestRelaxations(problem, admitWith, 5)].sort((a, b) => a - b);
      expect(found, `seed ${seed}`).toEqual(expected);
    }
  });
});

describe('fewestRelaxations', () => {
  const blockedBy = (...failed: readonly number[]): SearchProblem => ({
    stages: [{ effect: 'B', pairs: failed.map((bits) => ({ driver: 20, driven: 20, changed: 2, work: ZERO, failed: bits })) }],
    pumps: onePump,
    fixed: ONE,
    wanted: ONE,
    limits: { low: ratioOf(-1, 100), high: ratioOf(1, 100) },
  });

  it('names each smallest set once, and no set that holds another [the definition]', () => {
    expect(fewestRelaxations(blockedBy(0b0011, 0b0100, 0b0101, 0b1011), () => anything, 4)).toEqual([0b0100, 0b0011]);
  });

  it('is the empty set where something fits as it is [the definition]', () => {
    expect(fewestRelaxations(blockedBy(0b1, 0), () => anything, 2)).toEqual([0]);
  });

  it('finds no set of more than three [our choice]', () => {
    expect(fewestRelaxations(blockedBy(0b1111), () => anything, 4)).toEqual([]);
    expect(fewestRelaxations(blockedBy(0b0111), () => anything, 4)).toEqual([0b0111]);
  });

  it('is nothing where the teeth do not reach, and nothing without limits [the definition]', () => {
    expect(fewestRelaxations({ ...blockedBy(1), wanted: ratioOf(3, 2) }, () => anything, 1)).toEqual([]);
    expect(fewestRelaxations({ ...blockedBy(1), limits: null }, () => anything, 1)).toEqual([]);
  });

  it('counts a rule across stages as a check of its own [the definition]', () => {
    const problem = blockedBy(0b01);
    expect(fewestRelaxations(problem, (mask) => (mask & 0b10 ? anything : stockRule(problem, [20])), 2)).toEqual([0b11]);
  });

  it('refuses more bits than a mask holds', () => expect(() => fewestRelaxations(blockedBy(0), () => anything, 32)).toThrow(RangeError));
});
