import { describe, expect, test } from 'vitest';
import { isBlocked, layOption } from '../../core/src/index.ts';
import { float, ratioOf, whole } from '../../core/src/ratio.ts';
import { reachable, reachOf } from '../../core/src/reach/reach.ts';
import { reachPlan } from '../bench/reachShop.ts';
import { say } from './planFixture.ts';
import { teethFrom } from './search/racks.ts';
import { demoPlan } from './sheet/demoSheet.ts';

const oneToFive = { low: whole(1), high: whole(5), tolerance: ratioOf(2, 100), bins: 40 };

describe('a window that moves over the ratios of one machine', () => {
  test('shows what it would show if nothing had been asked before', () => {
    const plan = demoPlan({ selection: { machine: 'bench-2', material: 'u40' } });
    const machine = reachable(plan);
    for (const tenths of [10, 11, 12, 11, 30, 10]) {
      const window = { ...oneToFive, low: ratioOf(tenths, 10), high: ratioOf(tenths + 8, 10) };
      expect(machine.within(window)).toEqual(reachOf(plan, window));
    }
  });
});

describe('three open stages whose steepest trains turn a pump too fast [the definition of speed limits]', () => {
  const plan = reachPlan(3, [...teethFrom(13, 20), 36, 44, 52]);
  const reach = reachOf(plan, oneToFive);

  test('the ends are the last that its pumps allow, far from the ends of the teeth', () => {
    // the motor turns at 7.5 to 75 rpm and pump A with it, pump B at 6 to 120 rpm and delivers a third: 16 turns at most, 2 / 25 at least
    const [smallest, largest] = [reach.smallest, reach.largest];
    if (smallest === null || largest === null) throw new Error('no ends');
    for (const { first } of [smallest, largest]) expect(isBlocked(layOption(plan, first, say))).toBe(false);
    expect(smallest.aPerB.compare(ratioOf(3, 16))).toBeGreaterThanOrEqual(0);
    expect(float(smallest.aPerB) / (3 / 16)).toBeLessThan(1.01);
    expect(largest.aPerB.compare(ratioOf(3 * 25, 2))).toBeLessThanOrEqual(0);
    expect(float(largest.aPerB) / (3 * 12.5)).toBeGreaterThan(0.99);
  });
});

describe('reach of Bench 1 of the invented example from its rack, 1:1 to 5:1 [separate enumeration]', () => {
  const plan = demoPlan({ selection: { machine: 'bench-1', material: 'e12' } });
  const reach = reachOf(plan, oneToFive);

  test('191 ratios from 1:1 to 14:3', () => {
    expect(reach.distinct).toBe(191);
    expect([reach.ratios?.[0], reach.ratios?.at(-1)].map((ratio) => ratio?.aPerB.toFraction())).toEqual(['1', '14/3']);
    expect(reach.perBin?.reduce((sum, count) => sum + count, 0)).toBe(191);
  });
  test('the smallest of all lies below the window', () => {
    expect([reach.smallest?.aPerB.toFraction(), reach.largest?.aPerB.toFraction()]).toEqual(['6/7', '14/3']);
    expect(reach.largest?.flow_m3_per_s?.from.compare(reach.largest.flow_m3_per_s.to)).toBe(-1);
  });
  test('the worst target lies beyond the last ratio: 5:1, 7.143 % from 14:3', () => {
    expect([reach.worst?.low?.toFraction(), reach.worst?.high]).toEqual(['14/3', null]);
    expect([reach.worst?.worstTarget.toFraction(), reach.worst?.offRatio.toFraction()]).toEqual(['5', '1/14']);
  });
  test('the widest gap lies from 35:8 to 14:3, its worst target 140:31 off by 3.226 %', () => {
    expect([reach.widest?.low?.toFraction(), reach.widest?.high?.toFraction()]).toEqual(['35/8', '14/3']);
    expect([reach.widest?.worstTarget.toFraction(), reach.widest?.offRatio.toFraction()]).toEqual(['140/31', '1/31']);
    expect(reach.gaps.slice(0, 2)).toEqual([reach.worst, reach.widest]);
  });
  test('95.42 % of the window lies within 2 %', () => {
    expect((100 * (reach.covered ?? 0)).toFixed(2)).toBe('95.42');
  });
  test('each ratio is listed once, ascending, with an option that makes it and can be built', () => {
    const ratios = reach.ratios ?? [];
    expect(ratios).toHaveLength(191);
    for (const [i, { aPerB, first, partsChanged }] of ratios.entries()) {
      const option = layOption(plan, first, say);
      expect(option.bPerA.mul(aPerB).equals(1)).toBe(true);
      expect(isBlocked(option)).toBe(false);
      expect(option.changed).toBe(partsChanged);
      expect(i === 0 || (ratios[i - 1]?.aPerB.compare(aPerB) ?? 1) < 0).toBe(true);
    }
  });
});
