import { describe, expect, test } from 'vitest';
import { centre } from '../../../core/src/checks/centre.ts';
import type { StageRow } from '../../../core/src/file/machine.ts';
import { expectFinding, expectNotMade, inLine, judgePair, mm, only, pair, pitches, planOf, shopOf, stageRow } from '../planFixture.ts';

// 17 to 17 teeth, half-inch chain: N pitches are taut at (N - 17)/2 pitches, so 66 at 311.15 mm [plane geometry].

const CENTRE = ['machines', 0, 'stages', 0, 'centre'];
const shopWith = (more: Partial<StageRow>) => shopOf(inLine([stageRow(17, 17, more)]));
const window = (from: string, to: string, takeUp = '0') => ({ centre: { from: mm(from), to: mm(to) }, takeUp: pitches(takeUp) });
const judged = (more: Partial<StageRow>) => judgePair(centre, planOf(shopWith(more)), pair(17, 17));

describe('the taut centre within its window, limits included', () => {
  test('66 pitches just reach it from below and from above', () => {
    expect(judged(window('305', '311.15'))).toEqual([]);
    expect(judged(window('311.15', '316'))).toEqual([]);
  });
  test('a hundredth too long', () => {
    const file = shopWith(window('305', '311.14'));
    expectFinding(only(judgePair(centre, planOf(file), pair(17, 17))), file, {
      severity: 'blocks',
      where: CENTRE,
      figure: { value: 311.15, unit: 'mm' },
      limit: { value: 311.14, unit: 'mm' },
      names: ['66 pitches want 311.15 mm', 'the most is 311.14 mm', 'the take-up does not absorb the rest'],
    });
  });
  test('a hundredth too short', () => {
    const file = shopWith(window('311.16', '316'));
    expectFinding(only(judgePair(centre, planOf(file), pair(17, 17))), file, {
      severity: 'blocks',
      where: CENTRE,
      figure: { value: 311.15, unit: 'mm' },
      limit: { value: 311.16, unit: 'mm' },
      names: ['66 pitches want 311.1 mm', 'the least is 311.2 mm'],
    });
  });
});

describe('the take-up absorbs the slack left at the far end', () => {
  /** At 307.975 mm 65.5 pitches are taut: 66 leave half a pitch. */
  test('half a pitch of half a pitch', () => {
    const file = shopWith(window('305', '307.975', '0.5'));
    expectFinding(only(judgePair(centre, planOf(file), pair(17, 17))), file, {
      severity: 'notes',
      where: CENTRE,
      figure: { value: 0.5, unit: 'pitches' },
      limit: { value: 0.5, unit: 'pitches' },
      names: ['absorbs 0.50 of its 0.50 pitches'],
    });
  });
  test('a thousandth of a pitch less will not do', () => {
    expect(only(judged(window('305', '307.975', '0.499')))).toMatchObject({ severity: 'blocks', limit: { value: 307.975 } });
  });
  test('a take-up that is not given: the slack is named, and nobody says that it is absorbed', () => {
    const finding = only(judged({ centre: { from: mm('305'), to: mm('307.975') } }));
    expect(finding).toMatchObject({ severity: 'notes', missing: true, where: ['machines', 0, 'stages', 0, 'takeUp'], limit: null });
    expect(finding.figure).toEqual({ value: expect.closeTo(0.5, 9), unit: 'pitches' });
    expect(finding.what).toContain('0.50 pitches of slack');
  });
});

describe('fixed centres', () => {
  const fixedAt = (value: string, takeUp: string) => ({ centre: { fixed: mm(value) }, takeUp: pitches(takeUp) });

  test('taut where they stand', () => {
    expect(judged(fixedAt('311.15', '0'))).toEqual([]);
  });
  test('a hundredth off, without a take-up', () => {
    const file = shopWith(fixedAt('311.14', '0'));
    expectFinding(only(judgePair(centre, planOf(file), pair(17, 17))), file, {
      severity: 'blocks',
      where: CENTRE,
      figure: { value: 311.15, unit: 'mm' },
      limit: { value: 311.14, unit: 'mm' },
      names: ['311.15 mm', 'fixed at 311.14 mm'],
    });
  });
  test('the same with a little take-up: 0.0016 of a pitch, which nobody can see', () => {
    expect(judged(fixedAt('311.14', '0.01'))).toEqual([]);
  });
});

test('centre distance not given: not made, with or without the chain that is on it', () => {
  for (const more of [{}, { pitches: 66 }]) {
    const file = shopWith(more);
    expectNotMade(only(judgePair(centre, planOf(file), pair(17, 17))), file, CENTRE);
  }
});
