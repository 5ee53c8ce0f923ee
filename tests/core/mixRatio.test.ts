import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Given, known, NOT_GIVEN } from '../../core/src/given.ts';
import { limitsOfOffRatio as limitsWorked, limitValues } from '../../core/src/limits.ts';
import {
  densityAsRun,
  densityAt,
  expansionOfTwo,
  volumeGrowth as growth,
  keepsVolume,
  type Liquid,
  mixedDensity,
  stated,
} from '../../core/src/liquid.ts';
import { byVolume, offRatio, type PartsDefinition } from '../../core/src/mixRatio.ts';
import { exactText, Fraction, float, ONE, ratioOf, ZERO } from '../../core/src/ratio.ts';
import { input } from '../../core/src/working.ts';

// The formulas with their numbers in a row, as a page of sums has them.
const volumeFromWeight = (w: Fraction, d: Fraction): Fraction => byVolume.of({ w, d });
const densityAt_kg_per_m3 = (density: Fraction, at: Fraction, β: Fraction, T: Fraction): Fraction =>
  densityAsRun.of({ 'ρ₀': density, β, T, 'T₀': at });
const expansionFromTwo_per_K = (one: Fraction, oneAt: Fraction, two: Fraction, twoAt: Fraction): Fraction =>
  expansionOfTwo.of({ 'ρ₁': one, 'ρ₂': two, 'T₁': oneAt, 'T₂': twoAt });
const volumeGrowth = (one: Liquid, from: Given<Fraction>, at: Given<Fraction>): Fraction => growth(stated('it', one), from, at).value;
const runningDensity_kg_per_m3 = (one: Liquid, at: Given<Fraction>): Given<Fraction> => {
  const density = densityAt(stated('it', one), at, 'as run');
  return density.known ? known(density.value.value) : NOT_GIVEN;
};
const mixedDensity_kg_per_m3 = (shares: readonly (readonly [Fraction, Fraction])[]): Fraction =>
  mixedDensity(
    'density',
    shares.map(([mass, density]) => [input('mass', mass, 'number'), input('density', density, 'density')] as const),
  ).value;
const limitsOfOffRatio = (...row: Parameters<typeof limitsWorked>) => limitValues(limitsWorked(...row));
const f = (text: string): Fraction => new Fraction(text);
const celsius = (text: string): Fraction => f(text).add(f('273.15'));
const percent = (value: Fraction): number => 100 * float(value);

/** Within half a unit of the last place printed. */
function expectPrinted(value: number, printed: string): void {
  const places = printed.split('.')[1]?.length ?? 0;
  expect(Math.abs(value - Number(printed)), `${value} against ${printed}`).toBeLessThanOrEqual(0.5000001 * 10 ** -places);
}

function liquid(density: string, at: string, expansion: string, runAt?: string): Liquid {
  return {
    density_kg_per_m3: known(f(density)),
    densityAt_K: known(celsius(at)),
    expansion_per_K: known(f(expansion)),
    runAt_K: runAt === undefined ? NOT_GIVEN : known(celsius(runAt)),
  };
}

describe('by weight and by volume', () => {
  test('100 : 20.6 by weight, 1.16 and 0.97 g/cm3 → 24.635 parts by volume per 100 [arithmetic, from memory]', () => {
    const byVolume = volumeFromWeight(ratioOf(206, 1000), f('0.97').div(f('1.16')));
    expect(Math.abs(100 * float(byVolume) - 24.635)).toBeLessThanOrEqual(0.001);
    // 20.6 x 1.16 / (100 x 0.97) = 5974 / 24250
    expect(exactText(byVolume)).toBe('2987/12125');
  });
  test('2 % by weight of a catalyst of 1.15 g/mL is 173.913 mL for 10 kg; 200 mL would be 2.3 % [rule of thumb in grams, common practice, no source]', () => {
    // Resin of 1 g/mL, so that 10 kg fill 10 L; its density cancels from the off-ratio.
    const wanted = volumeFromWeight(f('0.02'), f('1.15'));
    expectPrinted(10_000 * float(wanted), '173.91304');
    expect(exactText(offRatio(f('0.02'), wanted).add(ONE).mul(f('2')))).toBe(exactText(f('2.3')));
  });
});

