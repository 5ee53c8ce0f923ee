import { en } from './en.ts';
import { type Given, known, NOT_GIVEN } from './given.ts';
import type { Build, Plan, Pump, SideName } from './plan.ts';
import { PRESSURE_ANGLE } from './pumpGear.ts';
import { type Fraction, whole } from './ratio.ts';
import { deliveredOf, turnsOf } from './train.ts';
import { formula, type Input, inFloat, input, type Worked, work } from './working.ts';

export const pulseFrequency = formula({
  letter: 'f',
  written: 'z · n',
  dimension: 'frequency',
  source: en`kinematics: one pulse for each tooth and pair of gears`,
  of: ({ z, n }: Record<'z' | 'n', Fraction>) => z.mul(n),
});

/** One contact path at a time, as for the displacement. */
export const flowRipple = formula({
  letter: 'δ',
  written: '(π · cos(α))^2 / 4 / (z + 1 - (π · cos(α))^2 / 12)',
  dimension: 'share',
  source: 'gear-pump-kinematics',
  of: ({ z, α }: Record<'z' | 'α', number>) => {
    const square = (Math.PI * Math.cos(α)) ** 2;
    return square / 4 / (z + 1 - square / 12);
  },
});

const deliveredPerTurn = formula({
  letter: 'v',
  written: 'D · i + E · k',
  dimension: 'volume',
  source: en`definition of displacement`,
  of: ({ D, i, E, k }: Record<'D' | 'i' | 'E' | 'k', Fraction>) => D.mul(i).add(E.mul(k)),
});

/** Independent of the dial: both pumps turn with the motor. */
export const mixerPulses = formula({
  letter: 'P',
  written: 'z · i · V / v',
  dimension: 'number',
  source: en`kinematics: teeth times turns while the volume of the mixer flows through`,
  of: ({ z, i, V, v }: Record<'z' | 'i' | 'V' | 'v', Fraction>) => z.mul(i).mul(V).div(v),
});

const teethOf = (pump: Pump, side: SideName): Given<Input<Fraction>> =>
  pump.gear.known ? known(input(en`teeth of one gear of pump ${side}`, whole(pump.gear.value.teeth), 'number')) : NOT_GIVEN;

/**
 * Pulses of a pump in one second.
 *
 * @param speed  of the pump
 * @returns per second; not given where its teeth are not
 * @source `pulseFrequency`
 * @example 12 teeth at 300 rpm  // 60 pulses a second
 */
export function pulsesPerSecond(pump: Pump, side: SideName, speed: Input<Fraction>): Given<Worked<Fraction>> {
  const z = teethOf(pump, side);
  return z.known ? known(work(pulseFrequency, en`pulses of pump ${side}`, { z: z.value, n: speed })) : NOT_GIVEN;
}

/**
 * How far the flow of a pump swings within one tooth, most less least over the mean.
 *
 * @returns a share; not given where its teeth are not
 * @source `flowRipple`
 * @example 12 teeth  // 17.8 %
 */
export function rippleOf(pump: Pump, side: SideName): Given<Worked<number>> {
  const z = teethOf(pump, side);
  return z.known ? known(work(flowRipple, en`flow ripple of pump ${side}`, { z: inFloat(z.value), α: PRESSURE_ANGLE })) : NOT_GIVEN;
}

/**
 * Pulses of one side while the volume of the mixer flows through, whatever the dial says.
 *
 * @returns a number of pulses; not given where the volume of the mixer or the teeth of the pump are not
 * @source `mixerPulses`
 * @example 12 cc/rev and 12 teeth, 6 cc/rev and 10 teeth at 0.92 of its turns, 35 cc  // A 24.0, B 18.4
 */
export function pulsesPerMixer(plan: Plan, { pumps, teeth }: Build, side: SideName): Given<Worked<Fraction>> {
  const z = teethOf(pumps[side], side);
  if (!z.known || !plan.mixerVolume_m3.known) return NOT_GIVEN;
  const v = work(deliveredPerTurn, en`A and B for one turn of the motor`, {
    D: deliveredOf(pumps.A, 'A'),
    i: turnsOf(plan, 'A', teeth),
    E: deliveredOf(pumps.B, 'B'),
    k: turnsOf(plan, 'B', teeth),
  });
  const V = input(en`volume of the mixer`, plan.mixerVolume_m3.value, 'volume');
  return known(work(mixerPulses, en`pulses of ${side} in a mixer volume`, { z: z.value, i: turnsOf(plan, side, teeth), V, v }));
}
