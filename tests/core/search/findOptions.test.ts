import { describe, expect, it } from 'vitest';
import { findOptions } from '../../../core/src/search/index.ts';
import { row } from './racks.ts';
import { diceOf, randomProblem } from './randomProblem.ts';
import { everyOption } from './slowTwin.ts';
import { TUNINGS } from './tunings.ts';

describe('findOptions against listing every option [slow twin]', () => {
  it.each(Array.from({ length: 12 }, (_, i) => i * 200))('agrees row for row on 200 random problems from seed %i', (from) => {
    for (let seed = from; seed < from + 200; seed++) {
      const dice = diceOf(seed);
      const { problem, rules } = randomProblem(dice);
      const keep = dice.pick([1, 2, 5, 10, 50]);
      const scope = dice.chance(30) ? 'inside' : 'all';
      const every = everyOption(problem, rules).filter(({ inside }) => scope === 'all' || inside);
      const expected = { options: every.slice(0, keep).map(row), more: every.length > keep };
      for (const [name, tuning] of TUNINGS) {
        const { options, more } = findOptions(problem, rules, keep, {}, scope, tuning);
        expect({ options: options.map(row), more }, `seed ${seed}, ${name}`).toEqual(expected);
      }
    }
  });
});
