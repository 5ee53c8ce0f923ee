import { describe, expect, test } from 'vitest';
import { pitchCount } from '../../../core/src/checks/pitchCount.ts';
import { allowedPull, allowedPullWithOffset } from '../../../core/src/drives/chainFormulas.ts';
import { loadFacts } from '../../../core/src/facts/loadFacts.ts';
import type { MachineRow, StageRow } from '../../../core/src/file/machine.ts';
import type { Say } from '../../../core/src/format.ts';
import { planOption } from '../../../core/src/option.ts';
import type { Plan, Teeth } from '../../../core/src/plan.ts';
import { fittedPumps } from '../../../core/src/train.ts';
import { inLine, judgePair, mm, only, pair, pitches, planOf, pumpRow, rpm, say, shopOf, stageRow } from '../planFixture.ts';
import { expectPrinted } from '../printedFormula.ts';
import { bench, demoPlan, E12_ON_BENCH_1, U40_ON_BENCH_2 } from '../sheet/demoSheet.ts';

const inches: Say = { decimal: '.', system: 'inch' };
const share = (value: string) => ({ value, unit: '' });

function factsOf(plan: Plan, teeth: readonly Teeth[], how = say): Record<string, string> {
  const { facts } = loadFacts(plan, planOption(plan, fittedPumps(plan), teeth, how), how);
  for (const { working } of facts) if (working !== null) expectPrinted(working);
  return Object.fromEntries(facts.map(({ id, figure }) => [id, figure.replaceAll('\u00a0', ' ')]));
}
const bench1 = (change: (machine: MachineRow) => void = () => undefined) =>
  factsOf(demoPlan({ ...E12_ON_BENCH_1, change: (file) => change(bench(file, 'bench-1')) }), [pair(23, 25)]);

describe('E12 on Bench 1, 23 to 25', () => {
  test('6.08 and 1.57 N m, at the motor 7.55, 16.8 %; 31 N, counted 40, allowed 2543 [invented example, worked out apart from this program]', () => {
    // Power 2π · 1.5728 N m · 52.578/60 a second, 1.3 times; 08B has no published rating.
    expect(bench1()).toEqual({
      motor: '7.55 N m',
      motorShare: '16.79 %',
      pumpA: '6.08 N m',
      pumpB: '1.57 N m',
      's1.torque': '1.57 N m',
      's1.pull': '31 N',
      's1.countedPull': '40 N',
      's1.allowedPull': '2543 N',
      's1.pullShare': '1.59 %',
      's1.power': '11.3 W',
    });
  });
  test('no flow wanted: power at the fastest, 1.5728 N m at 82.8 rpm, 1.3 times [arithmetic]', () => {
    const facts = bench1((machine) => {
      delete machine.wantedFlow;
    });
    expect(facts).toMatchObject({ 's1.torque': '1.57 N m', 's1.power': '17.7 W' });
  });
  test('without a service factor the pull alone, without a rating of the motor no share of it', () => {
    const facts = bench1((machine) => {
      delete machine.serviceFactor;
      delete machine.motor.ratedTorque;
    });
    expect(Object.keys(facts)).toEqual(['motor', 'pumpA', 'pumpB', 's1.torque', 's1.pull']);
  });
  test('one pressure lacking: the other pump alone, nothing of the motor', () => {
    const facts = bench1((machine) => {
      delete machine.B.pressure;
    });
    expect(facts).toEqual({ pumpA: '6.08 N m' });
  });
});

test('no pressures given on Bench 2: nothing is said [invented example]', () => {
  expect(factsOf(demoPlan(U40_ON_BENCH_2), [pair(22, 32), pair(26, 17)])).toEqual({});
});

/** Pump A of 10 cc on the motor; pump B, with nothing lost in it, behind the stages. */
function machineOf(stages: readonly StageRow[], pressure: { value: string; unit: string }, displacement: string): MachineRow {
  const machine = inLine(stages, { serviceFactor: share('1.3') });
  return { ...machine, B: { ...machine.B, pumps: [pumpRow('pump-b', displacement)], pressure, mechanicalEfficiency: share('1') } };
}

