import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { expectedCatch } from '../../core/src/expectedCatch.ts';
import { fixed } from '../../core/src/format.ts';
import { known, NOT_GIVEN } from '../../core/src/given.ts';
import type { Plan } from '../../core/src/plan.ts';
import { exactText, Fraction, whole } from '../../core/src/ratio.ts';
import { fittedPumps } from '../../core/src/train.ts';
import { demoPlan, E12_ON_BENCH_1, metric, pair } from './sheet/demoSheet.ts';

const grams = (mass_kg: ReturnType<typeof expectedCatch>['sides']['A']['mass_kg']): string =>
  mass_kg.known ? fixed(mass_kg.value.mul(1000), 1, metric) : 'not given';

const caught = (plan: Plan, teeth = [pair(23, 25)]) => expectedCatch(plan, fittedPumps(plan), teeth);

describe('E12 on Bench 1, 23 to 25, 20 motor turns [invented example, worked out apart from this program]', () => {
  const { motorTurns, sides, limitsOnB } = caught(demoPlan(E12_ON_BENCH_1));

  test('A 275.5 g, B 107.1 g', () => {
    expect(motorTurns).toBe(20);
    expect([grams(sides.A.mass_kg), grams(sides.B.mass_kg)]).toEqual(['275.5', '107.1']);
  });

  test('limits on B 105.0 to 109.3 g', () => {
    expect([limitsOnB?.low, limitsOnB?.high].map((limit) => limit && grams(limit.mass_kg))).toEqual(['105.0', '109.3']);
  });

  test('pump A turns 20 times, pump B 20 x 23/25 times; 240 and 110.4 cc [arithmetic]', () => {
    expect([sides.A.pumpTurns, sides.B.pumpTurns].map(exactText)).toEqual(['20/1', '92/5']);
    expect([sides.A.volume_m3, sides.B.volume_m3].map((volume) => exactText(volume.mul(1_000_000)))).toEqual(['240/1', '552/5']);
  });
});

describe('what is not given', () => {
  const plan = demoPlan(E12_ON_BENCH_1);

  test('without a density there is a volume and no mass, on that side alone', () => {
    const { sides, limitsOnB } = caught({
      ...plan,
      mix: { ...plan.mix, density_kg_per_m3: { ...plan.mix.density_kg_per_m3, B: NOT_GIVEN } },
    });
    expect(sides.A.mass_kg.known).toBe(true);
    expect(sides.B.mass_kg).toEqual(NOT_GIVEN);
    expect(limitsOnB?.low.mass_kg).toEqual(NOT_GIVEN);
    expect(exactText(sides.B.volume_m3)).toBe('69/625000');
  });

  test('without limits of the material there are none on the catch', () => {
    expect(caught({ ...plan, mix: { ...plan.mix, limits: null } }).limitsOnB).toBeNull();
  });
});

describe('laws [definitions]', () => {
  const plan = demoPlan(E12_ON_BENCH_1);
  const teeth = fc.integer({ min: 5, max: 100 });

  test('B per A of the catch is the ratio made; the limits on B are as far apart as the limits of the material', () => {
    const limits = { low: new Fraction('-3/100'), high: new Fraction('1/100') };
    const limited = { ...plan, mix: { ...plan.mix, limits } };
    fc.assert(
      fc.property(teeth, teeth, fc.integer({ min: 1, max: 1000 }), (driver, driven, catchTurns) => {
        const { sides, limitsOnB } = caught({ ...limited, catchTurns }, [pair(driver, driven)]);
        expect(sides.B.volume_m3.div(sides.A.volume_m3).equals(new Fraction(6, 12).mul(driver).div(driven))).toBe(true);
        if (limitsOnB === null) throw new Error('no limits');
        expect(limitsOnB.high.volume_m3.div(limitsOnB.low.volume_m3).equals(new Fraction(101, 97))).toBe(true);
        expect(limitsOnB.low.volume_m3.div(sides.A.volume_m3).equals(plan.mix.wantedBPerA.mul(new Fraction(97, 100)))).toBe(true);
      }),
    );
  });

  test('mass is density times volume, and twice the turns are twice the catch', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 500 }), (density, turns) => {
        const dense = { ...plan, mix: { ...plan.mix, density_kg_per_m3: { A: known(whole(density)), B: known(whole(density)) } } };
        const once = caught({ ...dense, catchTurns: turns }).sides.B;
        const twice = caught({ ...dense, catchTurns: 2 * turns }).sides.B;
        if (!once.mass_kg.known || !twice.mass_kg.known) throw new Error('no mass');
        expect(once.mass_kg.value.div(once.volume_m3).equals(whole(density))).toBe(true);
        expect(twice.mass_kg.value.div(once.mass_kg.value).equals(whole(2))).toBe(true);
      }),
    );
  });

  test('a stage without teeth is refused', () => {
    expect(() => caught(plan, [])).toThrow(RangeError);
  });
});
