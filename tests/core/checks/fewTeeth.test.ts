import { expect, test } from 'vitest';
import { fewTeeth } from '../../../core/src/checks/fewTeeth.ts';
import { expectFinding, inLine, judgePair, only, pair, planOf, shopOf, stageRow } from '../planFixture.ts';

const file = shopOf(inLine([stageRow(17, 17)]));
const plan = planOf(file);

test('17 teeth run smoothly enough [handbook practice, from memory]', () => {
  expect(judgePair(fewTeeth, plan, pair(17, 17))).toEqual([]);
});
test('16 teeth warn, at whichever end', () => {
  for (const [teeth, end] of [
    [pair(16, 17), 'driver'],
    [pair(17, 16), 'driven'],
  ] as const) {
    expectFinding(only(judgePair(fewTeeth, plan, teeth)), file, {
      severity: 'warns',
      where: ['machines', 0, 'stages', 0, end, 'teeth'],
      figure: { value: 16, unit: 'teeth' },
      limit: { value: 17, unit: 'teeth' },
      names: [end, '16 teeth', '17'],
    });
  }
});
