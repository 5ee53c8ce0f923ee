import { describe, expect, test } from 'vitest';
import { search } from '../../core/src/answer.ts';
import { choicesOf } from '../../core/src/choices.ts';
import { layOption } from '../../core/src/layOut.ts';
import { offRatio } from '../../core/src/mixRatio.ts';
import { triedRatios } from '../../core/src/nearRatios.ts';
import type { Plan } from '../../core/src/plan.ts';
import { type Fraction, ratioOf } from '../../core/src/ratio.ts';
import { findOptions } from '../../core/src/search/index.ts';
import { triedByVolume } from '../../core/src/triedRatio.ts';
import { say } from './planFixture.ts';
import { demoPlan } from './sheet/demoSheet.ts';

const KEEP = 8;
const e12 = demoPlan({ selection: { machine: 'bench-1', material: 'e12' } });
const u40 = demoPlan({ selection: { machine: 'bench-2', material: 'u40', anyPump: true } });

/** What the whole search lists for another target on the same machine: every ratio once, with its first option. */
function listed(plan: Plan, wanted: Fraction) {
  const { problem, rules, teethOf } = choicesOf({ ...plan, mix: { ...plan.mix, wantedBPerA: wanted } });
  const { options } = findOptions(problem, rules, 200);
  return options
    .filter(({ ratio }, index) => !options.slice(0, index).some((before) => before.ratio.equals(ratio)))
    .slice(0, KEEP)
    .map((option) => ({
      bPerA: option.ratio.toFraction(),
      offRatio: option.offRatio.toFraction(),
      inside: option.inside,
      teeth: teethOf(option),
      partsChanged: option.changed,
    }));
}

describe.each([
  ['E12 on Bench 1', e12],
  ['U40 on Bench 2 with any pump', u40],
])('near ratios: %s', (_name, plan) => {
  const tried = triedRatios(plan);

  test.each([
    ['its own', ratioOf(1, 1)],
    ['a tenth more B', ratioOf(11, 10)],
    ['a fifth less B', ratioOf(4, 5)],
    ['far off', ratioOf(5, 1)],
  ])('%s target lists what the whole search lists [findOptions]', (_what, times) => {
    const wanted = plan.mix.wantedBPerA.mul(times);
    const near = tried.near(wanted, KEEP).map(({ bPerA, offRatio: e, inside, first, partsChanged }) => ({
      bPerA: bPerA.toFraction(),
      offRatio: e.toFraction(),
      inside,
      teeth: first.teeth,
      partsChanged,
    }));
    expect(near).toHaveLength(KEEP);
    expect(near).toEqual(listed(plan, wanted));
  });
  test('the first option of each makes its ratio and can be built', () => {
    const wanted = plan.mix.wantedBPerA.mul(ratioOf(9, 10));
    for (const { bPerA, offRatio: e, first, partsChanged } of tried.near(wanted, KEEP)) {
      const option = layOption(plan, first, say);
      expect(option.bPerA.equals(bPerA)).toBe(true);
      expect(offRatio(option.bPerA, wanted).equals(e)).toBe(true);
      expect(option.changed).toBe(partsChanged);
      expect(option.findings.filter(({ severity }) => severity === 'blocks')).toEqual([]);
    }
  });
});

test('the plan’s own ratio gives the first option of its search', () => {
  const [nearest] = triedRatios(e12).near(triedByVolume(e12, ratioOf(389, 1000)), 1);
  expect(nearest?.first).toEqual(search(e12, {}).options[0]);
});

test('where nothing can be built there is nothing near', () => {
  const pumps = e12.sides.A.pumps.map((pump) => ({ ...pump, speedFrom_rev_per_s: { known: true as const, value: ratioOf(1000, 1) } }));
  const [first, ...more] = pumps;
  if (first === undefined) throw new Error('no pump');
  const sides = { ...e12.sides, A: { ...e12.sides.A, pumps: [first, ...more] as const } };
  expect(triedRatios({ ...e12, sides }).near(e12.mix.wantedBPerA, KEEP)).toEqual([]);
});
