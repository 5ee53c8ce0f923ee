import { describe, expect, test } from 'vitest';
import type { MachineRow } from '../../core/src/file/machine.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import type { Given } from '../../core/src/given.ts';
import { offRatio } from '../../core/src/mixRatio.ts';
import type { Build, Plan } from '../../core/src/plan.ts';
import { exactText, Fraction, float, ONE } from '../../core/src/ratio.ts';
import { gapFlow, slipFlow, slipMissing, slipOfFlow, slipShare } from '../../core/src/slip.ts';
import { fittedPumps, fittedTeeth } from '../../core/src/train.ts';
import { inLine, mm, planOf, pumpRow, rpm, shopOf, stageRow } from './planFixture.ts';
import { expectPrinted } from './printedFormula.ts';

const exact = (text: string) => new Fraction(text);
const bar = (value: string) => ({ value, unit: 'bar' });
const mPas = (value: string) => ({ viscosity: { value, unit: 'mPa s' } });

function givenValue<Of>(found: Given<Of>): Of {
  if (!found.known) throw new Error('not given');
  return found.value;
}

type Viscosities = Pick<ShopFile['materials'][number], 'A' | 'B'>;
const THICK_AND_THIN: Viscosities = { A: mPas('800'), B: mPas('200') };

// Equal pumps of 10 cc at one speed, 60 rpm, of which 600 cc/min; 10 bar across each; a gap 20 mm wide and 3 mm long.
const equalPumps = (more: Partial<MachineRow> = {}): MachineRow => {
  const gear = { teeth: 12, gapWidth: mm('20'), gapLength: mm('3') };
  const machine = inLine([stageRow(20, 20)]);
  return {
    ...machine,
    motor: { speed: rpm('60'), usable: { from: { value: '25', unit: '%' }, to: { value: '100', unit: '%' } } },
    A: { ...machine.A, pumps: [pumpRow('pump-a', '10', { gear })], pressure: bar('10') },
    B: { ...machine.B, pumps: [pumpRow('pump-b', '10', { gear })], pressure: bar('10') },
    ...more,
  };
};
const planned = (more: Partial<MachineRow> = {}, liquids = THICK_AND_THIN): Plan => planOf(shopOf(equalPumps(more), [], liquids));
const fitted = (plan: Plan): Build => ({ pumps: fittedPumps(plan), teeth: fittedTeeth(plan) });

describe('flow through a flat gap', () => {
  const put = { w: exact('0.02'), h: exact('0.00005'), Δp: exact('1000000'), μ: ONE, L: exact('0.003') };

  test('20 mm wide, 50 µm high, 3 mm long, 10 bar, 1 Pa s: 6.94444e-8 m³/s, which is 4.1667 cc/min [plane Poiseuille flow, from memory; recomputed]', () => {
    // The wall that moves at 0.5 m/s would drag 2.5e-7 along: that part is in the displacement already.
    expect(Math.abs(float(gapFlow.of(put)) - 6.94444e-8)).toBeLessThanOrEqual(0.5e-13);
    expect(float(gapFlow.of(put)) * 6e7).toBeCloseTo(4.1667, 4);
  });
  test('the same as the speed profile summed over the gap [numerical integration]', () => {
    const [w, h, Δp, μ, L] = [0.02, 5e-5, 1e6, 1, 0.003];
    const steps = 20_000;
    let sum = 0;
    for (let step = 0; step < steps; step += 1) {
      const y = ((step + 0.5) / steps) * h;
      sum += (Δp / (2 * μ * L)) * y * (h - y);
    }
    expect(float(gapFlow.of(put)) / ((w * sum * h) / steps)).toBeCloseTo(1, 7);
  });
  test('the gap enters cubed, pressure and viscosity straight [the formula’s own law]', () => {
    const once = gapFlow.of(put);
    expect(
      gapFlow
        .of({ ...put, h: put.h.mul('2') })
        .div(once)
        .equals('8'),
    ).toBe(true);
    expect(gapFlow.of({ ...put, Δp: put.Δp.mul('2') }).equals(once.mul('2'))).toBe(true);
    expect(gapFlow.of({ ...put, μ: put.μ.mul('2') }).equals(once.div('2'))).toBe(true);
  });
});

