import { describe, expect, test } from 'vitest';
import type { Given } from '../../core/src/given.ts';
import { flowRipple, pulseFrequency, pulsesPerMixer, pulsesPerSecond, rippleOf } from '../../core/src/pulses.ts';
import { Fraction, float, ratioOf, whole } from '../../core/src/ratio.ts';
import { fittedPumps } from '../../core/src/train.ts';
import { input, type Worked } from '../../core/src/working.ts';
import { pair, pumpRow } from './planFixture.ts';
import { expectPrinted } from './printedFormula.ts';
import { bench, demoPlan, E12_ON_BENCH_1 } from './sheet/demoSheet.ts';

const α = (20 * Math.PI) / 180;

function givenValue<Of>(found: Given<Of>): Of {
  if (!found.known) throw new Error('not given');
  return found.value;
}

describe('flow ripple, most less least over the mean', () => {
  // A hydraulics textbook's table for external gear pumps.
  test.each([
    [6, 34.7],
    [8, 26.3],
    [10, 21.2],
    [12, 17.8],
    [14, 15.3],
    [16, 13.4],
    [20, 10.7],
  ])('%d teeth, in per cent: %d [hydraulics textbook table, from memory]', (z, printed) => {
    expect(Math.abs(100 * flowRipple.of({ z, α }) - printed)).toBeLessThanOrEqual(0.1);
  });
  test('10 teeth: 21.21 %, where the approximation π² cos²α / 4 z gives 21.79 [public note on gear pump pulsation, yn4h.com.cn, seen; recomputed]', () => {
    const approximate = (Math.PI * Math.cos(α)) ** 2 / 40;
    expect(100 * approximate).toBeCloseTo(21.79, 2);
    expect(100 * flowRipple.of({ z: 10, α })).toBeCloseTo(21.21, 2);
    expect(flowRipple.of({ z: 10, α })).toBeLessThan(approximate);
  });
});

test('12 teeth at 300 rpm: 60 pulses a second [textbook kinematics, from memory]', () => {
  expect(float(pulseFrequency.of({ z: whole(12), n: ratioOf(300, 60) }))).toBe(60);
});

describe('pulses in a mixer volume', () => {
  const plan = demoPlan(E12_ON_BENCH_1);
  const build = { pumps: fittedPumps(plan), teeth: [pair(23, 25)] };
  const pulses = (side: 'A' | 'B'): Worked<Fraction> => givenValue(pulsesPerMixer(plan, build, side));

  test('A 24.0, B 18.4 with 35 cc, 12 and 10 teeth [invented example, worked out apart from this program]', () => {
    expect(float(pulses('A').value)).toBeCloseTo(24.0, 1);
    expect(float(pulses('B').value)).toBeCloseTo(18.4, 1);
  });
  test('exactly 12 x 35/17.52 and 9.2 x 35/17.52 [arithmetic]', () => {
    expect(pulses('A').value.equals(new Fraction('420').div('17.52'))).toBe(true);
    expect(pulses('B').value.equals(new Fraction('322').div('17.52'))).toBe(true);
  });
  test('printed as computed [mathjs, npm]', () => {
    for (const side of ['A', 'B'] as const) expectPrinted(pulses(side));
    expectPrinted(givenValue(rippleOf(build.pumps.A, 'A')));
    expectPrinted(givenValue(pulsesPerSecond(build.pumps.A, 'A', input('speed', ratioOf(1143, 1200), 'speed'))));
  });
  test('23 to 50 turns B at 0.46 of A: 4.6 x 35/14.76 [arithmetic]', () => {
    const slower = givenValue(pulsesPerMixer(plan, { ...build, teeth: [pair(23, 50)] }, 'B'));
    expect(slower.value.equals(new Fraction('4.6').mul('35').div('14.76'))).toBe(true);
  });
  test('without teeth or a mixer volume there are none', () => {
    const toothless = demoPlan({
      ...E12_ON_BENCH_1,
      change: (file) => {
        bench(file, 'bench-1').A.pumps = [pumpRow('pa12', '12')];
      },
    });
    const other = { ...build, pumps: fittedPumps(toothless) };
    expect(pulsesPerMixer(toothless, other, 'A').known).toBe(false);
    expect(pulsesPerMixer(toothless, other, 'B').known).toBe(true);
    expect(rippleOf(other.pumps.A, 'A').known).toBe(false);
    expect(pulsesPerSecond(other.pumps.A, 'A', input('speed', whole(1), 'speed')).known).toBe(false);
    const mixerless = demoPlan({
      ...E12_ON_BENCH_1,
      change: (file) => {
        delete bench(file, 'bench-1').mixerVolume;
      },
    });
    expect(pulsesPerMixer(mixerless, build, 'A').known).toBe(false);
  });
});
