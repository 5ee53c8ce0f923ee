// What cannot come out of a checked file is a mistake of the program: it is thrown with its name and its value, never worked around.
import { describe, expect, test } from 'vitest';
import { bestLevel } from '../../core/src/buying/bestLevel.ts';
import { type BuyingTarget, planBuying, planWindowLevels, targetOf } from '../../core/src/buying/index.ts';
import { partsOf } from '../../core/src/buying/shop.ts';
import { dateAfter } from '../../core/src/days.ts';
import { centreForPitches_m, lengthInPitches, pitchDiameter_m, wornLength_m } from '../../core/src/drives/chainGeometry.ts';
import { driveKind } from '../../core/src/drives/index.ts';
import { choosePitchCount } from '../../core/src/drives/pitchCount.ts';
import { addToRack } from '../../core/src/file/addToRack.ts';
import { addStageBelow, removeStage } from '../../core/src/file/driveEdits.ts';
import { fitOption } from '../../core/src/file/fit.ts';
import { mixOf } from '../../core/src/file/mixOf.ts';
import { Problems, reading } from '../../core/src/file/problems.ts';
import { present } from '../../core/src/file/resolveMachine.ts';
import { takeTried } from '../../core/src/file/takeTried.ts';
import { fixed } from '../../core/src/format.ts';
import { NOT_GIVEN } from '../../core/src/given.ts';
import { buildOf } from '../../core/src/layOut.ts';
import { planOption } from '../../core/src/option.ts';
import { stageAt, teethAt } from '../../core/src/plan.ts';
import { Fraction, ONE, ratioOf, whole, ZERO } from '../../core/src/ratio.ts';
import { amountsOf, wantedOn } from '../../core/src/ratioCheck/amounts.ts';
import { columnOf } from '../../core/src/ratioCheck/moments.ts';
import { studentQuantile } from '../../core/src/ratioCheck/student.ts';
import { binned } from '../../core/src/reach/bins.ts';
import { slotName } from '../../core/src/sheet/paperText.ts';
import { standingOf } from '../../core/src/standing.ts';
import { fittedPumps } from '../../core/src/train.ts';
import { trendScale } from '../../core/src/trendScale.ts';
import { demoPlan } from '../file/demoPlan.ts';
import { inLine, pair, planOf, say, shopOf, stageRow } from './planFixture.ts';
import { checkOf } from './ratioCheck/someCheck.ts';

const file = shopOf(inLine([stageRow(20, 30)]));
const plan = planOf(file);
const l5 = targetOf(demoPlan({ machine: 'bench-1', material: 'l5' })) ?? expect.unreachable();
const other: BuyingTarget = targetOf(demoPlan({ machine: 'bench-2', material: 'l5' })) ?? expect.unreachable();
const wish = { teeth: { from: 13, to: 14 }, mostPurchases: 1 };
const window = { low: ONE, high: whole(2), tolerance: ratioOf(1, 50) };
const count = {
  pitch_m: 0.0127,
  driverTeeth: 17,
  drivenTeeth: 17,
  centre: { kind: 'fixed', centre_m: 0.5 },
  takeUp_pitches: 0,
  offsetLinkAllowed: false,
  presentPitches: null,
} as const;
const check = checkOf({ wantedByWeight: '1/2', limits: null, catches: [[100, 50]] });
const [first] = check.catches;

