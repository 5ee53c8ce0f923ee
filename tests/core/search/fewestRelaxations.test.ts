import { describe, expect, it } from 'vitest';
import { ONE, ratioOf, ZERO } from '../../../core/src/ratio.ts';
import { type Candidate, countOptions, fewestRelaxations, type ReasonEffort, type SearchProblem } from '../../../core/src/search/index.ts';
import { anything, onePump, stageOf, stockRule, teethFrom, trainProblem } from './racks.ts';
import { diceOf, randomProblem } from './randomProblem.ts';
import { everyRelaxation } from './slowTwin.ts';

describe('fewestRelaxations against trying every set of checks [slow twin]', () => {
  it.each(Array.from({ length: 4 }, (_, i) => 20_000 + i * 100))('agrees on 100 random problems from seed %i', (from) => {
    for (let seed = from; seed < from + 100; seed++) {
      const dice = diceOf(seed);
      const { problem, rules } = randomProblem(dice, { bits: 4, percent: [60, 90, 100] });
      // the fifth check is the rule across stages, and the sixth another, that goes by the place of the pumps
      const failures = (candidate: Candidate): number => Number(rules.admit(candidate) === null) * 16 + (candidate.pump % 2) * 32;
      const expected = [...everyRelaxation(problem, failures, 6)].sort((a, b) => a - b);
      const { masks, more } = fewestRelaxations(problem, failures, 6);
      expect({ masks: [...masks].sort((a, b) => a - b), more }, `seed ${seed}`).toEqual({ masks: expected, more: false });
      // what is seen before the effort is spent works, though it need not be the smallest
      const early = fewestRelaxations(problem, failures, 6, {}, { asked: dice.below(6), looked: Infinity });
      for (const mask of early.masks)
        expect(
          expected.some((set) => (set & mask) === set),
          `seed ${seed}, ${mask}`,
        ).toBe(true);
      if (!early.more)
        expect(
          [...early.masks].sort((a, b) => a - b),
          `seed ${seed}`,
        ).toEqual(expected);
    }
  });
});

const none = (): number => 0;

describe('the work of fewestRelaxations', () => {
  const wide: SearchProblem = {
    ...trainProblem(ONE, [stageOf('B', teethFrom(10, 40)), stageOf('A', teethFrom(10, 14))]),
    limits: { low: ratioOf(-1, 2), high: ONE },
  };
  const twelve: SearchProblem = {
    ...wide,
    stages: wide.stages.map((stage) => ({ ...stage, pairs: stage.pairs.map((pair, i) => ({ ...pair, failed: 2 ** (i % 4) })) })),
  };
  const inside = countOptions(wide, anything).inside ?? 0;
  /** How often the checks across the stages were asked, and what was found. */
  const asked = (problem: SearchProblem, failures: number, effort?: ReasonEffort) => {
    const candidates: string[] = [];
    const found = fewestRelaxations(
      problem,
      ({ pump, pairs }) => {
        candidates.push([pump, ...pairs].join());
        return failures;
      },
      12,
      {},
      effort,
    );
    return { times: candidates.length, twice: candidates.length - new Set(candidates).size, found };
  };

  it('asks no option twice, though it fails another check under every set that is tried', () => {
    expect(inside).toBeGreaterThan(15_000);
    // four checks too many, so that no set is ever found
    expect(asked(wide, 0b1111 << 8)).toEqual({ times: inside, twice: 0, found: { masks: [], more: false } });
    const { times, twice, found } = asked(twelve, 0b1111 << 8);
    expect([twice, found]).toEqual([0, { masks: [], more: false }]);
    expect(times).toBe(inside);
  });
  it('asks one option where all of them fail the same, known of their pumps beforehand', () => {
    expect(asked({ ...wide, pumps: wide.pumps.map((pump) => ({ ...pump, failed: 1 << 8 })) }, 1 << 8).times).toBe(1);
  });
  it('ends once its effort is spent, and says so', () => {
    const { times, found } = asked(wide, 0b11 << 8, { asked: 100, looked: Infinity });
    expect([times, found]).toEqual([100, { masks: [0b11 << 8], more: true }]);
    expect(asked(wide, 0b11 << 8, { asked: Infinity, looked: 10 })).toEqual({
      times: 10,
      twice: 0,
      found: { masks: [0b11 << 8], more: true },
    });
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
    expect(fewestRelaxations(blockedBy(0b0011, 0b0100, 0b0101, 0b1011), none, 4).masks).toEqual([0b0100, 0b0011]);
  });

  it('is the empty set where something fits as it is [the definition]', () => {
    expect(fewestRelaxations(blockedBy(0b1, 0), none, 2).masks).toEqual([0]);
  });

  it('finds no set of more than three [our choice]', () => {
    expect(fewestRelaxations(blockedBy(0b1111), none, 4).masks).toEqual([]);
    expect(fewestRelaxations(blockedBy(0b0111), none, 4).masks).toEqual([0b0111]);
  });

  it('is nothing where the teeth do not reach, and nothing without limits [the definition]', () => {
    expect(fewestRelaxations({ ...blockedBy(1), wanted: ratioOf(3, 2) }, none, 1)).toEqual({ masks: [], more: false });
    expect(fewestRelaxations({ ...blockedBy(1), limits: null }, none, 1)).toEqual({ masks: [], more: false });
  });

  it('counts a rule across stages as a check of its own [the definition]', () => {
    const problem = blockedBy(0b01);
    const stock = stockRule(problem, [20]);
    const failures = (candidate: Candidate): number => (stock.admit(candidate) === null ? 0b10 : 0);
    expect(fewestRelaxations(problem, failures, 2).masks).toEqual([0b11]);
  });

  it('refuses more bits than a mask holds', () => expect(() => fewestRelaxations(blockedBy(0), none, 32)).toThrow(RangeError));
});
