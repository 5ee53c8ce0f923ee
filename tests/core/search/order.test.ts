import { describe, expect, it } from 'vitest';
import { exactText, Fraction, ONE, ratioOf, whole, ZERO } from '../../../core/src/ratio.ts';
import { bestPerChange, countOptions, findOptions, type Pair, type PumpPair, type SearchProblem } from '../../../core/src/search/index.ts';
import { anything, onePump, row, trainProblem } from './racks.ts';
import { everyOption } from './slowTwin.ts';
import { TUNINGS } from './tunings.ts';

const pair = (driver: number, driven: number, changed: 0 | 1 | 2 = 2): Pair => ({
  driver,
  driven,
  changed,
  work: whole(changed),
  failed: 0,
});
const oneStage = (wanted: string, pairs: readonly Pair[]): SearchProblem => trainProblem(wanted, [{ effect: 'B', pairs }]);
const ratios = (problem: SearchProblem, keep = 20): readonly string[] =>
  findOptions(problem, anything, keep).options.map(({ ratio }) => exactText(ratio));

describe('order of the options [the definition]', () => {
  it('0.9 and 1.1 tie at 1, so that the parts changed decide', () => {
    expect(ratios(oneStage('1', [pair(18, 20, 2), pair(22, 20, 1)]))).toEqual(['11/10', '9/10']);
    expect(ratios(oneStage('1', [pair(18, 20, 1), pair(22, 20, 2)]))).toEqual(['9/10', '11/10']);
  });
  it('both of a tie are known of when only one is kept', () => {
    const { options, more } = findOptions(oneStage('1', [pair(18, 20), pair(22, 20)]), anything, 1);
    expect([options.map(row).length, more]).toEqual([1, true]);
  });
  it('an option inside comes before a nearer one outside, bounds included', () => {
    const problem = {
      ...oneStage('1', [pair(19, 20), pair(23, 20), pair(24, 20)]),
      limits: { low: ratioOf(-1, 100), high: ratioOf(3, 20) },
    };
    expect(ratios(problem)).toEqual(['23/20', '19/20', '6/5']);
    expect(findOptions(problem, anything, 5, {}, 'inside').options.map(({ inside }) => inside)).toEqual([true]);
  });
  it('purchases decide before pumps, pumps before teeth', () => {
    const pumps: readonly PumpPair[] = [7, 3].map((order) => ({ ratio: ONE, changed: 0, work: ZERO, failed: 0, order }));
    const problem = { ...oneStage('1', [pair(30, 30), pair(20, 20), pair(25, 25)]), pumps };
    const rules = { admit: ({ pump, pairs }: { pump: number; pairs: readonly number[] }) => (pump === 0 && pairs[0] === 0 ? 0 : 1) };
    const order = findOptions(problem, rules, 10).options.map(({ pump, pairs }) => [pump, pairs[0]]);
    expect(order).toEqual([
      [0, 0],
      [1, 1],
      [1, 2],
      [1, 0],
      [0, 1],
      [0, 2],
    ]);
  });
  it('without limits nothing is called inside', () => {
    const problem = oneStage('1', [pair(20, 20)]);
    expect(findOptions(problem, anything, 1).options[0]?.inside).toBeNull();
    expect(findOptions(problem, anything, 1, {}, 'inside')).toEqual({ options: [], more: false });
  });
  it('one part of a tie may be heavy and the other not', () => {
    // the one option of 9/10 comes before all but the first of 11/10
    const many = [11, 22, 33, 44, 55, 66].map((teeth) => pair(teeth, (teeth / 11) * 10));
    const problem = oneStage('1', [pair(18, 20), ...many]);
    for (const [name, tuning] of TUNINGS) {
      const { options } = findOptions(problem, anything, 1, {}, 'all', tuning);
      expect(
        options.map(({ ratio }) => exactText(ratio)),
        name,
      ).toEqual(['11/10']);
    }
  });
});

describe('ratios nearer to one another than floats can tell', () => {
  // the second pair of ratios: n d' - d n' is 2^32, so that residues alone would call them equal
  it.each([
    [ratioOf(10000001n, 10000000n), ratioOf(10000000n, 9999999n)],
    [ratioOf(10n ** 25n + 1n + 2n ** 32n, 10n ** 25n + 1n), ONE],
    [new Fraction('1.00000000000000000000000000000000000001'), ONE],
  ])('%s and %s stay apart and in order [integers]', (a, b) => {
    const pumps = [a, b].map((ratio, order): PumpPair => ({ ratio, changed: 0, work: ZERO, failed: 0, order }));
    const problem: SearchProblem = { ...oneStage('1.0000001', [pair(20, 20), pair(30, 30), pair(21, 20)]), pumps };
    const expected = everyOption(problem, anything);
    expect(countOptions(problem, anything).distinctRatios).toBe(4);
    for (const [name, tuning] of TUNINGS)
      expect(findOptions(problem, anything, 20, {}, 'all', tuning).options.map(row), name).toEqual(expected.map(row));
  });
});

describe('no open stage', () => {
  const pumps = [2, 1, 3].map(
    (size, order): PumpPair => ({ ratio: ratioOf(size, 2), changed: order === 0 ? 0 : 1, work: ZERO, failed: 0, order }),
  );
  const problem: SearchProblem = { stages: [], pumps, fixed: ratioOf(20, 30), wanted: ratioOf(2, 5), limits: null };
  it('ranks the pumps alone [arithmetic: 1/3, 2/3 and 1 against 2/5]', () => expect(ratios(problem)).toEqual(['1/3', '2/3', '1/1']));
  it('has a best for no and for one changed part', () => {
    expect(bestPerChange(problem, anything).map((option) => option && exactText(option.ratio))).toEqual(['2/3', '1/3', null]);
  });
});

it('a stage that both pumps share multiplies the options and not the ratio', () => {
  const pairs = [pair(20, 40), pair(30, 40), pair(40, 40)];
  const problem: SearchProblem = {
    stages: [{ effect: 'none', pairs }],
    pumps: onePump,
    fixed: ratioOf(1, 2),
    wanted: ratioOf(1, 2),
    limits: null,
  };
  expect(ratios(problem)).toEqual(['1/2', '1/2', '1/2']);
  expect(countOptions(problem, anything)).toEqual({ ways: 3, buildable: 3, distinctRatios: 1, inside: null });
});
