import { describe, expect, test } from 'vitest';
import { apart } from '../../../core/src/check.ts';
import { guard } from '../../../core/src/checks/guard.ts';
import { lengthText } from '../../../core/src/format.ts';
import { expectFinding, expectNotMade, inch, inLine, judgePair, only, pair, planOf, say, shopOf, stageRow } from '../planFixture.ts';

const guarded = (guard_in: string) =>
  shopOf(inLine([stageRow({ teeth: 36, guard: inch(guard_in) }, { teeth: 60, guard: inch(guard_in) })]));
const inches = { decimal: '.', system: 'inch' } as const;
const GUARD = ['machines', 0, 'stages', 0, 'driven', 'guard'];

// Half-inch pitch: 36 teeth turn in 6.21186 in with the chain on, 60 in 10.02866 in; the bare 60 would pass with 9.841 in.
describe('chain-on diameter against the guard [published sprocket list and asme-b29.1 plate height 0.95 p, recomputed]', () => {
  test('36 teeth clear a 10 inch guard, 60 do not', () => {
    const file = guarded('10');
    const finding = only(judgePair(guard, planOf(file), pair(36, 60)));
    expectFinding(finding, file, {
      severity: 'blocks',
      where: GUARD,
      figure: { value: 254.728, unit: 'mm' },
      limit: { value: 254, unit: 'mm' },
      names: ['60 teeth', '254.7 mm', '254.0 mm'],
    });
    expect(only(judgePair(guard, planOf(file), pair(36, 60), 0, inches)).what).toContain('10.029 in; the guard clears 10.000 in');
  });
  test('a guard of 10.0287 in clears them, one of 10.0286 in does not and the sentence shows why', () => {
    expect(judgePair(guard, planOf(guarded('10.0287')), pair(36, 60))).toEqual([]);
    const finding = only(judgePair(guard, planOf(guarded('10.0286')), pair(36, 60), 0, inches));
    expect(finding.what).toContain('10.0287 in; the guard clears 10.0286 in');
  });
  test('what the guard clears is not given: not made', () => {
    const file = shopOf(inLine([stageRow({ teeth: 36, guard: inch('10') }, 60)]));
    expectNotMade(only(judgePair(guard, planOf(file), pair(36, 60))), file, GUARD);
  });
});

test('a figure and the limit it misses never read alike: 162.04 and 162 mm [our choice]', () => {
  const written = (figure_m: number) =>
    apart(figure_m, 0.162, 1, (value_m, places) => lengthText(value_m, say, places)).map((words) => words.replace('\u00a0', ' '));
  expect(written(0.16204)).toEqual(['162.04 mm', '162.00 mm']);
  expect(written(0.17)).toEqual(['170.0 mm', '162.0 mm']);
  expect(new Set(written(0.162)).size).toBe(1);
});
