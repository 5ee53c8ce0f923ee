import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Drift, driftOf, type Heated, slipDrift } from '../../core/src/drift.ts';
import { driftCurve, notTellingText } from '../../core/src/driftCurve.ts';
import type { PartRow } from '../../core/src/file/material.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { Fraction as Exact, exactText, type Fraction, float, ONE, whole } from '../../core/src/ratio.ts';
import { fittedPumps } from '../../core/src/train.ts';
import { inLine, pair, planOf, pumpRow, say, shopOf, stageRow } from './planFixture.ts';

const celsius = (value: string) => ({ value, unit: '°C' });
const density = (value: string, at: string) => ({ value: { value, unit: 'g/cm3' }, at: celsius(at) });
const inches = { decimal: '.', system: 'inch' } as const;
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

function driftAt(material: Partial<ShopFile['materials'][number]>): { plan: ReturnType<typeof planOf>; drift: Drift } {
  const plan = planOf(shopOf(inLine([stageRow(20, 20)]), [], material));
  return { plan, drift: driftOf(plan, build(plan)) };
}
const build = (plan: ReturnType<typeof planOf>) => ({ pumps: fittedPumps(plan), teeth: [pair(20, 20)] });
function lineOf(drift: Drift, heated: Heated) {
  const line = drift.lines.find((one) => one.heated === heated);
  if (line === undefined) throw new Error(`no line of ${heated}`);
  return line;
}
function offAt(drift: Drift, heated: Heated, step_K: number): Fraction {
  const point = lineOf(drift, heated).points.find(({ step }) => step.value.equals(step_K));
  if (point === undefined) throw new Error(`no point at ${step_K} K`);
  return point.offRatio.value;
}
/** The change from the temperatures it is run at, in per cent of what is made there. */
const changed = (drift: Drift, heated: Heated, step_K: number): number =>
  100 * (float(ONE.add(offAt(drift, heated, step_K)).div(ONE.add(drift.offRatio.value))) - 1);

/** 1.15 and 0.98 g/cm3 at 25 °C, falling by 0.0007 and 0.0008 g/cm3 for each kelvin: two densities of each. */
const A_FROM_25: PartRow = { density: density('1.15', '25'), secondDensity: density('1.136', '45') };
const A_TO_15: PartRow = { density: density('1.15', '25'), secondDensity: density('1.157', '15') };
const B_TO_15: PartRow = { density: density('0.98', '25'), secondDensity: density('0.988', '15') };

describe('100 : 40 by weight, geared for 25 °C [densities that fall evenly, hand arithmetic, recomputed]', () => {
  const by = (A: PartRow, B: PartRow, atA: string, atB: string) =>
    driftAt({ ratio: { basis: 'weight', parts: '100 : 40' }, A: { ...A, runAt: celsius(atA) }, B: { ...B, runAt: celsius(atB) } }).drift;

  test('A heated to 45 °C makes the mix 1.23239 % B-rich', () => {
    // From 35 °C, so that both ends are looked at: 25 °C is 10 K colder, 45 °C 10 K hotter.
    const drift = by(A_FROM_25, B_TO_15, '35', '25');
    const ofCold = ONE.add(offAt(drift, 'A', 10)).div(ONE.add(offAt(drift, 'A', -10)));
    expect(100 * (float(ofCold) - 1)).toBeCloseTo(1.23239, 5);
    expect(exactText(ofCold)).toBe(exactText(new Exact('1.15').div('1.136')));
  });
  test('both at 15 °C leave 0.206 %', () => {
    const drift = by(A_TO_15, B_TO_15, '25', '25');
    expect(Math.abs(changed(drift, 'both', -10) - 0.20637)).toBeLessThan(0.000005);
    // With the density of A at 45 °C in place of that at 15 the line errs by little.
    expect(Math.abs(changed(by(A_FROM_25, B_TO_15, '25', '25'), 'both', -10) - 0.20637)).toBeLessThan(0.02);
  });
});

const LIMITS = { definition: '% of B per A', low: '-2', high: '3' } as const;
const liquid = (expansion: string, runAt = '40'): PartRow => ({
  density: density('1', '20'),
  expansion: { value: expansion, unit: '1/K' },
  runAt: celsius(runAt),
});

