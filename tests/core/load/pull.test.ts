import { describe, expect, test } from 'vitest';
import { pullLimit } from '../../../core/src/drives/chainWorkings.ts';
import { inUnit } from '../../../core/src/format.ts';
import { countedPull, loopPull, pullOf, serviceFactorOf, shareOfPull } from '../../../core/src/load/pull.ts';
import type { StageTorque } from '../../../core/src/load/torque.ts';
import { type Input, input } from '../../../core/src/working.ts';
import { inLine, pair, planOf, shopOf, stageRow } from '../planFixture.ts';
import { expectPrinted } from '../printedFormula.ts';

const TORQUE = input('torque', 1.5728, 'torque');

function stageOf(size: string, driver: number, driven: number, torque: Input<number> = TORQUE) {
  const [stage] = planOf(shopOf(inLine([stageRow(driver, driven, { size, name: 'belt side' })]))).stages;
  if (stage === undefined) throw new Error('no stage');
  const one: StageTorque = { stage, teeth: pair(driver, driven), torque: { known: false, missing: [] } };
  return pullOf(one, torque);
}

describe('pull of a chain', () => {
  test('1 N m at a diameter of 0.1 m pulls 20 N [statics]', () => expect(loopPull.of({ T: 1, D: 0.1 })).toBe(20));

  test('it acts at the pitch circle of the driven sprocket: 65 teeth of 1/2 in are 10.349 in [machine-elements, example 7-3, seen]', () => {
    const pull = stageOf('40', 17, 65);
    // Half of the last digit of 10.349 in.
    expect(Math.abs(pull.value / ((2 * 1.5728) / (10.349 * 0.0254)) - 1)).toBeLessThan(0.0005 / 10.349);
    expect(stageOf('40', 40, 65).value).toBe(pull.value);
    expect(pull.what).toBe('chain pull in belt side');
  });

  test.each([
    ['25', 17],
    ['40', 25],
    ['60', 17],
    ['80', 13],
  ])(
    'chain %s, %d teeth: power over chain speed but for the polygon of the pitches [energy, P = F · v; sin x ≥ x - x³/6]',
    (size, teeth) => {
      // The chain runs round a polygon, shorter than its circle: N p = π D sin(x)/x with x = π/N.
      const pull = stageOf(size, 20, teeth);
      const pitch_m = (Number(size.slice(0, 1)) / 8) * 0.0254;
      const bySpeed = (2 * Math.PI * 1.5728) / (pitch_m * teeth);
      const shortest = 1 - (Math.PI / teeth) ** 2 / 6;
      expect(pull.value / bySpeed).toBeLessThan(1);
      expect(pull.value / bySpeed).toBeGreaterThan(shortest);
    },
  );

  test('hp = F · V / 33,000 with lbf and ft/min: 17 teeth of 1/2 in, 1 hp at 1000 rpm pull 46.6 lbf along 708.3 ft/min [machinerys-handbook, from memory]', () => {
    // 63,025 lb in make 1 hp at 1 rpm; at the pitch circle the pull is the polygon's 0.57 % lower than along the chain.
    const torque = input('torque', (63.025 * 4.4482216152605 * 25.4) / 1000, 'torque');
    const pull_lbf = Number(inUnit(stageOf('40', 20, 17, torque).value, 'force', 'lbf'));
    expect(pull_lbf * 1.0057).toBeCloseTo(33_000 / 708.33, 2);
  });
});

describe('pull as it counts', () => {
  const pull = stageOf('08B', 23, 25);
  const counted = countedPull(pull, input('service factor', 1.3, 'number'));

  test('moderate shock counts 1.3 times [asme-b29.1, supplementary information, from memory]', () => {
    expect(counted.value / pull.value).toBeCloseTo(1.3, 12);
    expect(counted.what).toBe('chain pull in belt side, with the service factor');
  });
  test('31.04 N counted 1.3 times are 1.587 % of a seventh of 17.8 kN, printed as computed [iso-606, table 1, from memory; mathjs, npm]', () => {
    const share = shareOfPull(counted, pullLimit('08B', false));
    expect(share.value).toBeCloseTo((1.3 * 31.04) / (17_800 / 7), 5);
    expectPrinted(share);
  });
});

test('the service factor as given; null where it is not given, never 1', () => {
  const machine = inLine([stageRow(20, 20)]);
  const planWith = (more: { serviceFactor?: { value: string; unit: string } }) => planOf(shopOf({ ...machine, ...more }));
  expect(serviceFactorOf(planWith({ serviceFactor: { value: '1.3', unit: '' } }))).toEqual(input('service factor', 1.3, 'number'));
  expect(serviceFactorOf(planWith({}))).toBeNull();
});
