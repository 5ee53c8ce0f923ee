import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { search } from '../../core/src/answer.ts';
import { checksIn, choicesOf } from '../../core/src/choices.ts';
import type { MachineRow, StageRow } from '../../core/src/file/machine.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import { isBlocked, planOption } from '../../core/src/option.ts';
import type { Plan, Teeth } from '../../core/src/plan.ts';
import { exactText } from '../../core/src/ratio.ts';
import type { Candidate, SearchProblem } from '../../core/src/search/index.ts';
import { fittedPumps, fittedTeeth } from '../../core/src/train.ts';
import { inLine, mm, pair, pieceRow, pitches, planOf, pumpRow, say, shopOf, stageRow } from './planFixture.ts';

/** 17 to 17 teeth: 66 pitches are taut at 311.15 mm. */
const LAID = { pitches: 66, centreNow: mm('311.15'), centre: { from: mm('300'), to: mm('320') }, takeUp: pitches('0') };
const planWith = (...stages: readonly Partial<StageRow>[]) =>
  planOf(shopOf(inLine(stages.map((more) => stageRow(17, 17, { ...LAID, ...more })))));
const without = <Key extends keyof typeof LAID>(key: Key): Partial<StageRow> => {
  const { [key]: _left, ...rest } = LAID;
  return rest;
};
const bare = (more: Partial<StageRow>) => planOf(shopOf(inLine([stageRow(17, 17, more)])));
const minutes = (plan: Plan, ...teeth: readonly Teeth[]) => planOption(plan, fittedPumps(plan), teeth, say).work_s / 60;

describe('minutes of work, 12 a sprocket, 10 a chain length, 3 a centre, 90 a pump [our choice of starting values]', () => {
  test.each([
    ['two sprockets, chain and centre: 20 to 20 teeth want 68 pitches at 304.8 mm', pair(20, 20), 37],
    ['two sprockets and centre: 18 to 18 teeth, 66 pitches at 304.8 mm', pair(18, 18), 27],
    ['two sprockets and chain: 21 to 21 teeth, 70 pitches at 311.15 mm again', pair(21, 21), 34],
    ['one sprocket and centre, the chain stays', pair(17, 18), 15],
    ['nothing', pair(17, 17), 0],
  ])('%s', (_name, teeth, expected) => {
    expect(minutes(planWith({}), teeth)).toBe(expected);
  });
  test('a centre that moves by 0.05 mm is not set, by 0.06 mm it is', () => {
    const takenUp = { centre: { from: mm('300'), to: mm('304.8') } };
    expect(minutes(planWith({ ...takenUp, centreNow: mm('304.75') }), pair(18, 18))).toBe(24);
    expect(minutes(planWith({ ...takenUp, centreNow: mm('304.74') }), pair(18, 18))).toBe(27);
  });
  test('on fixed centres none is set: 68 pitches with a slack of one', () => {
    expect(minutes(planWith({ centre: { fixed: mm('311.15') }, takeUp: pitches('1') }), pair(18, 18))).toBe(34);
  });
  test('where the centre now is not given it has to be set, where the present pitches are not given the chain has to be counted', () => {
    expect(minutes(bare(without('centreNow')), pair(18, 18))).toBe(27);
    expect(minutes(bare(without('pitches')), pair(18, 18))).toBe(37);
    expect(minutes(bare(without('pitches')), pair(17, 17))).toBe(0);
  });
  test('of two stages the one that is left alone costs nothing', () => {
    expect(minutes(planWith({}, {}), pair(20, 20), pair(17, 17))).toBe(37);
    expect(minutes(planWith({}, {}), pair(20, 20), pair(20, 20))).toBe(74);
  });
  test('wheels that stay, on a chain that does not fit its centres: the chain and the centre are still work', () => {
    expect(minutes(planWith({ pitches: 60, centreNow: mm('273.05') }), pair(17, 17))).toBe(13);
  });
  test('a pump, and minutes of the shop’s own', () => {
    const machine = inLine([stageRow(17, 17, LAID)]);
    const two: MachineRow = {
      ...machine,
      B: { ...machine.B, pumps: [...machine.B.pumps, pumpRow('pump-c', '8')] },
      minutes: { sprocket: { value: '5', unit: 'min' }, pump: { value: '1 1/2', unit: 'h' } },
    };
    const plan = planOf(shopOf(two));
    const [, other] = plan.sides.B.pumps;
    if (other === undefined) throw new Error('side B has two pumps');
    const option = planOption(plan, { ...fittedPumps(plan), B: other }, [pair(18, 18)], say);
    expect([option.work_s / 60, option.changed]).toEqual([2 * 5 + 3 + 90, 3]);
  });
});

