import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MachineRow } from '../../core/src/file/machine.ts';
import { flowOf } from '../../core/src/flow.ts';
import type { Given } from '../../core/src/given.ts';
import { known } from '../../core/src/given.ts';
import type { Plan, SideName } from '../../core/src/plan.ts';
import { exactText, float, ratioOf, ZERO } from '../../core/src/ratio.ts';
import { aboveLowMark, lastsFor, type RunsLow, runsLow } from '../../core/src/tanks.ts';
import { fittedPumps, madeBPerA } from '../../core/src/train.ts';
import { inLine, pair, planOf, shopOf, stageRow } from './planFixture.ts';
import { expectPrinted } from './printedFormula.ts';
import { demoPlan, E12_ON_BENCH_1 } from './sheet/demoSheet.ts';

function givenValue<Of>(found: Given<Of>): Of {
  if (!found.known) throw new Error('not given');
  return found.value;
}
const buildOf = (plan: Plan, teeth = [pair(23, 25)]) => ({ pumps: fittedPumps(plan), teeth });
const lowOf = (plan: Plan, teeth = [pair(23, 25)]): RunsLow => givenValue(runsLow(plan, buildOf(plan, teeth)));

describe('E12 on Bench 1, 23 to 25 [invented example, worked out apart from this program]', () => {
  const plan = demoPlan(E12_ON_BENCH_1);
  const { setting } = flowOf(plan, buildOf(plan));
  if (setting === null) throw new Error('no setting');
  const lasts_min = (side: SideName): number => float(givenValue(lastsFor(plan, setting, side)).value) / 60;

  test('A 49.6 minutes to the low mark, B 50.7', () => {
    expect(lasts_min('A')).toBeCloseTo(49.6, 1);
    expect(lasts_min('B')).toBeCloseTo(50.7, 1);
  });
  test('A runs low first; with B filled to 19.64 L both run low together', () => {
    const { first, other, fill, together } = lowOf(plan);
    expect([first, other, exactText(fill.value.mul(1000)), together]).toEqual(['A', 'B', '491/25', false]);
  });
  test('printed as computed [mathjs, npm]', () => {
    for (const side of ['A', 'B'] as const) expectPrinted(givenValue(lastsFor(plan, setting, side)));
    expectPrinted(lowOf(plan).fill);
  });
});

const litres = (value: string) => ({ value, unit: 'L' });
// A makes two volumes for one of B; where nothing else is said.
const planWith = (a: MachineRow['A']['tank'], b: MachineRow['A']['tank']): Plan => {
  const machine = inLine([stageRow(20, 20)]);
  return planOf(shopOf({ ...machine, A: { ...machine.A, ...(a && { tank: a }) }, B: { ...machine.B, ...(b && { tank: b }) } }));
};
const filled = (fill: string, lowMark: string) => ({ fill: litres(fill), lowMark: litres(lowMark) });
const EVEN = [pair(20, 20)];

describe('fills [arithmetic]', () => {
  test('10 L of A above its mark and 4 of B: B first, and A need stand only 8 L above', () => {
    const { first, other, fill } = lowOf(planWith(filled('12', '2'), filled('5', '1')), EVEN);
    expect([first, other, exactText(fill.value.mul(1000))]).toEqual(['B', 'A', '10/1']);
    expectPrinted(fill);
  });
  test('8 of A and 4 of B run low together as they are', () => {
    const { together, fill, other } = lowOf(planWith(filled('10', '2'), filled('5', '1')), EVEN);
    expect([together, other, exactText(fill.value.mul(1000))]).toEqual([true, 'B', '5/1']);
  });
  test('below the low mark there is nothing left, not less than nothing', () => {
    const plan = planWith(filled('1', '2'), filled('5', '1'));
    expect(givenValue(aboveLowMark(plan.sides.A)).value.equals(ZERO)).toBe(true);
    const { first, fill } = lowOf(plan, EVEN);
    expect([first, exactText(fill.value.mul(1000))]).toEqual(['A', '1/1']);
  });
  test('nothing above either mark: there is no first', () => {
    expect(runsLow(planWith(filled('1', '2'), filled('1', '1')), buildOf(planWith(undefined, undefined), EVEN)).known).toBe(false);
  });
  test('a fill or a mark that is not given leaves it open', () => {
    for (const [a, b] of [
      [undefined, filled('5', '1')],
      [{ fill: litres('5') }, filled('5', '1')],
      [filled('5', '1'), { lowMark: litres('5') }],
    ] as const) {
      const plan = planWith(a, b);
      expect(runsLow(plan, buildOf(plan, EVEN)).known).toBe(false);
    }
  });
  test('filled as said, both run low together, and the other tank never needs more than it has [law]', () => {
    const plan = planWith(filled('10', '2'), filled('5', '1'));
    const volume = fc.integer({ min: 1, max: 5000 }).map((count) => ratioOf(count, 100));
    fc.assert(
      fc.property(volume, volume, fc.integer({ min: 9, max: 60 }), (a, b, driver) => {
        const sides = {
          A: { ...plan.sides.A, fill_m3: known(a), lowMark_m3: known(ZERO) },
          B: { ...plan.sides.B, fill_m3: known(b), lowMark_m3: known(ZERO) },
        };
        const teeth = [pair(driver, 20)];
        const { first, other, fill } = lowOf({ ...plan, sides }, teeth);
        expect(fill.value.compare(other === 'A' ? a : b)).toBeLessThanOrEqual(0);
        const [nowA, nowB] = first === 'A' ? [a, fill.value] : [fill.value, b];
        expect(nowB.div(nowA).equals(madeBPerA(plan, fittedPumps(plan), teeth))).toBe(true);
      }),
    );
  });
});
