import { describe, expect, test } from 'vitest';
import type { MachineRow } from '../../core/src/file/machine.ts';
import type { Given } from '../../core/src/given.ts';
import type { Pump } from '../../core/src/plan.ts';
import {
  aboveTypedShare,
  annulusDisplacement,
  centreDisplacement,
  displacementOf,
  involuteDisplacement,
  sizeMissing,
} from '../../core/src/pumpGear.ts';
import { Fraction, float } from '../../core/src/ratio.ts';
import { fittedPumps } from '../../core/src/train.ts';
import { toSI } from '../../core/src/units.ts';
import type { Worked } from '../../core/src/working.ts';
import { inLine, mm, planOf, pumpRow, shopOf, stageRow } from './planFixture.ts';
import { expectPrinted } from './printedFormula.ts';

type GearRow = NonNullable<MachineRow['A']['pumps'][number]['gear']>;

function pumpWith(gear: GearRow | undefined, displacement_cc = '10'): Pump {
  const machine = inLine([stageRow(17, 34)]);
  const row = pumpRow('pump-a', displacement_cc, gear && { gear });
  return fittedPumps(planOf(shopOf({ ...machine, A: { ...machine.A, pumps: [row] } }))).A;
}

function givenValue(found: Given<Worked<number>>): Worked<number> {
  if (!found.known) throw new Error('no displacement');
  return found.value;
}

const inch_m = (text: string): number => float(toSI('length', new Fraction(text), 'in'));
const CUBIC_INCH_m3 = 0.0254 ** 3;
const GALLON_A_MINUTE_m3_per_s = (231 * CUBIC_INCH_m3) / 60;
const TWENTY_DEGREES = (20 * Math.PI) / 180;

describe('ring between outside and inside diameter', () => {
  test('3 in, 2 in, 1 in wide: 3.93 in³; at 1800 rpm 30.6 gpm, of which 28 are 91.5 % [Fluid Power with Applications, external gear pump example, from memory]', () => {
    const V = annulusDisplacement.of({ D: inch_m('3'), d: inch_m('2'), L: inch_m('1') });
    expect(V / CUBIC_INCH_m3).toBeCloseTo(3.93, 2);
    const flow_gpm = (V * 30) / GALLON_A_MINUTE_m3_per_s;
    expect(flow_gpm).toBeCloseTo(30.6, 1);
    expect((100 * 28) / flow_gpm).toBeCloseTo(91.5, 1);
  });
  test('75 mm, 50 mm, 25 mm wide: 0.0614 L; at 1000 rpm and 90 % 0.0553 m³/min [Fluid Power with Applications, second example, from memory]', () => {
    const V = annulusDisplacement.of({ D: 0.075, d: 0.05, L: 0.025 });
    expect(V * 1000).toBeCloseTo(0.0614, 4);
    expect(V * 1000 * 0.9).toBeCloseTo(0.0553, 3);
  });
  test('80 mm, 55 mm, 25 mm wide: 66.2 cc; at 2300 rpm 0.00254 m³/s, of which 140 L/min are 91.85 % [solved question on smartsolve.ai, seen]', () => {
    const V = annulusDisplacement.of({ D: 0.08, d: 0.055, L: 0.025 });
    expect(V * 1e6).toBeCloseTo(66.2, 0);
    expect((V * 2300) / 60).toBeCloseTo(0.00254, 5);
    expect(0.14 / (V * 2300)).toBeCloseTo(0.9185, 3);
  });
});

describe('outside diameter and centre distance', () => {
  test('5.039 cm, 4.206 cm, 1.614 cm wide: 19.52 cc, measured pump of nominal 19 [pump workshop sheet, paperzz.com/doc/7823320, seen]', () => {
    expect(centreDisplacement.of({ D: 0.05039, a: 0.04206, b: 0.01614 }) * 1e6).toBeCloseTo(19.52, 2);
  });
});

describe('involute teeth', () => {
  const twelve = { b: 0.02, m: 0.003, z: 12, α: TWENTY_DEGREES };

  test('12 teeth of module 3 mm, 20 mm wide: 13 881.277 mm³ [classical derivation, from memory; recomputed]', () => {
    expect(involuteDisplacement.of(twelve) * 1e9).toBeCloseTo(13_881.277, 2);
  });
  test('the same as ra² − r² − s² summed over one base pitch [numerical integration]', () => {
    const { b, m, z, α } = twelve;
    const r = (m * z) / 2;
    const basePitch = Math.PI * m * Math.cos(α);
    const steps = 20_000;
    let sum = 0;
    for (let step = 0; step < steps; step += 1) {
      const s = ((step + 0.5) / steps - 0.5) * basePitch;
      sum += (r + m) ** 2 - r ** 2 - s ** 2;
    }
    const perTurn = 2 * Math.PI * b * (sum / steps);
    expect(involuteDisplacement.of(twelve) / perTurn).toBeCloseTo(1, 8);
  });
  test('between the textbook estimates 2 π z m² b = 13 571.7 and 6.66 z m² b = 14 385.6 mm³ [hydraulics textbooks, from memory]', () => {
    const V = involuteDisplacement.of(twelve) * 1e9;
    expect(V).toBeGreaterThan(13_571.7);
    expect(V).toBeLessThan(14_385.6);
  });
});

describe('which form is used follows from what is given [our choice]', () => {
  const all: GearRow = {
    teeth: 12,
    module: mm('3'),
    faceWidth: mm('20'),
    outsideDiameter: mm('42'),
    insideDiameter: mm('30'),
    centreDistance: mm('36'),
  };
  const formOf = (gear: GearRow): string => givenValue(displacementOf(pumpWith(gear), 'A')).formula.written;
  const { module: _m, ...withoutModule } = all;
  const { centreDistance: _a, ...diameters } = withoutModule;
  const { insideDiameter: _d, ...incomplete } = diameters;

  test('involute before centre distance before ring; each printed formula gives its result [mathjs, npm]', () => {
    expect([all, withoutModule, diameters].map(formOf)).toEqual([
      involuteDisplacement.written,
      centreDisplacement.written,
      annulusDisplacement.written,
    ]);
    for (const gear of [all, withoutModule, diameters]) expectPrinted(givenValue(displacementOf(pumpWith(gear), 'A')));
  });
  test('13.881 cc of module 3 mm by way of a shop file', () => {
    const byGears = givenValue(displacementOf(pumpWith(all, '12.5'), 'A'));
    expect(byGears.value * 1e6).toBeCloseTo(13.881, 3);
    expect(aboveTypedShare(byGears, pumpWith(all, '12.5'))).toBeCloseTo(0.1105, 4);
  });
  test('too few sizes make none, and the one that is nearest at hand is named', () => {
    const { faceWidth: _b, ...flat } = all;
    for (const gear of [incomplete, flat, { teeth: 12 }]) expect(displacementOf(pumpWith(gear), 'A').known).toBe(false);
    expect(displacementOf(pumpWith(undefined), 'A').known).toBe(false);
    const missing = (gear: GearRow) => {
      const pump = pumpWith(gear);
      if (!pump.gear.known) throw new Error('no gear');
      return sizeMissing(pump.gear.value);
    };
    expect([all, incomplete, flat, { teeth: 12 }].map(missing)).toEqual([null, 'module_m', 'faceWidth_m', null]);
  });
});
