import { describe, expect, test } from 'vitest';
import { clearance } from '../../../core/src/checks/clearance.ts';
import { expectFinding, expectNotMade, inch, inLine, judgePair, only, pair, pitches, planOf, shopOf, stageRow } from '../planFixture.ts';

const shopAt = (centre_in: string) => shopOf(inLine([stageRow(36, 60, { centre: { fixed: inch(centre_in) }, takeUp: pitches('2') })]));
const BOTH = pair(36, 60);

// Outside diameters of 36 and 60 teeth, half-inch pitch: 6.01503 and 9.84057 in, half their sum 7.92780 in.
describe('bare wheels clear each other [published sprocket list: 6.02 and 9.841 in; recomputed to five places]', () => {
  test('7.928 in apart they do', () => {
    expect(judgePair(clearance, planOf(shopAt('7.928')), BOTH)).toEqual([]);
  });
  test('7.9275 in apart they touch', () => {
    const file = shopAt('7.9275');
    expectFinding(only(judgePair(clearance, planOf(file), BOTH)), file, {
      severity: 'blocks',
      where: ['machines', 0, 'stages', 0, 'centre'],
      figure: { value: 201.3585, unit: 'mm' },
      limit: { value: 201.3661, unit: 'mm' },
      names: ['201.36 mm', '201.37 mm'],
    });
  });
  test('centre distance not given: not made, and a present chain that is too short blocks nothing', () => {
    const file = shopOf(inLine([stageRow(36, 36, { pitches: 66 })]));
    expectNotMade(only(judgePair(clearance, planOf(file), BOTH)), file, ['machines', 0, 'stages', 0, 'centre']);
  });
});
