// The best for each number of changed parts: what a further change must buy to be a gain is our choice, and is worked out again here.
import { expect, test } from 'vitest';
import { search } from '../../core/src/answer.ts';
import { layOption } from '../../core/src/layOut.ts';
import type { PlannedOption } from '../../core/src/option.ts';
import { demoPlan } from '../file/demoPlan.ts';
import { say } from '../file/shop.ts';

/** Inside the limits goes before outside, then the smaller off-ratio. */
const isCloser = (one: PlannedOption, other: PlannedOption): boolean =>
  one.inside === other.inside ? one.offRatio.abs().compare(other.offRatio.abs()) < 0 : one.inside === true;

test.each([
  ['bench-1', 'e12'],
  ['bench-1', 'l5'],
  ['bench-2', 'e12'],
])('a change that brings nothing is marked: %s, %s', (machine, material) => {
  const plan = demoPlan({ machine, material });
  const best = search(plan, {}).best.map(({ changed, noGain, option }) => ({ changed, noGain, option: layOption(plan, option, say) }));
  expect(best.length).toBeGreaterThan(1);
  for (const [index, { changed, noGain, option }] of best.entries()) {
    expect(option.changed).toBe(changed);
    expect([changed, noGain]).toEqual([changed, best.slice(0, index).some((fewer) => !isCloser(option, fewer.option))]);
  }
});
