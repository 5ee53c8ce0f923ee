import { describe, expect, test } from 'vitest';
import { travel } from '../../../core/src/checks/travel.ts';
import type { StageRow } from '../../../core/src/file/machine.ts';
import { expectFinding, expectNotMade, inLine, judgePair, mm, only, pair, pitches, planOf, shopOf, stageRow } from '../planFixture.ts';

const CENTRE_NOW = ['machines', 0, 'stages', 0, 'centreNow'];
const shopWith = (driver: number, driven: number, more: Partial<StageRow>) =>
  shopOf(inLine([stageRow(driver, driven, { takeUp: pitches('0'), ...more })]));
const window = (from: string, to: string) => ({ centre: { from: mm(from), to: mm(to) } });

describe('shaft travel', () => {
  // The centres now are typed to a hundredth, so the travel is held to one.
  test.each([
    [
      '63 for 60 on 20 teeth, at 36 pitches; 114 fit',
      shopWith(20, 60, { centreNow: mm('457.2'), ...window('450', '458') }),
      pair(20, 63),
      -5.20751,
      '5.2 mm closer',
    ],
    [
      'the same, where 116 fit',
      shopWith(20, 60, { centreNow: mm('457.2'), ...window('458', '470') }),
      pair(20, 63),
      7.72711,
      '7.7 mm apart',
    ],
    [
      '16 for 18 on 52 teeth, the chain of 100 stays',
      shopWith(52, 18, { pitches: 100, centreNow: mm('406.93'), ...window('400', '415') }),
      pair(52, 16),
      5.73476,
      '5.7 mm apart',
    ],
    [
      'the same, two links out',
      shopWith(52, 18, { pitches: 100, centreNow: mm('406.93'), ...window('395', '410') }),
      pair(52, 16),
      -7.17409,
      '7.2 mm closer',
    ],
    [
      'the same, one link out with an offset link',
      shopWith(52, 18, { pitches: 100, centreNow: mm('406.93'), offsetLink: true, ...window('404', '408') }),
      pair(52, 16),
      -0.71796,
      '0.7 mm closer',
    ],
  ])('%s [worked apart from this program, exact geometry]', (_name, file, teeth, value, words) => {
    expectFinding(only(judgePair(travel, planOf(file), teeth)), file, {
      severity: 'notes',
      where: CENTRE_NOW,
      figure: { value, unit: 'mm' },
      limit: null,
      places: 2,
      names: [words],
    });
  });

  /** 18 to 18 teeth: 66 pitches are taut at 24 pitches, 304.8 mm. */
  const moved = (centreNow: string) =>
    judgePair(travel, planOf(shopWith(17, 17, { centreNow: mm(centreNow), pitches: 66, ...window('300', '306') })), pair(18, 18));

  test('0.05 mm is left alone, 0.06 mm is not [our choice]', () => {
    expect(moved('304.75')).toEqual([]);
    expect(moved('304.85')).toEqual([]);
    expect(only(moved('304.74')).what).toContain('apart');
    expect(only(moved('304.86')).what).toContain('closer');
  });
  test('nothing moves where no wheel changes, whatever the centre now, nor on fixed centres', () => {
    expect(
      judgePair(travel, planOf(shopWith(18, 18, { centreNow: mm('304'), pitches: 66, ...window('300', '306') })), pair(18, 18)),
    ).toEqual([]);
    const fixed = { centre: { fixed: mm('304.8') }, takeUp: pitches('1') };
    for (const now of [{}, { centreNow: mm('304.7') }])
      expect(judgePair(travel, planOf(shopWith(17, 17, { ...fixed, ...now })), pair(18, 18))).toEqual([]);
  });
  test('the chain that is on does not fit the centres: the one that does moves them', () => {
    const file = shopWith(18, 18, { centreNow: mm('298'), pitches: 64, ...window('300', '306') });
    expect(only(judgePair(travel, planOf(file), pair(18, 18))).figure).toEqual({ value: expect.closeTo(6.8, 9), unit: 'mm' });
  });
  test('the centre now, or what it may be, is not given: not made', () => {
    const now = shopWith(17, 17, { pitches: 66, ...window('300', '306') });
    expectNotMade(only(judgePair(travel, planOf(now), pair(18, 18))), now, CENTRE_NOW);
    const neither = shopWith(17, 17, { centreNow: mm('304') });
    expectNotMade(only(judgePair(travel, planOf(neither), pair(18, 18))), neither, ['machines', 0, 'stages', 0, 'centre']);
  });
});