test('5 in³ at 1000 psi take 795.8 lbf in [fluid-power-with-applications, from memory], on 20 teeth of half an inch that is 498 lbf', () => {
  const machine = machineOf([stageRow(20, 20)], { value: '1000', unit: 'psi' }, '5');
  machine.B.pumps = [{ id: 'pump-b', displacement: { value: '5', unit: 'in3/rev' } }];
  // D = 0.5 in / sin 9° = 3.19623 in; 2 · 795.77 / 3.19623 = 497.9, 1.3 times 647.3; 3125 lbf / 7 = 446.4.
  expect(factsOf(planOf(shopOf(machine)), [pair(20, 20)], inches)).toMatchObject({
    pumpB: '795.8 lbf in',
    's1.pull': '498 lbf',
    's1.countedPull': '647 lbf',
    's1.allowedPull': '446 lbf',
    's1.pullShare': '145.00 %',
  });
});

test('through a jackshaft: 15.915 N m behind 20 to 30 ask the stage before for 10.61 over 0.98 [hydraulics textbooks, from memory; energy]', () => {
  // 10 cc at 100 bar; 15.9155 / 1.5 / 0.98 = 10.827.
  const machine = machineOf([stageRow(25, 50), stageRow(20, 30)], { value: '100', unit: 'bar' }, '10');
  const facts = factsOf(planOf(shopOf(machine)), [pair(25, 50), pair(20, 30)]);
  expect(facts).toMatchObject({ pumpB: '15.92 N m', 's2.torque': '15.92 N m', 's1.torque': '10.83 N m' });
});

test('17 teeth of chain 40 at 1000 rpm are rated 5.48 hp [mechanical-engineering-design, text after eq. 17-33, from memory]', () => {
  // 1/600 m³/s at 1.2 MPa are 2 kW, 1.3 times 2.6 kW or 3.487 hp, 63.6 % of the rating.
  const machine = machineOf([stageRow(17, 17)], { value: '12', unit: 'bar' }, '100');
  const plan = planOf(shopOf({ ...machine, motor: { speed: rpm('1000') } }));
  const facts = factsOf(plan, [pair(17, 17)], inches);
  expect(facts['s1.power']).toBe('3.487 hp');
  expect(facts['s1.ratedPower']).toMatch(/^5\.(47[5-9]|48[0-4]) hp$/);
  expect(facts['s1.powerShare']).toMatch(/^63\.6\d %$/);
});

describe('only an odd chain length fits the fixed shafts: 87 pitches', () => {
  /** Length round 17 to 17 teeth is twice the centre distance and 17 pitches [plane geometry]. */
  const shafts = (centre_mm: string, offsetLink: boolean) => {
    const laid = { centre: { fixed: mm(centre_mm) }, takeUp: pitches('0'), offsetLink };
    return planOf(shopOf(machineOf([stageRow(17, 17, laid)], { value: '10', unit: 'bar' }, '100')));
  };
  const AT_87 = '444.5';

  test('the offset link takes 2000 N down to 1300 N [handbook practice: 65 to 80 % of the chain, the worst taken]', () => {
    const strength_N = 7 * 2000;
    expect(allowedPull.of({ B: strength_N })).toBeCloseTo(2000, 9);
    expect(allowedPullWithOffset.of({ B: strength_N })).toBeCloseTo(1300, 9);
  });
  test('it is never put on unsaid: refused where it is not accepted, else a warning and 0.65 of 1986 N', () => {
    expect(only(judgePair(pitchCount, shafts(AT_87, false), pair(17, 17)))).toMatchObject({ severity: 'blocks', figure: { value: 87 } });
    const accepted = shafts(AT_87, true);
    expect(only(judgePair(pitchCount, accepted, pair(17, 17)))).toMatchObject({ severity: 'warns', figure: { value: 87 } });
    // 3125 lbf = 13900.7 N [asme-b29.1], over 7.
    expect(factsOf(accepted, [pair(17, 17)])['s1.allowedPull']).toBe('1291 N');
  });
  test.each([
    ['86 pitches with the shafts half a pitch closer', '438.15', pair(17, 17)],
    ['88 pitches with the shafts half a pitch apart', '450.85', pair(17, 17)],
    ['88 pitches with one tooth more on each wheel', AT_87, pair(18, 18)],
  ])('%s go on without it and keep 1986 N [plane geometry]', (_what, centre_mm, teeth) => {
    const plan = shafts(centre_mm, true);
    expect(judgePair(pitchCount, plan, teeth)).toEqual([]);
    expect(factsOf(plan, [teeth])['s1.allowedPull']).toBe('1986 N');
  });
});
