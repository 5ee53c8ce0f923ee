import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import { runningAt } from '../../../core/src/flow.ts';
import { inUnit } from '../../../core/src/format.ts';
import { pumpTorque, ratedShare, type Torque, type Torques, torquesOf } from '../../../core/src/load/torque.ts';
import { type Plan, stageAt, type Teeth, teethAt } from '../../../core/src/plan.ts';
import { float, ONE, whole } from '../../../core/src/ratio.ts';
import { fittedPumps, fittedTeeth } from '../../../core/src/train.ts';
import { toSI } from '../../../core/src/units.ts';
import { input } from '../../../core/src/working.ts';
import { inLine, pair, planOf, pumpRow, rpm, shopOf, stageRow } from '../planFixture.ts';
import { expectPrinted } from '../printedFormula.ts';

function worked(torque: Torque) {
  if (!torque.known) throw new Error('the torque should be known');
  return torque.value;
}
const newtonMetres = (torque: Torque): number => worked(torque).value;
const load = (plan: Plan, teeth = fittedTeeth(plan)): Torques => torquesOf(plan, { pumps: fittedPumps(plan), teeth });

describe('torque of a pump', () => {
  test('10 cm³ at 100 bar take 15.915 N m without losses [hydraulics textbooks: T = Δp D / 2π, from memory]', () => {
    expect(pumpTorque.of({ Δp: 1e7, D: 10e-6, η: 1 })).toBeCloseTo(15.915, 3);
  });

  // Fluid Power with Applications, example on the efficiencies of a pump, from memory; the exact figures, which the book rounds.
  const Δp = float(toSI('pressure', whole(1000), 'psi'));
  const D = float(toSI('displacement', whole(5), 'in3/rev'));
  const poundInches = (η: number): number => Number(inUnit(pumpTorque.of({ Δp, D, η }), 'torque', 'lbf in'));

  test('5 in³ at 1000 psi take 795.8 lb in without losses [Fluid Power with Applications, efficiencies example, from memory]', () => {
    expect(poundInches(1)).toBeCloseTo(795.8, 1);
  });
  test('at a mechanical efficiency of 88.4 % the shaft asks 900 lb in [the same example, from memory]', () => {
    // Half of the last digit of 88.4 % is 0.06 % of the torque.
    expect(Math.abs(poundInches(0.884) - 900)).toBeLessThan(0.0006 * 900);
    expect((100 * poundInches(1)) / 900).toBeCloseTo(88.4, 1);
  });
});

const bar = (value: number) => ({ value: `${value}`, unit: 'bar' });
const percent = (value: number) => ({ value: `${value}`, unit: '%' });

interface PumpDrawn {
  readonly displacement_cc: number;
  readonly pressure_bar: number;
  readonly efficiency_percent: number;
}

/** Stages that both pumps share, then those of each alone; a pump sits behind the last of its own. */
interface Branched {
  readonly shared: readonly Teeth[];
  readonly own: Readonly<Record<'A' | 'B', readonly Teeth[]>>;
  readonly pumps: Readonly<Record<'A' | 'B', PumpDrawn>>;
}

function branched({ shared, own, pumps }: Branched): Plan {
  // Closed, since a search takes on three open stages at most.
  const closed = (teeth: number) => ({ teeth, mayChange: false });
  const stages = [...shared, ...own.A, ...own.B].map(({ driver, driven }) => stageRow(closed(driver), closed(driven)));
  const shafts: MachineRow['shafts'] = [{ id: 'motor' }];
  const limb = (from: string, count: number): string => {
    let shaft = from;
    for (let index = 0; index < count; index += 1) {
      const id = `shaft-${shafts.length}`;
      shafts.push({ id, turnedBy: { shaft, stage: `s${shafts.length}` } });
      shaft = id;
    }
    return shaft;
  };
  const fork = limb('motor', shared.length);
  const ends = { A: limb(fork, own.A.length), B: limb(fork, own.B.length) };
  const side = (name: 'A' | 'B') => ({
    shaft: ends[name],
    fitted: name,
    pumps: [pumpRow(name, `${pumps[name].displacement_cc}`)],
    pressure: bar(pumps[name].pressure_bar),
    mechanicalEfficiency: percent(pumps[name].efficiency_percent),
  });
  return planOf(shopOf(inLine(stages, { shafts, motor: { speed: rpm('90') }, A: side('A'), B: side('B') })));
}

const teeth = fc.record({ driver: fc.integer({ min: 13, max: 45 }), driven: fc.integer({ min: 13, max: 45 }) });
const limb = fc.array(teeth, { maxLength: 2 });
const pump = fc.record({
  displacement_cc: fc.integer({ min: 1, max: 100 }),
  pressure_bar: fc.integer({ min: 1, max: 200 }),
  efficiency_percent: fc.integer({ min: 30, max: 100 }),
});
const drive: fc.Arbitrary<Branched> = fc.record({
  shared: limb,
  own: fc.record({ A: limb, B: limb }),
  pumps: fc.record({ A: pump, B: pump }),
});

function expectSame(value: number, expected: number): void {
  expect(Math.abs(value / expected - 1)).toBeLessThan(1e-12);
}

