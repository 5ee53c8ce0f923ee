import { describe, expect, test } from 'vitest';
import { chainFacts } from '../../../core/src/facts/chainFacts.ts';
import type { StageRow } from '../../../core/src/file/machine.ts';
import type { Say } from '../../../core/src/format.ts';
import { planOption } from '../../../core/src/option.ts';
import type { Plan, Teeth } from '../../../core/src/plan.ts';
import { fittedPumps } from '../../../core/src/train.ts';
import { inch, inLine, pair, planOf, rpm, say, shopOf, stageRow } from '../planFixture.ts';
import { expectPrinted } from '../printedFormula.ts';
import { bench, demoPlan, E12_ON_BENCH_1, U40_ON_BENCH_2 } from '../sheet/demoSheet.ts';

const inches: Say = { decimal: '.', system: 'inch' };

function factsOf(plan: Plan, teeth: readonly Teeth[], how = say): Record<string, string> {
  const { facts } = chainFacts(plan, planOption(plan, fittedPumps(plan), teeth, how), how);
  for (const { working } of facts) if (working !== null) expectPrinted(working);
  return Object.fromEntries(facts.map(({ id, figure, note }) => [id, [figure, note].join('; ').replaceAll('\u00a0', ' ')]));
}

describe('E12 on Bench 1', () => {
  const plan = demoPlan(E12_ON_BENCH_1);

  test('23 to 25: 64 pitches, wrap 178.2 degrees, 0.278 m/s [invented example, worked out apart from this program]', () => {
    // Unit pitch diameters 7.3439 and 7.9787 [iso-606, annex A, from memory] times 12.7 mm; half their difference is 4.031 mm, so the
    // span is √(253.968² − 4.031²); 4 and 6 % of it; 8/3 (15.236/2)² / 253.936; 20 pitches and 1.5 % more.
    expect(factsOf(plan, [pair(23, 25)])).toEqual({
      's1.speed': '0.278 m/s; ',
      's1.length': '64.00 pitches; 64 pitches go on',
      's1.wrap': '3.1098 rad; 178.2 degrees',
      's1.span': '253.94 mm; ',
      's1.slackFrom': '10.16 mm; ',
      's1.slackTo': '15.24 mm; ',
      's1.spare': '0.61 mm; not a link to add',
      's1.driverPitchDiameter': '93.27 mm; ',
      's1.driverOutsideDiameter': '100.02 mm; ',
      's1.driverRunningDiameter': '105.33 mm; ',
      's1.driverRipple': '0.93 %; ',
      's1.drivenPitchDiameter': '101.33 mm; ',
      's1.drivenOutsideDiameter': '108.15 mm; ',
      's1.drivenRunningDiameter': '113.39 mm; ',
      's1.drivenRipple': '0.79 %; ',
      's1.asNew': '254.00 mm; ',
      's1.worn': '257.81 mm; worn out beyond; wear never changes the ratio',
    });
  });
  test('38 driven teeth turn in 165.9 mm with the chain on, bare in 160.9; 14 ripple by 2.51 % [worked out apart from this program]', () => {
    const facts = factsOf(plan, [pair(14, 38)]);
    expect(Number.parseFloat(facts['s1.drivenRunningDiameter'] ?? '')).toBeCloseTo(165.9, 1);
    expect(Number.parseFloat(facts['s1.drivenOutsideDiameter'] ?? '')).toBeCloseTo(160.9, 1);
    expect(facts['s1.driverRipple']).toBe('2.51 %; ');
  });
  test('no flow wanted: the speed at the fastest, 23 · 12.7 mm · 90/60 a second [arithmetic]', () => {
    const fastest = demoPlan({
      ...E12_ON_BENCH_1,
      change: (file) => {
        delete bench(file, 'bench-1').wantedFlow;
      },
    });
    expect(factsOf(fastest, [pair(23, 25)])['s1.speed']).toBe('0.438 m/s; ');
  });
});

