import { describe, expect, test } from 'vitest';
import { commonFactor } from '../../../core/src/checks/commonFactor.ts';
import { expectFinding, expectNotMade, inLine, judgePair, only, pair, planOf, shopOf, stageRow } from '../planFixture.ts';

const file = shopOf(inLine([stageRow(17, 17, { pitches: 96 })]));
const plan = planOf(file);

describe('a tooth meets the same link after lcm(teeth, pitches) [britannica-1911]', () => {
  test.each([
    [15, 3, 32],
    [14, 2, 48],
  ])('%i teeth and 96 links: common factor %i, every %i turns [worked apart from this program]', (teeth, factor, turns) => {
    expectFinding(only(judgePair(commonFactor, plan, pair(teeth, 17))), file, {
      severity: 'notes',
      where: ['machines', 0, 'stages', 0, 'driver', 'teeth'],
      figure: { value: factor, unit: 'common factor' },
      limit: { value: 1, unit: 'common factor' },
      names: [`${teeth} teeth`, '96 pitches', `factor ${factor}`, `every ${turns} turns`],
    });
  });
  test('17 and 19 teeth share none with 96', () => {
    expect(judgePair(commonFactor, plan, pair(17, 19))).toEqual([]);
  });
  test('pitches not known: not made', () => {
    const unknown = shopOf(inLine([stageRow(17, 17)]));
    expectNotMade(only(judgePair(commonFactor, planOf(unknown), pair(15, 17))), unknown, ['machines', 0, 'stages', 0, 'pitches']);
  });
});