describe('laws', () => {
  test('the work at the motor, less what stages and pumps lose, is pressure times flow of both pumps [energy; 0.98 a stage is common practice, no source]', () => {
    fc.assert(
      fc.property(drive, (drawn) => {
        const plan = branched(drawn);
        const running = runningAt(plan, { pumps: fittedPumps(plan), teeth: fittedTeeth(plan) }, input('dial', ONE, 'share'));
        const atMotor_W = 2 * Math.PI * newtonMetres(load(plan).motor) * float(running.motorSpeed.value);
        const asked_W = (['A', 'B'] as const).map((side) => {
          const hydraulic_W = drawn.pumps[side].pressure_bar * 1e5 * float(running.flow[side].value);
          const passedOn = 0.98 ** (drawn.shared.length + drawn.own[side].length);
          return hydraulic_W / (drawn.pumps[side].efficiency_percent / 100) / passedOn;
        });
        expectSame(
          atMotor_W,
          asked_W.reduce((sum, one) => sum + one),
        );
      }),
    );
  });

  test('twice the pressure is twice the torque, at both pumps, at every stage and at the motor [proportion]', () => {
    fc.assert(
      fc.property(drive, (drawn) => {
        const twice = ({ pressure_bar, ...rest }: PumpDrawn): PumpDrawn => ({ ...rest, pressure_bar: 2 * pressure_bar });
        const [once, doubled] = [drawn, { ...drawn, pumps: { A: twice(drawn.pumps.A), B: twice(drawn.pumps.B) } }].map((one) => {
          const { pumps, stages, motor } = load(branched(one));
          return [pumps.A, pumps.B, motor, ...stages.map(({ torque }) => torque)].map(newtonMetres);
        });
        expect(once).toHaveLength(3 + drawn.shared.length + drawn.own.A.length + drawn.own.B.length);
        for (const [index, torque] of (once ?? []).entries()) expectSame(doubled?.[index] ?? Number.NaN, 2 * torque);
      }),
    );
  });

  test('through a train a torque goes with the product of driver over driven, whatever the order of the stages [lever arms; 0.98 a stage]', () => {
    fc.assert(
      fc.property(fc.array(teeth, { minLength: 1, maxLength: 3 }), pump, (train, drawn) => {
        const nothing: PumpDrawn = { ...drawn, pressure_bar: 0 };
        const atMotor = (stages: readonly Teeth[]): number =>
          newtonMetres(load(branched({ shared: [], own: { A: [], B: stages }, pumps: { A: nothing, B: drawn } })).motor);
        const ratio = train.reduce((product, { driver, driven }) => product * (driver / driven), 1);
        expectSame(atMotor(train), (atMotor([]) * ratio) / 0.98 ** train.length);
        expectSame(atMotor([...train].reverse()), atMotor(train));
      }),
    );
  });
});

/** A and, behind 30 to 20 teeth, B on a shaft that the motor turns through 20 to 40; `spare` turns nothing. The last stage of the train stands first in the file. */
const spread = (): Plan => {
  const side = (shaft: string, id: string, displacement_cc: string, efficiency: number) => ({
    shaft,
    fitted: id,
    pumps: [pumpRow(id, displacement_cc)],
    pressure: bar(100),
    mechanicalEfficiency: percent(efficiency),
  });
  const machine = inLine([stageRow(30, 20), stageRow(17, 17, { name: 'spare' }), stageRow(20, 40)]);
  return planOf(
    shopOf({
      ...machine,
      shafts: [
        { id: 'motor' },
        { id: 'jack', turnedBy: { shaft: 'motor', stage: 's3' } },
        { id: 'b', turnedBy: { shaft: 'jack', stage: 's1' } },
        { id: 'idle', turnedBy: { shaft: 'b', stage: 's2' } },
      ],
      A: side('jack', 'pump-a', '10', 100),
      B: side('b', 'pump-b', '5', 50),
    }),
  );
};

describe('a jackshaft with pump A on it and pump B behind it', () => {
  // By hand from 15.9155 N m at each pump: B asks 15.9155 · 1.5 / 0.98 of the jackshaft, both together 40.2759, half of it / 0.98 the motor.
  const { pumps, stages, motor } = load(spread());

  test('every stage carries what hangs behind it [statics, worked by hand]', () => {
    expect([pumps.A, pumps.B].map(newtonMetres)).toEqual([expect.closeTo(15.9155, 4), expect.closeTo(15.9155, 4)]);
    expect(stages.map(({ torque }) => newtonMetres(torque))).toEqual([expect.closeTo(15.9155, 4), expect.closeTo(40.2759, 4)]);
    expect(newtonMetres(motor)).toBeCloseTo(20.549, 4);
  });
  test('in the order of the plan, each with its own teeth; the stage that turns no pump is left out', () => {
    expect(stages.map(({ stage, teeth }) => [stage.id, teeth])).toEqual([
      ['s1', pair(30, 20)],
      ['s3', pair(20, 40)],
    ]);
  });
  test('other teeth than the fitted ones count where they are asked for [worked by hand]', () => {
    const other = load(spread(), [pair(20, 20), pair(17, 17), pair(20, 20)]);
    expect(newtonMetres(other.motor)).toBeCloseTo((15.9155 + 15.9155 / 0.98) / 0.98, 3);
  });
  test('printed as computed, with the names that a person reads [mathjs, npm]', () => {
    expectPrinted(worked(motor));
    expect([pumps.A, pumps.B, motor].map((torque) => worked(torque).what)).toEqual([
      'torque of pump A',
      'torque of pump B',
      'torque at the motor',
    ]);
  });
});

test('20.5490 N m of 45 N m are 45.664 % of the rating [arithmetic]', () => {
  const share = ratedShare(worked(load(spread()).motor), input('rated torque', 45, 'torque'));
  expect(share.value).toBeCloseTo(0.45664, 5);
  expectPrinted(share);
});

test('a stage that is not there is a fault of the program, named with its number', () => {
  expect(() => stageAt(spread(), 3)).toThrow(new RangeError('stageAt: there is no stage 3'));
  expect(() => teethAt([pair(20, 20)], 1)).toThrow(new RangeError('teethAt: stage 1 has no teeth'));
});
