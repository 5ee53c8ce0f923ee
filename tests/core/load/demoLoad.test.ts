// The invented demo shop. Its load was worked out apart from this program; each figure may differ by half a unit of its last place.
import { describe, expect, test } from 'vitest';
import { pullLimit } from '../../../core/src/drives/chainWorkings.ts';
import { flowOf } from '../../../core/src/flow.ts';
import { loopSpeedOf, ratedPowerOf, stageSpeeds } from '../../../core/src/load/power.ts';
import { countedPull, pullOf, serviceFactorOf } from '../../../core/src/load/pull.ts';
import { ratedShare, type Torque, torquesOf } from '../../../core/src/load/torque.ts';
import type { Plan, Teeth } from '../../../core/src/plan.ts';
import { fittedPumps, fittedTeeth } from '../../../core/src/train.ts';
import { inFloat, input } from '../../../core/src/working.ts';
import { pair, say } from '../planFixture.ts';
import { demoPlan } from '../sheet/demoSheet.ts';

const buildOf = (plan: Plan, teeth: readonly Teeth[]) => ({ pumps: fittedPumps(plan), teeth });

/** A value that must be there; fails the test otherwise. */
function there<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('nothing there');
  return value;
}
function known(torque: Torque) {
  if (!torque.known) throw new Error(torque.missing.map(({ what }) => what(say)).join(', '));
  return torque.value;
}

describe('E12 on Bench 1, 23 to 25, at the dial for 1000 cc/min (invented example)', () => {
  const plan = demoPlan({ selection: { machine: 'bench-1', material: 'e12' } });
  const build = buildOf(plan, [pair(23, 25)]);
  const { pumps, stages, motor } = torquesOf(plan, build);
  const one = there(stages[0]);
  const setting = there(flowOf(plan, build).setting);
  const speeds = there(stageSpeeds(plan, build.teeth, one.stage, setting.motorSpeed));

  test('pump A 6.08 N m, B 1.57 N m; motor 7.55 N m, 16.8 % of 45 N m', () => {
    expect([pumps.A, pumps.B, motor].map((torque) => known(torque).value.toFixed(2))).toEqual(['6.08', '1.57', '7.55']);
    const { ratedTorque_N_m } = plan.motor;
    if (!ratedTorque_N_m.known) throw new Error('the motor is rated');
    const share = ratedShare(known(motor), inFloat(input('rated torque', ratedTorque_N_m.value, 'torque')));
    expect((100 * share.value).toFixed(1)).toBe('16.8');
  });
  test('the chain pulls 31 N, 40 N with the service factor, of 2543 N', () => {
    const pull = pullOf(one, known(one.torque));
    const counted = countedPull(pull, there(serviceFactorOf(plan)));
    expect([pull, counted, pullLimit(one.stage.size, false)].map(({ value }) => value.toFixed(0))).toEqual(['31', '40', '2543']);
  });
  test('the chain runs at 0.278 m/s; for 08B no power rating is published', () => {
    expect(loopSpeedOf(one.stage, one.teeth, speeds).value.toFixed(3)).toBe('0.278');
    expect(ratedPowerOf(one.stage, one.teeth, speeds)).toBeNull();
  });
});

test('Bench 2 gives neither pressures nor efficiencies nor a service factor: nothing of its load is known, and all of it is named', () => {
  const plan = demoPlan({ selection: { machine: 'bench-2', material: 'u40' } });
  const { pumps, stages, motor } = torquesOf(plan, buildOf(plan, fittedTeeth(plan)));
  expect(stages.map(({ stage }) => stage.id)).toEqual(['s1', 's2']);
  expect([pumps.A, pumps.B, motor, ...stages.map(({ torque }) => torque)].map(({ known }) => known)).not.toContain(true);
  expect(motor.known ? [] : motor.missing.map(({ what }) => what(say))).toEqual([
    'pressure of A',
    'mechanical efficiency of A',
    'pressure of B',
    'mechanical efficiency of B',
  ]);
  expect(serviceFactorOf(plan)).toBeNull();
});