const thrown = (call: () => unknown): string => {
  try {
    call();
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
  return 'nothing';
};

describe('numbers outside their limits', () => {
  test.each<[string, () => unknown]>([
    ['whole(0.5): not a whole number', () => whole(0.5)],
    ['whole(9007199254740992): not a whole number', () => whole(2 ** 53)],
    ['NaN cannot be written with 2 places', () => fixed(Number.NaN, 2, say)],
    ['-Infinity cannot be written with 1 places', () => fixed(Number.NEGATIVE_INFINITY, 1, say)],
    ['studentQuantile: confidence 0.5', () => studentQuantile(0.5, 3)],
    ['studentQuantile: confidence 1', () => studentQuantile(1, 3)],
    ['studentQuantile: 0 degrees of freedom', () => studentQuantile(0.95, 0)],
    ['studentQuantile: 1.5 degrees of freedom', () => studentQuantile(0.95, 1.5)],
    ['dateAfter: "2026-02-30" is no date', () => dateAfter('2026-02-30', 1)],
    ['columnOf: there are no readings', () => columnOf([])],
    ['trendScale: there is nothing to show', () => trendScale([], 5)],
    ['reach: 0 bins', () => binned(new Float64Array(0), ONE, whole(2), 0)],
    ['reach: 1.5 bins', () => binned(new Float64Array(0), ONE, whole(2), 1.5)],
    ['teeth: 2 is not a whole number of 3 or more', () => pitchDiameter_m(0.0127, 2)],
    ['teeth: 17.5 is not a whole number of 3 or more', () => pitchDiameter_m(0.0127, 17.5)],
    ['pitch_m: 0 is not a number above 0', () => pitchDiameter_m(0, 17)],
    ['pitch_m: Infinity is not a number above 0', () => pitchDiameter_m(Number.POSITIVE_INFINITY, 17)],
    ['pitches: -2 is not a number above 0', () => centreForPitches_m(0.0127, 17, 17, -2)],
    ['elongation: -0.01 is below none', () => wornLength_m(0.0127, 20, -0.01)],
    ['centre_m: 0.05 is less than half the difference of the pitch diameters', () => lengthInPitches(0.0127, 17, 60, 0.05)],
    ['centre: 0.6 to 0.5 m is no window', () => choosePitchCount({ ...count, centre: { kind: 'window', least_m: 0.6, most_m: 0.5 } })],
    ['centre: -0.1 to 0.5 m is no window', () => choosePitchCount({ ...count, centre: { kind: 'window', least_m: -0.1, most_m: 0.5 } })],
    ['centre: 0 to 0 m is no window', () => choosePitchCount({ ...count, centre: { kind: 'window', least_m: 0, most_m: 0 } })],
    ['takeUp_pitches: -0.1 is below 0', () => choosePitchCount({ ...count, takeUp_pitches: -0.1 })],
    ['presentPitches: 96.5 is not a whole number above 0', () => choosePitchCount({ ...count, presentPitches: 96.5 })],
    ['presentPitches: 0 is not a whole number above 0', () => choosePitchCount({ ...count, presentPitches: 0 })],
  ])('%s', (message, call) => expect(thrown(call)).toBe(message));

  test('and what lies on the limit is taken', () => {
    expect([whole(2 ** 53 - 1).valueOf(), pitchDiameter_m(1, 3) > 0, wornLength_m(1, 1, 0)]).toEqual([2 ** 53 - 1, true, 1]);
    expect(binned(new Float64Array(0), ONE, whole(2), 1)).toEqual([0]);
    expect(studentQuantile(0.95, 1)).toBeCloseTo(12.706, 3);
    expect(choosePitchCount({ ...count, centre: { kind: 'window', least_m: 0, most_m: 0.5 }, presentPitches: 1 }).kind).toBe('fits');
  });
});

describe('rows, stages and pumps that are not there', () => {
  const option = planOption(plan, fittedPumps(plan), [pair(20, 30)], say);
  test.each<[string, () => unknown]>([
    ['driveKind: rope is not listed', () => driveKind('rope')],
    ['stageAt: there is no stage 3', () => stageAt(plan, 3)],
    ['teethAt: stage 1 has no teeth', () => teethAt([pair(20, 30)], 1)],
    ['stageOption: stage 0 has no teeth', () => planOption(plan, fittedPumps(plan), [], say)],
    ['buildOf: side A has no pump x', () => buildOf(plan, { pumps: { A: 'x', B: 'pump-b' }, teeth: [pair(20, 30)] })],
    ['standingOf: side B has no pump x', () => standingOf(plan, { pumps: { A: 'pump-a', B: 'x' }, teeth: [pair(20, 30)] })],
    ['slotName: the slot belongs to another plan', () => slotName(plan, planOf(file).stages[0]?.driver ?? expect.unreachable())],
    ['present: a plan was made with something missing', () => present(undefined)],
    ['the file has no material 1', () => mixOf(file, 1, say)],
    ['addToRack: there is no machine x', () => addToRack(file, 'x', [])],
    ['fitOption: there is no machine x', () => fitOption(file, 'x', null, option)],
    ['addStageBelow: there is no shaft x', () => addStageBelow(file.machines[0] ?? expect.unreachable(), 'x')],
    ['removeStage: the stage x turns no shaft', () => removeStage(file.machines[0] ?? expect.unreachable(), 'x')],
    ['takeTried: the material has no printed ratio', () => takeTried({ id: 'm', name: 'M', A: {}, B: {}, chemistry: {} }, '1:1', ONE)],
    ['takeTried: "x" is no ratio', () => takeTried({ id: 'm', name: 'M', A: {}, B: {}, ratio: { parts: '1:1' } }, 'x', ONE)],
    ['Problems.failure: nothing is wrong', () => new Problems().failure()],
    ['a checked file held: too odd', () => reading({ ok: false, expected: 'too odd' })],
  ])('%s', (message, call) => expect(thrown(call)).toBe(message));
});

describe('purchases and checks that ask for nothing', () => {
  test.each<[string, () => unknown]>([
    ['buying: no target', () => planBuying([], wish)],
    ['buying: no target', () => partsOf([])],
    ['buying: bench-2 beside bench-1', () => planBuying([l5, other], wish)],
    ['buying: 9 purchases', () => planBuying([l5], { ...wish, mostPurchases: 9 })],
    ['buying: -1 purchases', () => planBuying([l5], { ...wish, mostPurchases: -1 })],
    ['buying: 0.5 purchases', () => planBuying([l5], { ...wish, mostPurchases: 0.5 })],
    ['buying: price -1', () => planBuying([l5], { ...wish, priceOf: () => -1 })],
    ['buying: price 0.5', () => planBuying([l5], { ...wish, priceOf: () => 0.5 })],
    ['buying: window 0 to 2', () => planWindowLevels(l5.plan, { ...window, low: ZERO }, wish)],
    ['buying: window 1 to 1/2', () => planWindowLevels(l5.plan, { ...window, high: ratioOf(1, 2) }, wish)],
    ['buying: tolerance 0', () => planWindowLevels(l5.plan, { ...window, tolerance: ZERO }, wish)],
    ['buying: tolerance 1', () => planWindowLevels(l5.plan, { ...window, tolerance: ONE }, wish)],
    ['bestLevel: no level', () => bestLevel({ levels: [], fewestPurchases: null, unserved: [], cheapest: null, mostPurchases: 0 })],
    ['amountsOf: no catch counts', () => amountsOf({ ...check, catches: [{ ...first, leftOut: 'spilt' }] })],
    ['wantedOn: the densities that weighing needs are not given', () => wantedOn({ ...check.terms, densityBOverA: NOT_GIVEN }, true)],
  ])('%s', (message, call) => expect(thrown(call)).toBe(message));
  test('a window that is one ratio, and a price of nothing, are taken', () => {
    const one = new Fraction('1/5');
    expect(
      planWindowLevels(l5.plan, { low: one, high: one, tolerance: ratioOf(1, 50) }, { ...wish, mostPurchases: 0 }).levels,
    ).toHaveLength(1);
    expect(planBuying([l5], { ...wish, priceOf: () => 0 }).cheapest?.price).toBe(0);
  });
});
