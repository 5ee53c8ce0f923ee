import { describe, expect, test } from 'vitest';
import { slotTeeth } from '../../../core/src/checks/slotTeeth.ts';
import { expectFinding, expectNotMade, inLine, judgePair, only, pair, planOf, shopOf, stageRow } from '../planFixture.ts';

const limits = { teeth: 20, teethFrom: 13, teethTo: 40 };

describe('tooth limits of a slot are inclusive [the machine’s own]', () => {
  const file = shopOf(inLine([stageRow(limits, limits)]));
  const plan = planOf(file);

  test('13 and 40 teeth are within 13 to 40', () => {
    expect(judgePair(slotTeeth, plan, pair(13, 40))).toEqual([]);
  });
  test('12 teeth are too few', () => {
    expectFinding(only(judgePair(slotTeeth, plan, pair(12, 20))), file, {
      severity: 'blocks',
      where: ['machines', 0, 'stages', 0, 'driver', 'teethFrom'],
      figure: { value: 12, unit: 'teeth' },
      limit: { value: 13, unit: 'teeth' },
      names: ['12 teeth', 'no fewer than 13'],
    });
  });
  test('41 teeth are too many', () => {
    expectFinding(only(judgePair(slotTeeth, plan, pair(20, 41))), file, {
      severity: 'blocks',
      where: ['machines', 0, 'stages', 0, 'driven', 'teethTo'],
      figure: { value: 41, unit: 'teeth' },
      limit: { value: 40, unit: 'teeth' },
      names: ['41 teeth', 'no more than 40'],
    });
  });
  test('one limit alone is held against; with neither the check is not made', () => {
    const halves = shopOf(inLine([stageRow({ teeth: 20, teethFrom: 13 }, { teeth: 20 })]));
    expectNotMade(only(judgePair(slotTeeth, planOf(halves), pair(300, 300))), halves, ['machines', 0, 'stages', 0, 'driven', 'teethFrom']);
    expect(judgePair(slotTeeth, planOf(halves), pair(12, 20)).map(({ severity }) => severity)).toEqual(['blocks', 'notes']);
  });
});