test('every stage has its own, in the order of the plan: Bench 2 for U40, 66 and 64 pitches [invented example, worked out apart]', () => {
  const facts = factsOf(demoPlan(U40_ON_BENCH_2), [pair(22, 32), pair(26, 17)]);
  expect([facts['s1.length'], facts['s2.length']]).toEqual(['66.00 pitches; 66 pitches go on', '64.00 pitches; 64 pitches go on']);
  // 20 pitches of 12.7 and of 9.525 mm.
  expect([facts['s1.asNew'], facts['s2.asNew']]).toEqual(['254.00 mm; ', '190.50 mm; ']);
  const stages = Object.keys(facts).map((id) => id.split('.').at(0));
  expect(stages).toEqual([...stages].sort());
});

describe('17 and 65 teeth of chain 60', () => {
  const facts = (more: Partial<StageRow>, motor_rpm = '900') => {
    const machine = inLine([stageRow(17, 65, { size: '60', ...more })], { motor: { speed: rpm(motor_rpm) } });
    return factsOf(planOf(shopOf(machine)), [pair(17, 65)], inches);
  };

  test('122 pitches at 29.825 in: wrap 158 degrees, pitch diameters 4.082 and 15.524 in [machine-elements, example 7-2, from memory]', () => {
    const laid = facts({ centre: { from: inch('29.8'), to: inch('29.85') }, pitches: 122 });
    expect(laid['s1.length']).toBe('122.00 pitches; 122 pitches go on');
    expect(laid['s1.wrap']).toMatch(/; (157\.[5-9]|158\.[0-4]) degrees$/);
    expect(laid['s1.driverPitchDiameter']).toMatch(/^4\.08[12]\d in/);
    expect(laid['s1.drivenPitchDiameter']).toMatch(/^15\.52[34]\d in/);
    // 4 to 6 % of the span between the wheels [machinerys-handbook, from memory], which is 29.257 in: √(29.825² − 5.721²) = 29.271.
    expect(laid['s1.slackFrom']).toMatch(/^1\.17\d\d in/);
    expect(laid['s1.slackTo']).toMatch(/^1\.75\d\d in/);
  });
  test('17 teeth at 800 rpm: N p n / 12 = 850 ft/min [asme-b29.1, supplementary information, from memory]', () => {
    expect(facts({}, '800')['s1.speed']).toBe('850.0 ft/min; ');
    expect(facts({}, '1200')['s1.speed']).toBe('1275.0 ft/min; ');
  });
  test('centre not given: nothing of length, wrap, span and slack; the wheels all the same', () => {
    const ids = Object.keys(facts({}));
    for (const id of ['length', 'wrap', 'span', 'slackFrom', 'slackTo', 'spare']) expect(ids).not.toContain(`s1.${id}`);
    expect(ids).toContain('s1.drivenRunningDiameter');
  });
});

test('a stage that turns no pump has no speed', () => {
  const machine = inLine([stageRow(20, 30)]);
  // Both pumps stand on the motor; what the stage turns is nobody's.
  const plan = planOf(shopOf({ ...machine, B: { ...machine.B, shaft: 'motor' } }));
  expect(Object.keys(factsOf(plan, [pair(20, 30)]))).not.toContain('s1.speed');
});

test('a dial of which the pumps leave nothing gives no speed of any loop; all else is told', () => {
  const machine = inLine([stageRow(17, 34), stageRow(20, 20)]);
  const slow = (id: string, speeds: object) => [{ id, displacement: { value: '10', unit: 'cc/rev' }, ...speeds }];
  const of = (speedTo_rpm: string) => {
    const A = { ...machine.A, pumps: slow('pump-a', { speedFrom: rpm('30') }) };
    const B = { ...machine.B, pumps: slow('pump-b', { speedTo: rpm(speedTo_rpm) }) };
    return factsOf(planOf(shopOf({ ...machine, A, B })), [pair(17, 34), pair(20, 20)]);
  };
  // pump A asks for half the dial of 60 rpm; pump B, at half the speed, allows it from 15 rpm on
  const [left, none] = [of('15'), of('14.9')];
  expect(Object.keys(left).filter((id) => !(id in none))).toEqual(['s1.speed', 's2.speed']);
  expect(Object.keys(none).every((id) => none[id] === left[id])).toBe(true);
  expect(none['s1.driverPitchDiameter']).toMatch(/mm; $/);
});