describe('A and B by volume, 2 : 1', () => {
  const material = {
    ratio: { basis: 'volume', parts: '2 : 1', at: celsius('20') },
    limits: LIMITS,
    A: liquid('0.0005'),
    B: liquid('0.001'),
  } as const;
  const { plan, drift } = driftAt(material);

  /** Stated at 20 °C, run at 40: the volume a step further over the volume as run. */
  const grown = (side: 'A' | 'B', step_K: Fraction) => {
    const expansion = new Exact(side === 'A' ? '0.0005' : '0.001');
    return ONE.add(expansion.mul(step_K.add(20))).div(ONE.add(expansion.mul(20)));
  };

  test('every point is what the liquids grow [definition of volume expansion]', () => {
    for (const step_K of [-10, -3, 0, 7, 10]) {
      const run = ONE.add(drift.offRatio.value);
      const [a, b] = [grown('A', whole(step_K)), grown('B', whole(step_K))];
      expect(exactText(offAt(drift, 'A', step_K))).toBe(exactText(run.mul(a).sub(ONE)));
      expect(exactText(offAt(drift, 'B', step_K))).toBe(exactText(run.div(b).sub(ONE)));
      expect(exactText(offAt(drift, 'both', step_K))).toBe(exactText(run.mul(a).div(b).sub(ONE)));
    }
  });

  test.each(['A', 'B'] as const)('%s alone stands exactly at the limit where it leaves them', (side) => {
    const { leaves } = lineOf(drift, side);
    if (plan.mix.limits === null) throw new Error('no limits');
    for (const end of ['low', 'high'] as const) {
      const leaving = leaves[end];
      if (leaving === null || !leaving.at_K.known) throw new Error(`no end ${end}`);
      expect(exactText(leaving.at_K.value)).toBe(exactText(leaving.step.value.add('313.15')));
      const growth = grown(side, leaving.step.value);
      const run = ONE.add(drift.offRatio.value);
      const reached = (side === 'A' ? run.mul(growth) : run.div(growth)).sub(ONE);
      expect(exactText(reached)).toBe(exactText(plan.mix.limits[end]));
      // Warm A makes it B-rich, warm B B-lean.
      expect(leaving.step.value.s > 0n).toBe((side === 'A') === (end === 'high'));
    }
  });

  test('swapping A and B turns the ratio over [property]', () => {
    fc.assert(
      fc.property(fc.integer({ min: -90, max: 90 }), fc.integer({ min: -90, max: 90 }), (a, b) => {
        const [one, other] = [String(a / 100_000), String(b / 100_000)].map((text) => liquid(Number(text).toFixed(5)));
        if (one === undefined || other === undefined) throw new Error('two liquids');
        const made = (A: PartRow, B: PartRow) => driftAt({ ratio: { basis: 'weight', parts: '2 : 1' }, A, B }).drift;
        const [straight, turned] = [made(one, other), made(other, one)];
        const over = ONE.div(ONE.add(offAt(straight, 'A', 10)));
        expect(exactText(ONE.add(offAt(turned, 'B', 10)))).toBe(exactText(over));
      }),
      { numRuns: 30 },
    );
  });
});

describe('what cannot be told', () => {
  test('an expansion that is not given leaves the other side alone', () => {
    const { drift, plan } = driftAt({ A: liquid('0.0005'), B: {} });
    expect(drift.lines.map(({ heated }) => heated)).toEqual(['A']);
    expect(drift.lacking).toEqual([{ what: 'the expansion of B', place: ['materials', 0, 'B', 'expansion'] }]);
    expect(notTellingText(drift)).toBe('The other curves cannot be told: the expansion of B is not given.');
    expect(driftCurve(plan, build(plan), say)?.lines).toHaveLength(1);
  });
  test('neither given: no curve, and the sentence says what for', () => {
    const { drift, plan } = driftAt({});
    expect(driftCurve(plan, build(plan), say)).toBeNull();
    expect(notTellingText(drift)).toBe('The drift cannot be told: the expansion of A and the expansion of B are not given.');
  });
  test('a line that would run out of volume ends before it', () => {
    // 1 − 0.01 (T − 20 °C) is 0.05 at 115 °C, and 0 at 120.
    const { drift } = driftAt({ A: liquid('-0.01', '115'), B: liquid('0') });
    expect(
      lineOf(drift, 'A')
        .points.map(({ step }) => float(step.value))
        .at(-1),
    ).toBe(4);
  });
  test('outside the limits nothing is left to leave; a liquid that does not expand never leaves', () => {
    const out = driftAt({
      limits: { definition: '% of B per A', low: '-2', high: '3' },
      ratio: { basis: 'volume', parts: '3 : 1' },
      A: liquid('0.0005'),
      B: liquid('0.0005'),
    });
    expect(lineOf(out.drift, 'A').leaves).toEqual({ low: null, high: null });
    const stays = driftAt({ limits: LIMITS, A: liquid('0'), B: liquid('0.0005') });
    expect(lineOf(stays.drift, 'A').leaves).toEqual({ low: null, high: null });
    expect(lineOf(stays.drift, 'B').leaves.low).not.toBeNull();
  });
});

