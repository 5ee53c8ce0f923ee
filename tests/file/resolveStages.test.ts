import { describe, expect, test } from 'vitest';
import { demoPlan, E12, ONE, planned, refused } from './demoPlan.ts';
import { smallest } from './shop.ts';

describe('stages that a search may change', () => {
  const chain = (driver: object, driven: object) => ({
    id: 's1',
    kind: 'chain',
    size: '40',
    driver: { teeth: 20, ...driver },
    driven: { teeth: 20, ...driven },
  });
  /** Stages in a row; pump A sits behind `before` of them, pump B behind all. */
  const inLine = (stages: readonly object[], before: number, search: object = {}) =>
    smallest(
      { ratio: { basis: 'volume', parts: '2:1' } },
      {
        shafts: [
          { id: 'motor' },
          ...stages.map((_, i) => ({ id: `x${i}`, turnedBy: { shaft: i === 0 ? 'motor' : `x${i - 1}`, stage: `s${i}` } })),
        ],
        stages: stages.map((stage, i) => ({ ...stage, id: `s${i}` })),
        A: {
          shaft: before === 0 ? 'motor' : `x${before - 1}`,
          fitted: 'p',
          pumps: [{ id: 'p', displacement: { value: '1', unit: 'cc/rev' } }],
        },
        B: { shaft: `x${stages.length - 1}`, fitted: 'p', pumps: [{ id: 'p', displacement: { value: '1', unit: 'cc/rev' } }] },
        search,
      },
    );
  const open = (json: unknown) => planned(json, {}).stages.map((stage) => stage.open);
  const shut = { mayChange: false };

  test('a slot that may change opens its stage; what both pumps share stays shut unless it is asked for', () => {
    expect(open(inLine([chain({}, {}), chain(shut, {}), chain(shut, shut)], 0))).toEqual([true, true, false]);
    const shared = inLine([chain({}, {}), chain({}, {})], 1);
    expect(planned(shared, {}).stages.map((stage) => stage.turns)).toEqual(['both', 'B']);
    expect(open(shared)).toEqual([false, true]);
    expect(open(inLine([chain({}, {}), chain({}, {})], 1, { openShared: true }))).toEqual([true, true]);
  });
  test('a stage that turns no pump stays shut', () => {
    const fan = { id: 's9', kind: 'chain', size: '40', driver: { teeth: 20 }, driven: { teeth: 20 } };
    const { stages } = demoPlan(
      E12,
      [[...ONE, 'stages', 1], fan],
      [[...ONE, 'shafts', 2], { id: 'fan', turnedBy: { shaft: 'motor', stage: 's9' } }],
    );
    expect(stages.map(({ turns, open }) => [turns, open])).toEqual([
      ['B', true],
      ['neither', false],
    ]);
  });
  test('four at once are refused with both numbers; three are taken, and so are four of which one is shut', () => {
    const four = [0, 1, 2, 3].map(() => chain({}, {}));
    expect(refused(inLine(four, 0), {})).toEqual([
      'machines 0 stages: 4 stages may change, and 3 are the most a search takes on: close some of their slots.',
    ]);
    expect(open(inLine(four.slice(1), 0))).toEqual([true, true, true]);
    expect(open(inLine([...four.slice(1), chain(shut, shut)], 0))).toEqual([true, true, true, false]);
    expect(open(inLine(four, 1))).toEqual([false, true, true, true]);
  });

  describe('buying', () => {
    const buys = { wheels: 'rack and purchases', purchases: 2 };
    const limited = { teethFrom: 13, teethTo: 40 };
    const unsaid = (slots: string) =>
      `Say which teeth may be bought: give the search a range of teeth, or give teeth from and to for ${slots}.`;
    test('where nothing says with which teeth, the slots that lack their limits are named', () => {
      expect(refused(inLine([chain({}, {})], 0, buys), {})).toEqual([
        `machines 0 stages 0 driver teethFrom: ${unsaid('s0 driver, s0 driven')}`,
      ]);
      expect(refused(inLine([chain(limited, { teethFrom: 13 })], 0, buys), {})).toEqual([
        `machines 0 stages 0 driven teethTo: ${unsaid('s0 driven')}`,
      ]);
      expect(refused(inLine([chain({}, shut)], 0), { purchases: 1 })).toEqual([
        `machines 0 stages 0 driver teethFrom: ${unsaid('s0 driver')}`,
      ]);
    });
    test('a range, or limits on every slot that may change, says it', () => {
      const range = { from: 13, to: 40 };
      expect(planned(inLine([chain({}, {})], 0, { ...buys, teeth: range }), {}).choice.teeth).toEqual(range);
      expect(planned(inLine([chain({}, {})], 0, buys), { teeth: range, purchases: 1 }).choice.teeth).toEqual(range);
      for (const stage of [chain(limited, limited), chain(limited, shut), chain(shut, shut)]) {
        expect(planned(inLine([stage], 0, buys), {}).choice).toMatchObject({ purchases: 2, teeth: null });
      }
      // A shared stage is not opened, so nothing is bought for it.
      expect(planned(inLine([chain({}, {}), chain(limited, limited)], 1, buys), {}).choice.purchases).toBe(2);
    });
    test('any wheel without a range is any within the limits of the slots', () => {
      expect(planned(inLine([chain(limited, limited)], 0, { wheels: 'any' }), {}).choice).toMatchObject({ wheels: 'any', teeth: null });
      expect(refused(inLine([chain({}, {})], 0, { wheels: 'any' }), {})).toEqual([
        `machines 0 stages 0 driver teethFrom: ${unsaid('s0 driver, s0 driven')}`,
      ]);
    });
  });
});
