import { describe, expect, test } from 'vitest';
import { workFacts } from '../../core/src/facts/workFacts.ts';
import { planOption } from '../../core/src/option.ts';
import type { Minutes, Teeth } from '../../core/src/plan.ts';
import { exactText, ratioOf, whole } from '../../core/src/ratio.ts';
import { fittedPumps, fittedTeeth } from '../../core/src/train.ts';
import { changesOf, workOf } from '../../core/src/work.ts';
import { inLine, mm, pair, pitches, planOf, say, shopOf, stageRow } from './planFixture.ts';

const min = (minutes: number) => whole(60 * minutes);
const STARTING: Minutes = { sprocket_s: min(12), chainLength_s: min(10), centre_s: min(3), pump_s: min(90) };

describe('work, counts times minutes [arithmetic on our own starting values]', () => {
  test('two sprockets, a chain length and a centre: 24 + 10 + 3 = 37 min, the example of the docstring', () => {
    const { kinds, total } = workOf(STARTING, { sprocket: 2, chainLength: 1, centre: 1, pump: 0 });
    expect([kinds.sprocket, kinds.chainLength, kinds.centre, kinds.pump, total].map(({ value }) => exactText(value))).toEqual([
      '1440/1',
      '600/1',
      '180/1',
      '0/1',
      '2220/1',
    ]);
  });
  test('sevenths of a minute add up to whole minutes, exactly', () => {
    const odd: Minutes = { ...STARTING, sprocket_s: ratioOf(60, 7), pump_s: ratioOf(180, 7) };
    expect(exactText(workOf(odd, { sprocket: 4, chainLength: 0, centre: 0, pump: 1 }).total.value)).toBe('60/1');
  });
});

/** 17 to 17 teeth: 66 pitches are taut at 311.15 mm. */
const LAID = { pitches: 66, centreNow: mm('311.15'), centre: { from: mm('300'), to: mm('320') }, takeUp: pitches('0') };
const plan = planOf(shopOf(inLine([stageRow(17, 17, LAID), stageRow(17, 17, LAID)])));
const facts = (...teeth: readonly Teeth[]) =>
  workFacts(plan, planOption(plan, fittedPumps(plan), teeth, say), say).facts.map(({ id, figure, note }) =>
    [id, figure, note].join('; ').replaceAll('\u00a0', ' '),
  );

describe('minutes by kind and total', () => {
  test('20 to 20 teeth want 68 pitches at 304.8 mm, 18 to 18 keep 66; both stages together', () => {
    expect(facts(pair(20, 20), pair(18, 18))).toEqual([
      'sprocket; 48.0 min; 4, 12.0 min each',
      'chainLength; 10.0 min; 1, 10.0 min each',
      'centre; 6.0 min; 2, 3.0 min each',
      'total; 64.0 min; ',
    ]);
  });
  test('what is fitted needs none', () => {
    expect(facts(...fittedTeeth(plan))).toEqual(['total; 0.0 min; ']);
  });
  test('the working of the total rests on those of the kinds', () => {
    const option = planOption(plan, fittedPumps(plan), [pair(17, 18), pair(17, 17)], say);
    const { total } = workOf(plan.minutes, changesOf(plan, option.pumps, option.stages));
    expect(total.put.map(([letter, { what }]) => `${letter}: ${what}`)).toEqual([
      's: sprockets',
      'l: chain lengths',
      'c: centre settings',
      'p: pumps',
    ]);
    expect(Number(total.value.valueOf())).toBe(60 * (12 + 3));
  });
});