describe('limits are inclusive and compared exactly, as fractions [definition]', () => {
  const insideAt = (low: string, high: string) => {
    const limits = { definition: '% of B per A' as const, low, high };
    const plan = planOf(shopOf(inLine([stageRow(20, 21)]), [], { limits }));
    const option = planOption(plan, fittedPumps(plan), fittedTeeth(plan), say);
    return [exactText(option.offRatio), option.inside];
  };
  test('20 to 21 teeth are 1/21 B-lean of 2 : 1', () => {
    expect(insideAt('-100/21', '0')).toEqual(['-1/21', true]);
    expect(insideAt('-4.7619047619047619', '0')).toEqual(['-1/21', false]);
    expect(insideAt('-4.762', '0')).toEqual(['-1/21', true]);
  });
  test('without limits no option is called inside', () => {
    const plan = planWith({});
    expect(planOption(plan, fittedPumps(plan), [pair(17, 17)], say).inside).toBeNull();
  });
});

describe('travel of an option', () => {
  test('plus is apart, minus is closer, none on fixed centres, not known without the centre now', () => {
    const travel = (plan: Plan, teeth: Teeth) => planOption(plan, fittedPumps(plan), [teeth], say).stages[0]?.travel_m;
    expect(travel(planWith({}), pair(18, 18))).toBeCloseTo(-0.00635, 12);
    expect(travel(planWith({ centreNow: mm('301') }), pair(18, 18))).toBeCloseTo(0.0038, 12);
    expect(travel(planWith({ centre: { fixed: mm('311.15') }, centreNow: mm('311'), takeUp: pitches('1') }), pair(18, 18))).toBe(0);
    expect(travel(bare(without('centreNow')), pair(18, 18))).toBeNull();
  });
});

/** Every candidate of a problem. */
function candidates({ stages, pumps }: SearchProblem): readonly Candidate[] {
  const pairs = stages.reduce<readonly (readonly number[])[]>(
    (lists, stage) => lists.flatMap((list) => [...stage.pairs.keys()].map((at) => [...list, at])),
    [[]],
  );
  return [...pumps.keys()].flatMap((pump) => pairs.map((list) => ({ pump, pairs: list })));
}

describe('what the search takes as blocked is what the findings block', () => {
  const demo = readShopFile(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
  if (!demo.ok) throw new Error('the example opens');
  const guarded = { teeth: 20, mayChange: false, guard: mm('80') };
  const closed = inLine([stageRow(guarded, guarded), stageRow(20, 20)]);
  const PLANS: readonly (readonly [string, Plan])[] = [
    ['the example', planOf(demo.value, { machine: 'bench-1', material: 'e12' })],
    [
      'the example with one wheel to buy',
      planOf(demo.value, { machine: 'bench-1', material: 'l5', purchases: 1, teeth: { from: 13, to: 40 } }),
    ],
    [
      'a closed stage that clears its guard',
      planOf(
        shopOf(
          {
            ...closed,
            stages: closed.stages.map((stage) => ({
              ...stage,
              driver: { ...stage.driver, guard: mm('100') },
              driven: { ...stage.driven, guard: mm('100') },
            })),
          },
          [pieceRow(30, 1), pieceRow(40, 1)],
        ),
      ),
    ],
    ['a closed stage that does not', planOf(shopOf(closed, [pieceRow(30, 1)]))],
  ];

  test.each(PLANS)('%s', (_name, plan) => {
    const choices = choicesOf(plan);
    const all = candidates(choices.problem);
    for (const candidate of all) {
      const option = planOption(plan, choices.pumpsOf(candidate), choices.teethOf(candidate), say);
      const blocking = new Set(option.findings.filter(({ severity }) => severity === 'blocks').map(({ check }) => check));
      expect(new Set(checksIn(choices.failures(candidate)))).toEqual(blocking);
      expect(choices.purchases(candidate)).toBe(option.purchases);
    }
    const buildable = all.filter((candidate) => choices.failures(candidate) === 0);
    const found = search(plan, { count: true });
    expect(found.counts).toMatchObject({ ways: all.length, buildable: buildable.length });
    for (const { teeth } of found.options) expect(isBlocked(planOption(plan, fittedPumps(plan), teeth, say))).toBe(false);
  });
  test('a closed stage that fails a check leaves nothing to build, and says which', () => {
    const plan = planOf(shopOf(closed, [pieceRow(30, 1)]));
    const found = search(plan, {});
    expect(found.options).toEqual([]);
    expect(
      planOption(plan, fittedPumps(plan), fittedTeeth(plan), say).findings.filter(({ severity }) => severity === 'blocks'),
    ).toMatchObject([
      { check: 'slot.guard', where: ['machines', 0, 'stages', 0, 'driver', 'guard'] },
      { check: 'slot.guard', where: ['machines', 0, 'stages', 0, 'driven', 'guard'] },
    ]);
  });
});