describe('slip as a band', () => {
  test('1 % of an 800 mPa s resin is 4 % of 200 mPa s: the thin side stands at 0.9697, −3.03 % [arithmetic: slip is proportional to 1 over viscosity]', () => {
    const A = exact('0.01');
    const plan = planned();
    const of = (side: 'A' | 'B') => givenValue(slipShare(plan, fitted(plan), side)).atGap.value;
    const B = A.mul(of('B').div(of('A')));
    expect(exactText(B)).toBe('1/25');
    const left = ONE.sub(B).div(ONE.sub(A));
    expect(float(left)).toBeCloseTo(0.9697, 4);
    expect(100 * float(offRatio(left, ONE))).toBeCloseTo(-3.0303, 4);
  });
  test('from half to twice the usual gap of 10 µm: an eighth and eight times of its slip [our choice of band]', () => {
    const plan = planned();
    const { least, atGap, most } = givenValue(slipFlow(plan, fitted(plan), 'B'));
    expect(atGap.value.div(least.value).equals('8')).toBe(true);
    expect(most.value.div(atGap.value).equals('8')).toBe(true);
    // 0.02 · 1e-15 · 1e6 / (12 · 0.2 · 0.003) m³/s
    expect(float(atGap.value) * 6e7).toBeCloseTo(1 / 6, 6);
  });
  test('without a wanted flow it is a share of the least: 150 of 600 cc/min [our choice: where it weighs most]', () => {
    const plan = planned();
    const { atGap } = givenValue(slipShare(plan, fitted(plan), 'B'));
    expect(exactText(atGap.value)).toBe('1/900');
  });
  test('with one, of the flow at the setting for it: 450 of 900 cc/min', () => {
    const plan = planned({ wantedFlow: { value: '900', unit: 'cc/min' } });
    const { atGap } = givenValue(slipShare(plan, fitted(plan), 'B'));
    expect(exactText(atGap.value)).toBe('1/2700');
  });
  test('no more is lost than is moved [our choice]', () => {
    expect(exactText(slipOfFlow.of({ q: exact('3'), Q: exact('2') }))).toBe('1/1');
    expect(exactText(slipOfFlow.of({ q: exact('1'), Q: exact('2') }))).toBe('1/2');
    const thin = planned({}, { A: mPas('800'), B: mPas('0.01') });
    const { least, most } = givenValue(slipShare(thin, fitted(thin), 'B'));
    expect([float(least.value) < 1 ? 'part' : 'all', exactText(most.value)]).toEqual(['all', '1/1']);
  });
  test('printed as computed [mathjs, npm]', () => {
    const plan = planned();
    for (const worked of Object.values(givenValue(slipShare(plan, fitted(plan), 'A')))) expectPrinted(worked);
  });
});

describe('no estimate', () => {
  const lacking = (plan: Plan) => {
    const build = fitted(plan);
    expect(slipShare(plan, build, 'B').known).toBe(false);
    return slipMissing(plan, build, 'B');
  };
  const side = (more: Partial<MachineRow['B']>): Partial<MachineRow> => ({ B: { ...equalPumps().B, ...more } });
  const pumpWith = (gear: NonNullable<MachineRow['B']['pumps'][number]['gear']>) => side({ pumps: [pumpRow('pump-b', '10', { gear })] });

  test('says what is missing, and where it belongs', () => {
    const B = ['machines', 0, 'B'];
    const atPump = [...B, 'pumps', 0];
    const { pressure: _pressure, ...unpressed } = equalPumps().B;
    expect(lacking(planned({ B: unpressed }))).toEqual({ where: [...B, 'pressure'], words: 'the pressure' });
    expect(lacking(planned({}, { A: mPas('800'), B: {} }))).toEqual({
      where: ['materials', 0, 'B', 'viscosity'],
      words: 'the viscosity of B',
    });
    expect(lacking(planned(pumpWith({ teeth: 12, gapWidth: mm('20') })))?.where).toEqual([...atPump, 'gear', 'gapLength']);
    expect(lacking(planned(side({ pumps: [pumpRow('pump-b', '10')] })))).toEqual({
      where: [...atPump, 'gear'],
      words: 'the width of its gap, the length of its gap',
    });
  });
  test('where the dial may stand at nothing and no flow is wanted, there is nothing to relate it to', () => {
    const plan = planned({ motor: { speed: rpm('60') } });
    expect(givenValue(slipFlow(plan, fitted(plan), 'B')).atGap.dimension).toBe('flow');
    expect(lacking(plan)?.where).toEqual(['machines', 0, 'motor', 'usable']);
  });
  test('a measured delivery says it better', () => {
    const measuredDelivery = { value: { value: '97', unit: '%' } };
    const [pump] = equalPumps().B.pumps;
    if (pump === undefined) throw new Error('no pump');
    const plan = planned(side({ pumps: [{ ...pump, measuredDelivery }] }));
    expect(slipFlow(plan, fitted(plan), 'B').known).toBe(false);
    expect(lacking(plan)).toBeNull();
    expect(slipShare(plan, fitted(plan), 'A').known).toBe(true);
  });
});