describe('density and temperature', () => {
  // As printed, kg per cubic metre at degrees Celsius.
  const WATER: Readonly<Record<string, string>> = {
    0: '999.8428',
    4: '999.9749',
    10: '999.7027',
    15: '999.1026',
    20: '998.2067',
    25: '997.047',
    30: '995.6488',
    40: '992.2152',
  };
  const water = (t: string): string => {
    const printed = WATER[t];
    if (printed === undefined) throw new Error(`no density of water at ${t} °C`);
    return printed;
  };
  const tanaka = (t: number): number => 999.97495 * (1 - ((t - 3.983035) ** 2 * (t + 301.797)) / (522528.9 * (t + 69.34881)));

  test('the water densities used here agree with their formula [Tanaka et al., Metrologia 38 (2001) 301, from memory]', () => {
    for (const [t, printed] of Object.entries(WATER)) expect(Math.abs(tanaka(Number(t)) - Number(printed))).toBeLessThanOrEqual(0.0002);
  });

  // Between two densities the volume runs on a straight line here, the water's own on a bent one: the line errs by at most h²/8 of the
  // largest second derivative of the volume over the h kelvins between them. From 20 and 30 °C that is 0.14 kg/m3 (it is 0.12 at 25 °C).
  test.each([
    ['10', '15', '20', 0.19],
    ['20', '25', '30', 0.14],
    ['20', '30', '40', 0.54],
  ])(
    'water, from %s and %s to %s °C: low, and by less than %s kg/m3 [Tanaka et al. 2001, from memory; bound of linear interpolation]',
    (first, middle, second, bound) => {
      const expansion = expansionFromTwo_per_K(f(water(first)), celsius(first), f(water(second)), celsius(second));
      const between = densityAt_kg_per_m3(f(water(first)), celsius(first), expansion, celsius(middle));
      const short = Number(water(middle)) - float(between);
      expect(short).toBeGreaterThan(0);
      expect(short).toBeLessThanOrEqual(bound);
      expect(short).toBeLessThanOrEqual(interpolationBound(Number(first), Number(second)));
      expect(interpolationBound(Number(first), Number(second))).toBeLessThanOrEqual(bound);
    },
  );

  /** kg/m3, from second differences of the specific volume by the formula; the rounding of the printed densities on top. */
  function interpolationBound(from: number, to: number): number {
    const volume = (t: number) => 1 / tanaka(t);
    const bends = [from, (from + to) / 2, to].map((t) => Math.abs(volume(t - 0.1) - 2 * volume(t) + volume(t + 0.1)) / 0.01);
    return ((to - from) ** 2 / 8) * Math.max(...bends) * 1000 ** 2 + 0.0002;
  }

  test('through both densities exactly: water at 20 and 30 °C [definition]', () => {
    const expansion = expansionFromTwo_per_K(f(water('20')), celsius('20'), f(water('30')), celsius('30'));
    for (const t of ['20', '30']) {
      expect(exactText(densityAt_kg_per_m3(f(water('20')), celsius('20'), expansion, celsius(t)))).toBe(exactText(f(water(t))));
    }
  });

  test('glycerol, 0.0005 per K over 40 K: ρ1/ρ2 - 1 = 0.02 [school physics example]', () => {
    const cold = f('1260');
    const warm = densityAt_kg_per_m3(cold, celsius('20'), f('0.0005'), celsius('60'));
    expect(exactText(cold.div(warm).sub(ONE))).toBe('1/50');
  });

  describe('liquid siloxane, ρ = 0.9846 - 8.81e-4 T g/cm3, 30 to 51 °C [dilatometer paper, abstract]', () => {
    const line = (t: string) => f('984.6').sub(f('0.881').mul(f(t)));
    test('0.9582 g/cm3 at 30 °C', () => {
      expect(Math.abs(float(line('30')) / 1000 - 0.9582)).toBeLessThanOrEqual(0.0001);
    });
    test('expansion 9.19e-4 per K at 30 °C, from two densities close together', () => {
      // A tenth of a kelvin apart, the chord differs from the tangent by 4e-8 per K.
      const expansion = expansionFromTwo_per_K(line('30'), celsius('30'), line('29.9'), celsius('29.9'));
      expectPrinted(10_000 * float(expansion), '9.19');
    });
    test('between 30 and 51 °C the straight line of the volume stays within 0.0001 g/cm3 of the straight line of the density', () => {
      // 2 (slope/ρ)² h²/8 with h = 21 K: 0.000095 of the density.
      const expansion = expansionFromTwo_per_K(line('30'), celsius('30'), line('51'), celsius('51'));
      for (let t = 30; t <= 51; t += 1) {
        const between = densityAt_kg_per_m3(line('30'), celsius('30'), expansion, celsius(String(t)));
        expect(Math.abs(float(between.sub(line(String(t)))))).toBeLessThan(0.1);
      }
    });
  });

  test('1.16 g/cm3 at 25 °C that expands by 0.00062 per K is 1.14790 at 42 °C [invented example; definition]', () => {
    expectPrinted(float(densityAt_kg_per_m3(f('1160'), celsius('25'), f('0.00062'), celsius('42'))) / 1000, '1.14790');
  });
});