test('slip moves it by a tenth for a tenth more pressure [laminar flow is proportional to the pressure]', () => {
  const gear = { teeth: 12, gapWidth: { value: '20', unit: 'mm' }, gapLength: { value: '3', unit: 'mm' } };
  const drifts = (pressure: string) => {
    const plan = planOf(
      shopOf(
        inLine([stageRow(20, 20)], {
          A: { shaft: 'motor', fitted: 'a', pumps: [pumpRow('a', '10', { gear })], pressure: { value: pressure, unit: 'bar' } },
          wantedFlow: { value: '600', unit: 'cc/min' },
        }),
        [],
        { A: { viscosity: { value: '50', unit: 'mPa s' } } },
      ),
    );
    const moved = slipDrift(plan, build(plan), 'A');
    if (!moved.known) throw new Error('no slip');
    expect(slipDrift(plan, build(plan), 'B').known).toBe(false);
    const [, slip] = moved.value.put[0] ?? [];
    return { moved: moved.value.value, slip: Number(slip?.value) };
  };
  const [low, high] = [drifts('20'), drifts('22')];
  expect(high.slip - low.slip).toBeCloseTo(float(low.moved), 12);
  expect(float(low.moved)).toBeGreaterThan(0);
});

describe('the drawing of the invented epoxy on Bench 1, 23 driving 25', () => {
  const read = readShopFile(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
  if (!read.ok) throw new Error('the demo does not open');
  const plan = planOf(read.value, { machine: 'bench-1', material: 'e12' });
  const option = { pumps: fittedPumps(plan), teeth: [pair(23, 25)] };
  const curve = driftCurve(plan, option, say);
  const feet = driftCurve(plan, option, inches);
  if (curve === null || feet === null) throw new Error('no curve');
  const ends = (heated: Heated) => {
    const path = curve.lines.find((line) => line.heated === heated)?.path ?? '';
    const points = path
      .slice(1)
      .split('L')
      .map((pairOf) => pairOf.split(' ').map(Number));
    return [points.at(0), points.at(-1)];
  };

  test('the sentence says what is drawn [1.00061 and 1.0008 for each kelvin, by hand]', () => {
    const off = 1 - 0.0007475;
    const [γA, γB] = [0.00062 / (1 + 0.00062 * 17), 0.0008];
    const text = (factor: number) => {
      const e = 100 * (off * factor - 1);
      return `${e < 0 ? '−' : '+'}${Math.abs(e).toFixed(2)} %`;
    };
    expect(plain(curve.sentence)).toBe(
      `Off-ratio against temperature, + is B-rich. As run ${text(1)}. ` +
        `A alone: 10 K colder ${text(1 - 10 * γA)}, 10 K hotter ${text(1 + 10 * γA)}; ` +
        `B alone: 10 K colder ${text(1 / (1 - 10 * γB))}, 10 K hotter ${text(1 / (1 + 10 * γB))}; ` +
        `A and B together: 10 K colder ${text((1 - 10 * γA) / (1 - 10 * γB))}, 10 K hotter ${text((1 + 10 * γA) / (1 + 10 * γB))}. ` +
        'Limits −2.00 % to +2.00 %.',
    );
  });
  test('lines run over the whole width through one point in the middle; hot A rises, hot B falls', () => {
    for (const heated of ['A', 'B', 'both'] as const) expect(ends(heated).map((point) => point?.[0])).toEqual([0, 100]);
    const [a, b] = [ends('A'), ends('B')];
    expect(Number(a[1]?.[1])).toBeLessThan(Number(a[0]?.[1]));
    expect(Number(b[1]?.[1])).toBeGreaterThan(Number(b[0]?.[1]));
  });
  test('marks stand where the lines have their value: 0 K in the middle, limits between top and foot', () => {
    expect(curve.across.find(({ value }) => value === 0)?.at).toBe(50);
    expect(curve.limits.map(({ end }) => end)).toEqual(['low', 'high']);
    for (const { at } of curve.limits) expect(at > 0 && at < 100).toBe(true);
    const [high, zero, low] = [curve.limits[1]?.at, curve.up.find(({ value }) => value === 0)?.at, curve.limits[0]?.at];
    expect(Number(zero)).toBeCloseTo((Number(high) + Number(low)) / 2, 9);
  });
  test('an inch shop reads steps in °F: 10 K are 18 °F', () => {
    expect(feet.unit).toBe('°F');
    const mark = feet.across.find(({ value }) => value === 10);
    expect(mark?.at).toBeCloseTo(50 + (50 * 10) / 18, 9);
    expect(plain(feet.sentence)).toContain('18 °F hotter');
  });
  test('limits far away are said, not drawn', () => {
    const far = driftCurve({ ...plan, mix: { ...plan.mix, limits: { low: new Exact('-0.5'), high: new Exact('0.5') } } }, option, say);
    expect(far?.limits).toEqual([]);
    expect(plain(far?.limitsText ?? '')).toBe('limits −50.00 % to +50.00 %, too far away to be drawn here');
  });
});
