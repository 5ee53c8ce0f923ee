import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Selection } from '../../core/src/file/resolve.ts';
import { float } from '../../core/src/ratio.ts';
import { demoPlan, E12, ONE, planned, short } from './demoPlan.ts';
import { GONE } from './shop.ts';

describe('what a search may use', () => {
  const choice = (search: object | undefined, more: Selection = {}) =>
    demoPlan({ ...E12, ...more }, [[...ONE, 'search'], search ?? GONE]).choice;
  const range = { from: 15, to: 35 };
  test('the rack, the rack and purchases, or any wheel', () => {
    expect(choice(undefined)).toEqual({ wheels: 'rack', purchases: 0, teeth: null, anyPump: false });
    expect(choice({ wheels: 'rack', teeth: range, anyPump: true })).toEqual({ wheels: 'rack', purchases: 0, teeth: null, anyPump: true });
    expect(choice({ wheels: 'rack and purchases' })).toEqual({ wheels: 'rack and purchases', purchases: 1, teeth: null, anyPump: false });
    expect(choice({ wheels: 'rack and purchases', purchases: 3, teeth: range })).toMatchObject({ purchases: 3, teeth: range });
    expect(choice({ wheels: 'any', teeth: range })).toEqual({
      wheels: 'any',
      purchases: Number.POSITIVE_INFINITY,
      teeth: range,
      anyPump: false,
    });
  });
  test('what is asked for goes before what the machine says', () => {
    const other = { from: 13, to: 40 };
    expect(choice({ wheels: 'any', teeth: range }, { purchases: 2 })).toMatchObject({
      wheels: 'rack and purchases',
      purchases: 2,
      teeth: range,
    });
    expect(choice({ wheels: 'any', teeth: range }, { teeth: other })).toMatchObject({ wheels: 'any', teeth: other });
    expect(choice(undefined, { teeth: other })).toMatchObject({ wheels: 'any', teeth: other });
    expect(choice({ wheels: 'rack and purchases', purchases: 3 }, { purchases: 1, teeth: other })).toMatchObject({
      purchases: 1,
      teeth: other,
    });
    expect(choice({ anyPump: false }, { anyPump: true }).anyPump).toBe(true);
    expect(choice({ anyPump: true }, { anyPump: false }).anyPump).toBe(false);
  });
  test('whether measured delivery counts: what is asked for, else what the machine says', () => {
    const counted = (search: unknown, asked: Selection = {}) => {
      const { A, B } = demoPlan({ ...E12, ...asked }, [[...ONE, 'search'], search]).sides;
      return [...A.pumps, ...B.pumps].map(({ asMeasured }) => asMeasured);
    };
    expect(counted({})).toEqual([false, false]);
    expect(counted({ asMeasured: true })).toEqual([true, true]);
    expect(counted({ anyPump: true }, { asMeasured: true })).toEqual([true, true]);
    expect(counted({ asMeasured: true }, { asMeasured: false })).toEqual([false, false]);
  });
  test('wheels to buy that the search would not buy are noted', () => {
    const plan = demoPlan(E12, [[...ONE, 'search'], { purchases: 2 }]);
    expect(short(plan.findings)).toEqual([
      'machine.purchases notes: A number of wheels to buy is given, but the search takes wheels from the rack only: nothing is bought.',
    ]);
    expect(plan.choice.purchases).toBe(0);
    expect(short(demoPlan(E12, [[...ONE, 'search'], { wheels: 'rack and purchases', purchases: 2 }]).findings)).toEqual([]);
  });
});

test.each(['four-gear', 'three-pair'])('%s: a published problem with wheels of 12 to 60 teeth is a plan of any wheels', (name) => {
  const plan = planned(JSON.parse(readFileSync(new URL(`../examples/${name}.ratiowright`, import.meta.url), 'utf8')), {});
  expect(plan.choice).toEqual({ wheels: 'any', purchases: Number.POSITIVE_INFINITY, teeth: { from: 12, to: 60 }, anyPump: false });
  expect(1 / float(plan.mix.wantedBPerA)).toBe(6.931);
  expect(plan.stages.every((stage) => stage.open)).toBe(true);
});