describe('limits as a sheet defines them', () => {
  const limits = (definition: PartsDefinition, low: string, high: string, a: string, b: string) => {
    const found = limitsOfOffRatio(definition, f(low), f(high), f(a), f(b));
    return [found.low, found.high] as const;
  };
  const asBPerA = (ends: readonly Fraction[]) => ends.map((e) => exactText(ONE.add(e)));

  test('target 100 : 33, allowed 100 : 30 to 100 : 40: -9.09091 % and +21.21212 % [glossary note on tolerances; arithmetic]', () => {
    const [low, high] = limits('parts of B', '30', '40', '100', '33');
    expectPrinted(percent(low), '-9.09091');
    expectPrinted(percent(high), '21.21212');
    const verdict = (parts: string) => {
      const e = offRatio(ratioOf(1, 100).mul(f(parts)), ratioOf(33, 100));
      return [percent(e).toFixed(5), e.compare(low) < 0 ? 'low' : e.compare(high) > 0 ? 'high' : 'inside'];
    };
    expect(['29.5', '38', '40.2'].map(verdict)).toEqual([
      ['-10.60606', 'low'],
      ['15.15152', 'inside'],
      ['21.81818', 'high'],
    ]);
    expect(['30', '40'].map((parts) => verdict(parts)[1])).toEqual(['inside', 'inside']);
  });
  test('three readings of 5 % on 1 : 1: 0.95 to 1.05, 0.95238 to 1.05263, 0.81818 to 1.22222 [arithmetic]', () => {
    expect(asBPerA(limits('% of B per A', '-5', '5', '1', '1'))).toEqual(['19/20', '21/20']);
    expect(asBPerA(limits('% of A per B', '-5', '5', '1', '1'))).toEqual(['20/21', '20/19']);
    expect(asBPerA(limits('points of B in the total', '-5', '5', '1', '1'))).toEqual(['9/11', '11/9']);
    for (const [exact, printed] of [
      ['20/21', '0.95238'],
      ['20/19', '1.05263'],
      ['9/11', '0.81818'],
      ['11/9', '1.22222'],
    ] as const) {
      expectPrinted(float(f(exact)), printed);
    }
  });
  test('51 % A on a 50/50 target: 1 point of the total, 4.08163 % of A per B, -3.92157 % of B per A [machine-data standard; arithmetic]', () => {
    const made = offRatio(ratioOf(49, 51), ONE);
    expectPrinted(percent(made), '-3.92157');
    expectPrinted(percent(ratioOf(51, 49).sub(ONE)), '4.08163');
    expect(exactText(limits('points of B in the total', '-1', '1', '50', '50')[0])).toBe(exactText(made));
    expect(exactText(limits('% of A per B', '-1', '200/49', '50', '50')[0])).toBe(exactText(made));
    expect(exactText(limits('parts of B', '2450/51', '50', '50', '50')[0])).toBe(exactText(made));
  });
});

