import { describe, expect, it } from 'vitest';
import { exactText } from '../../../core/src/ratio.ts';
import { countOptions } from '../../../core/src/search/index.ts';
import { anything, stageOf, teethFrom, trainProblem } from './racks.ts';
import { diceOf, randomProblem } from './randomProblem.ts';
import { everyCandidate, everyOption } from './slowTwin.ts';

describe('countOptions against listing every option [slow twin]', () => {
  it('agrees on 600 random problems, in one slice and in many', () => {
    for (let seed = 30_000; seed < 30_600; seed++) {
      const { problem, rules } = randomProblem(diceOf(seed));
      const every = everyOption(problem, rules);
      const expected = {
        ways: everyCandidate(problem).length,
        buildable: every.length,
        distinctRatios: new Set(every.map(({ ratio }) => exactText(ratio))).size,
        inside: problem.limits && every.filter(({ inside }) => inside).length,
      };
      for (const cellsPerSlice of [undefined, 40, 3])
        expect(countOptions(problem, rules, {}, cellsPerSlice), `seed ${seed}`).toEqual(expected);
    }
  });
});

describe('distinct ratios of a rack of consecutive teeth from 9 up', () => {
  it.each([
    [60, 1, 2397],
    [64, 1, 2697],
    [20, 2, 13_027],
    [40, 2, 143_299],
    [60, 2, 579_619],
  ])('%i wheels, %i stages make %i [separate program, from memory]', (wheels, stages, distinctRatios) => {
    const rack = teethFrom(9, 8 + wheels);
    const ways = wheels ** (2 * stages);
    const counts = countOptions(trainProblem('1', Array(stages).fill(stageOf('B', rack))), anything);
    expect(counts).toEqual({ ways, buildable: ways, distinctRatios, inside: null });
  });
});
