import { describe, expect, it } from 'vitest';
import { bestPerChange } from '../../../core/src/search/index.ts';
import { row } from './racks.ts';
import { diceOf, randomProblem } from './randomProblem.ts';
import { everyOption } from './slowTwin.ts';
import { TUNINGS } from './tunings.ts';

describe('bestPerChange against listing every option [slow twin]', () => {
  it.each(Array.from({ length: 4 }, (_, i) => 10_000 + i * 200))('agrees on 200 random problems from seed %i', (from) => {
    for (let seed = from; seed < from + 200; seed++) {
      const { problem, rules } = randomProblem(diceOf(seed));
      const every = everyOption(problem, rules);
      const changes = Array.from({ length: 2 * problem.stages.length + 3 }, (_, c) => c);
      const expected = changes.map((c) => row(every.find(({ changed }) => changed === c) ?? null));
      for (const [name, tuning] of TUNINGS) {
        expect(bestPerChange(problem, rules, {}, tuning).map(row), `seed ${seed}, ${name}`).toEqual(expected);
      }
    }
  });
});