describe('laws', () => {
  const natural = fc.integer({ min: 1, max: 9999 });
  const fraction = fc.tuple(natural, natural).map(([n, d]) => ratioOf(n, d));
  const temperature_K = fc.integer({ min: 2132, max: 6732 }).map((tenths) => ratioOf(tenths, 10));
  /** Small enough to leave a volume at any of these temperatures. */
  const expansion_per_K = fc.integer({ min: -20, max: 20 }).map((n) => ratioOf(n, 10_000));
  const same = (a: Fraction, b: Fraction) => expect(exactText(a)).toBe(exactText(b));

  /** Fractions of plain whole numbers, put together here, so that no line of the program and no library checks itself. */
  type Whole = readonly [numerator: bigint, denominator: bigint];
  const exactly = (value: Fraction, [n, d]: Whole) => expect(value.s * value.n * d).toBe(n * value.d);

  test('weight → volume → weight returns, and the volume is made of the given numbers only [arithmetic on whole numbers]', () => {
    fc.assert(
      fc.property(natural, natural, natural, natural, (a, b, densityA, densityB) => {
        const volume = volumeFromWeight(ratioOf(b, a), ratioOf(densityB, densityA));
        exactly(volume, [BigInt(b) * BigInt(densityA), BigInt(a) * BigInt(densityB)]);
        same(volume.mul(ratioOf(densityB, densityA)), ratioOf(b, a));
        same(volumeFromWeight(ratioOf(a, b), ratioOf(densityA, densityB)), ONE.div(volume));
      }),
    );
  });
  test('weight → volume as plain floats have it, to 12 digits', () => {
    fc.assert(
      fc.property(natural, natural, natural, natural, (a, b, densityA, densityB) => {
        const byFloat = b / densityB / (a / densityA);
        expect(Math.abs(float(volumeFromWeight(ratioOf(b, a), ratioOf(densityB, densityA))) / byFloat - 1)).toBeLessThan(1e-12);
      }),
    );
  });
  test('two densities give one curve, from whichever of them it is told, and it passes through both', () => {
    fc.assert(
      fc.property(
        temperature_K,
        temperature_K,
        temperature_K,
        fc.integer({ min: 9000, max: 11_000 }),
        fc.integer({ min: 9000, max: 11_000 }),
        (first, second, at, one, two) => {
          fc.pre(!first.equals(second));
          const [a, b] = [ratioOf(one, 10), ratioOf(two, 10)];
          const fromFirst = expansionFromTwo_per_K(a, first, b, second);
          const fromSecond = expansionFromTwo_per_K(b, second, a, first);
          same(densityAt_kg_per_m3(a, first, fromFirst, second), b);
          const volume = (beta: Fraction, from: Fraction) => ONE.add(beta.mul(at.sub(from)));
          fc.pre(volume(fromFirst, first).compare(ZERO) > 0);
          same(densityAt_kg_per_m3(a, first, fromFirst, at), densityAt_kg_per_m3(b, second, fromSecond, at));
        },
      ),
    );
    expect(() => expansionFromTwo_per_K(f('1000'), f('300'), f('990'), f('300'))).toThrow(RangeError);
  });
  test('growth goes step by step, back again, and against the density', () => {
    fc.assert(
      fc.property(
        fraction,
        temperature_K,
        expansion_per_K,
        fc.tuple(temperature_K, temperature_K, temperature_K),
        (density, at, beta, [a, b, c]) => {
          const one: Liquid = {
            density_kg_per_m3: known(density),
            densityAt_K: known(at),
            expansion_per_K: known(beta),
            runAt_K: known(a),
          };
          const grown = (from: Fraction, to: Fraction) => volumeGrowth(one, known(from), known(to));
          const dense = (t: Fraction) => {
            const found = runningDensity_kg_per_m3(one, known(t));
            return found.known ? found.value : ZERO;
          };
          same(grown(a, b).mul(grown(b, c)), grown(a, c));
          same(grown(a, b).mul(grown(b, a)), ONE);
          same(dense(a).div(dense(b)), grown(a, b));
          same(dense(at), density);
          expect(keepsVolume(one, known(b))).toBe(true);
        },
      ),
    );
  });
  test('what is not given is taken as not expanding, and a density that is not stated stays so', () => {
    const full = liquid('1000', '20', '0.0007', '40');
    const at = known(celsius('60'));
    const gaps: readonly Partial<Liquid>[] = [{ expansion_per_K: NOT_GIVEN }, { densityAt_K: NOT_GIVEN }];
    for (const gap of gaps) expect(runningDensity_kg_per_m3({ ...full, ...gap }, at)).toEqual(full.density_kg_per_m3);
    expect(runningDensity_kg_per_m3(full, NOT_GIVEN)).toEqual(full.density_kg_per_m3);
    expect(runningDensity_kg_per_m3({ ...full, density_kg_per_m3: NOT_GIVEN }, at)).toEqual(NOT_GIVEN);
    same(volumeGrowth(full, NOT_GIVEN, at), ONE);
    same(volumeGrowth({ ...full, expansion_per_K: NOT_GIVEN }, known(celsius('20')), at), ONE);
    // Without a temperature of its density an expansion counts from where the growth begins.
    same(volumeGrowth({ ...full, densityAt_K: NOT_GIVEN }, known(celsius('20')), at), f('1.028'));
  });
  test('a liquid that would shrink to nothing is seen, and refused where it is met all the same', () => {
    const gone = liquid('1000', '25', '0.01', '-75');
    expect(keepsVolume(gone, NOT_GIVEN)).toBe(false);
    expect(keepsVolume({ ...gone, runAt_K: known(celsius('-74.9')) }, NOT_GIVEN)).toBe(true);
    expect(keepsVolume({ ...gone, runAt_K: NOT_GIVEN }, known(celsius('-80')))).toBe(false);
    expect(keepsVolume({ ...gone, densityAt_K: NOT_GIVEN }, NOT_GIVEN)).toBe(true);
    expect(() => densityAt_kg_per_m3(f('1000'), celsius('25'), f('0.01'), celsius('-75'))).toThrow(RangeError);
  });
  test('a mixture lies between its liquids, whatever their order and the unit of the masses', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fraction, fraction), { minLength: 1, maxLength: 4 }), fraction, (shares, unit) => {
        const mixed = mixedDensity_kg_per_m3(shares);
        const densities = shares.map(([, density]) => density).sort((a, b) => a.compare(b));
        expect(mixed.compare(densities[0] ?? ZERO)).toBeGreaterThanOrEqual(0);
        expect(mixed.compare(densities.at(-1) ?? ZERO)).toBeLessThanOrEqual(0);
        same(mixedDensity_kg_per_m3([...shares].reverse()), mixed);
        same(mixedDensity_kg_per_m3(shares.map(([mass, density]) => [mass.mul(unit), density] as const)), mixed);
      }),
    );
  });

  /** Whole parts and percentages in tenths, with what makes a limit of each definition out of a number of tenths from 0 to 1000. */
  const target = fc.tuple(natural, natural);
  const tenths = fc.integer({ min: 0, max: 990 });
  type Made = (partsA: bigint, partsB: bigint, tenths: bigint) => Whole;
  /** B per A at a limit over B per A at the target, worked out from what the definition says of the parts themselves. */
  const MADE: Readonly<Record<PartsDefinition, Made>> = {
    '% of B per A': (_a, _b, t) => [1000n + t, 1000n],
    '% of A per B': (_a, _b, t) => [1000n, 1000n + t],
    // Points move parts from A to B: t/1000 of the total.
    'points of B in the total': (a, b, t) => [(1000n * b + t * (a + b)) * a, (1000n * a - t * (a + b)) * b],
    'parts of B': (_a, b, t) => [t, 1000n * b],
  };

  test.each(['% of B per A', '% of A per B', 'points of B in the total'] as const)(
    '%s: low and high in order, 0 between them, exact to the last digit [arithmetic on whole numbers]',
    (definition) => {
      fc.assert(
        fc.property(target, tenths, tenths, ([a, b], below, above) => {
          const [A, B] = [BigInt(a), BigInt(b)];
          const points = definition === 'points of B in the total';
          // Points must leave some of both.
          fc.pre(!points || (below * (a + b) < 1000 * b && above * (a + b) < 1000 * a));
          const found = limitsOfOffRatio(definition, ratioOf(-below, 10), ratioOf(above, 10), ratioOf(a, 1), ratioOf(b, 1));
          const turned = definition === '% of A per B';
          const off = ([n, d]: Whole): Whole => [n - d, d];
          exactly(found.low, off(MADE[definition](A, B, BigInt(turned ? above : -below))));
          exactly(found.high, off(MADE[definition](A, B, BigInt(turned ? -below : above))));
          expect(found.low.compare(ZERO)).toBeLessThanOrEqual(0);
          expect(found.high.compare(ZERO)).toBeGreaterThanOrEqual(0);
        }),
      );
    },
  );
  test('parts of B: the same, and the basis does not matter, since it cancels', () => {
    fc.assert(
      fc.property(target, natural, natural, fraction, ([a, b], x, y, density) => {
        const [low, high] = x < y ? [x, y] : [y, x];
        fc.pre(low <= 1000 * b && high >= 1000 * b);
        const found = limitsOfOffRatio('parts of B', ratioOf(low, 1000), ratioOf(high, 1000), ratioOf(a, 1), ratioOf(b, 1));
        exactly(found.low, [BigInt(low) - 1000n * BigInt(b), 1000n * BigInt(b)]);
        exactly(found.high, [BigInt(high) - 1000n * BigInt(b), 1000n * BigInt(b)]);
        const byVolume = (parts: number) => volumeFromWeight(ratioOf(parts, 1000).div(ratioOf(a, 1)), density);
        same(offRatio(byVolume(low), volumeFromWeight(ratioOf(b, a), density)), found.low);
      }),
    );
  });
  test('swapping A and B inverts the ratio, and turns limits of B per A into those of A per B', () => {
    fc.assert(
      fc.property(target, tenths, tenths, ([a, b], below, above) => {
        const ofB = limitsOfOffRatio('% of B per A', ratioOf(-below, 10), ratioOf(above, 10), ratioOf(a, 1), ratioOf(b, 1));
        const swapped = limitsOfOffRatio('% of A per B', ratioOf(-below, 10), ratioOf(above, 10), ratioOf(b, 1), ratioOf(a, 1));
        same(ONE.add(ofB.low).mul(ONE.add(swapped.high)), ONE);
        same(ONE.add(ofB.high).mul(ONE.add(swapped.low)), ONE);
        same(ONE.add(offRatio(ratioOf(b, a), ONE)).mul(ONE.add(offRatio(ratioOf(a, b), ONE))), ONE);
      }),
    );
  });
});

