import { describe, expect, test } from 'vitest';
import { pitchCount } from '../../../core/src/checks/pitchCount.ts';
import type { StageRow } from '../../../core/src/file/machine.ts';
import { expectFinding, expectNotMade, inLine, judgePair, mm, only, pair, pitches, planOf, shopOf, stageRow } from '../planFixture.ts';

const shopWith = (more: Partial<StageRow>) => shopOf(inLine([stageRow(17, 17, more)]));
/** 17 to 17 teeth at 35 pitches: 2 x 35 + 17 = 87 pitches, an odd count. */
const odd = { centre: { fixed: mm('444.5') }, takeUp: pitches('0') };

describe('even pitch count [plane geometry: equal wheels, length 2 C + N pitches]', () => {
  test('86 pitches on fixed shafts: nothing to say', () => {
    expect(judgePair(pitchCount, planOf(shopWith({ ...odd, centre: { fixed: mm('438.15') } })), pair(17, 17))).toEqual([]);
  });
  test('only 87 pitches fit, and offset links are not accepted', () => {
    const file = shopWith(odd);
    expectFinding(only(judgePair(pitchCount, planOf(file), pair(17, 17))), file, {
      severity: 'blocks',
      where: ['machines', 0, 'stages', 0, 'centre'],
      figure: { value: 87, unit: 'pitches' },
      limit: null,
      names: ['87 pitches', 'offset links are not accepted'],
    });
  });
  test('where they are accepted it warns: an offset link carries 0.65 of the load [handbook practice, from memory]', () => {
    const file = shopWith({ ...odd, offsetLink: true });
    expectFinding(only(judgePair(pitchCount, planOf(file), pair(17, 17))), file, {
      severity: 'warns',
      where: ['machines', 0, 'stages', 0, 'centre'],
      figure: { value: 87, unit: 'pitches' },
      limit: null,
      names: ['87 pitches', '0.65'],
    });
  });
  test('a take-up of one pitch lets the even count on', () => {
    expect(judgePair(pitchCount, planOf(shopWith({ ...odd, takeUp: pitches('1') })), pair(17, 17))).toEqual([]);
  });
  test('without the centre distance: not made, but the odd chain that is on it is seen', () => {
    for (const more of [{}, { pitches: 66 }]) {
      const file = shopWith(more);
      expectNotMade(only(judgePair(pitchCount, planOf(file), pair(17, 17))), file, ['machines', 0, 'stages', 0, 'centre']);
    }
    const file = shopWith({ pitches: 65 });
    expectFinding(only(judgePair(pitchCount, planOf(file), pair(17, 17))), file, {
      severity: 'warns',
      where: ['machines', 0, 'stages', 0, 'pitches'],
      figure: { value: 65, unit: 'pitches' },
      limit: null,
      names: ['65 pitches'],
    });
  });
});
