import { describe, expect, test } from 'vitest';
import { wrap } from '../../../core/src/checks/wrap.ts';
import type { StageRow } from '../../../core/src/file/machine.ts';
import { fitOf } from '../../../core/src/stageFit.ts';
import examples from '../../sources/chain.json';
import { expectFinding, expectNotMade, inLine, judgePair, mm, only, pair, pitches, planOf, shopOf, stageRow } from '../planFixture.ts';

const STAGE = ['machines', 0, 'stages', 0];
const BOTH = pair(17, 65);
const shopWith = (more: Partial<StageRow>) => shopOf(inLine([stageRow(17, 65, more)]));
const fixedAt = (centre_mm: string) => shopWith({ centre: { fixed: mm(centre_mm) }, takeUp: pitches('2') });

describe('a published drive', () => {
  const example = examples.lengths.find(({ name }) => name === '17/65 teeth, 30 pitches apart');

  test(`17 and 65 teeth, 104 pitches of half-inch chain: 151.08 degrees, and nothing to say [${example?.source}]`, () => {
    const plan = planOf(shopWith({ pitches: 104, centre: { from: mm('380'), to: mm('390') } }));
    const loop = plan.stages.map((stage) => fitOf(stage, BOTH).loop)[0];
    expect([loop?.pitches, example?.count, example?.printedWrap_deg?.deg]).toEqual([104, 104, '151.08']);
    // Within 0.01, as the book puts in diameters rounded to a thousandth of an inch.
    expect(Math.abs(((loop?.wrap_rad ?? 0) * 180) / Math.PI - 151.08)).toBeLessThan(0.01);
    expect(judgePair(wrap, plan, BOTH)).toEqual([]);
  });
});

// cos(wrap/2) = (D2 - D1)/(2 C): 17 and 65 teeth have 120 degrees at 193.75131 mm and 90 degrees at 137.00287 mm [plane geometry].
describe('wrap on the smaller wheel [machine-elements, 4th ed. p. 295: 120 degrees; that 90 is the end is our choice]', () => {
  test('at 193.76 mm it is enough', () => {
    expect(judgePair(wrap, planOf(fixedAt('193.76')), BOTH)).toEqual([]);
  });
  test('at 193.75 mm it warns, and the sentence shows by how little', () => {
    const file = fixedAt('193.75');
    expectFinding(only(judgePair(wrap, planOf(file), BOTH)), file, {
      severity: 'warns',
      where: STAGE,
      figure: { value: 119.99955, unit: 'deg' },
      limit: { value: 120, unit: 'deg' },
      names: ['119.9996 degrees', '120.0000 are wanted'],
    });
  });
  test('at 137.01 mm it still warns, at 136.97 mm it blocks', () => {
    expect(only(judgePair(wrap, planOf(fixedAt('137.01')), BOTH))).toMatchObject({ severity: 'warns', limit: { value: 120 } });
    const file = fixedAt('136.97');
    expectFinding(only(judgePair(wrap, planOf(file), BOTH)), file, {
      severity: 'blocks',
      where: STAGE,
      figure: { value: 89.9725, unit: 'deg' },
      limit: { value: 90, unit: 'deg' },
      names: ['89.97 degrees', '90.00 are wanted'],
    });
  });
  test('centre distance not given: not made, though the present chain would tell an angle', () => {
    const file = shopWith({ pitches: 80 });
    expectNotMade(only(judgePair(wrap, planOf(file), BOTH)), file, [...STAGE, 'centre']);
  });
});