describe('the examples of the docstrings', () => {
  const e12 = liquid('1160', '25', '0.00062');
  const at: Given<Fraction> = known(celsius('42'));
  test('as printed there', () => {
    expectPrinted(float(volumeFromWeight(f('0.206'), f('0.97').div(f('1.16')))), '0.24635');
    expectPrinted(float(densityAt_kg_per_m3(f('1160'), f('298.15'), f('0.00062'), f('315.15'))), '1147.90');
    expectPrinted(float(expansionFromTwo_per_K(f('998.2067'), f('293.15'), f('995.6488'), f('303.15'))), '0.000257');
    expect(exactText(volumeGrowth(e12, known(celsius('25')), at))).toBe(exactText(f('1.01054')));
    expect(keepsVolume(liquid('1000', '25', '0.04', '-5'), NOT_GIVEN)).toBe(false);
    const running = runningDensity_kg_per_m3(e12, at);
    expectPrinted(running.known ? float(running.value) : Number.NaN, '1147.90');
    expectPrinted(
      float(
        mixedDensity_kg_per_m3([
          [f('4'), f('1100')],
          [f('1'), f('900')],
        ]),
      ),
      '1053.19',
    );
    const { low, high } = limitsOfOffRatio('points of B in the total', f('-5'), f('5'), ONE, ONE);
    expect([exactText(low), exactText(high)]).toEqual(['-2/11', '2/9']);
    expect(exactText(offRatio(ratioOf(2, 5), ratioOf(1, 2)))).toBe('-1/5');
  });
});
