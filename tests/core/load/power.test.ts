import { describe, expect, test } from 'vitest';
import { inUnit } from '../../../core/src/format.ts';
import {
  countedPower,
  loopSpeedOf,
  powerIn,
  ratedPowerOf,
  type StageSpeeds,
  shaftPower,
  shareOfPower,
  stageSpeeds,
} from '../../../core/src/load/power.ts';
import type { Plan, Stage } from '../../../core/src/plan.ts';
import { exactText, Fraction, float, whole } from '../../../core/src/ratio.ts';
import { fittedTeeth } from '../../../core/src/train.ts';
import { toSI } from '../../../core/src/units.ts';
import { input } from '../../../core/src/working.ts';
import { inLine, pair, planOf, shopOf, stageRow } from '../planFixture.ts';
import { expectPrinted } from '../printedFormula.ts';

const rpmOf = (speed: number) => input('motor speed', toSI('speed', whole(speed), 'rpm'), 'speed');

/** Stage `s1` of a machine, with the speeds of its wheels. */
function stageAt(plan: Plan, motor_rpm: number, index = 0, teeth = fittedTeeth(plan)): { stage: Stage; speeds: StageSpeeds } {
  const stage = plan.stages[index];
  const speeds = stage && stageSpeeds(plan, teeth, stage, rpmOf(motor_rpm));
  if (!stage || !speeds) throw new Error(`stage ${index} should turn a pump`);
  return { stage, speeds };
}
const chainOf = (size: string, driver: number, driven: number): Plan => planOf(shopOf(inLine([stageRow(driver, driven, { size })])));

describe('power at a shaft', () => {
  const torque = (value: number): number => float(toSI('torque', whole(value), 'lbf in'));
  const speed = float(toSI('speed', whole(1000), 'rpm'));

  test('63,025 lb in make 1000 hp at 1000 rpm [machinerys-handbook, hp = T n / 63,025, from memory]', () => {
    const horsepower = Number(inUnit(shaftPower.of({ T: torque(63_025), n: speed }), 'power', 'hp'));
    // The handbook's number is rounded to a unit of its last digit.
    expect(Math.abs(horsepower - 1000)).toBeLessThan(1000 / 63_025);
  });
  test('900 lb in at 1000 rpm: 20 US gpm at 1000 psi are 81.7 % of it [Fluid Power with Applications, efficiencies example, from memory]', () => {
    const hydraulic_W = float(toSI('pressure', whole(1000), 'psi').mul(toSI('flow', whole(20), 'US gal/min')));
    expect((100 * hydraulic_W) / shaftPower.of({ T: torque(900), n: speed })).toBeCloseTo(81.7, 1);
  });
});

describe('speeds of the wheels of a stage', () => {
  const texts = ({ driver, driven }: StageSpeeds) => [driver, driven].map(({ value }) => exactText(value.mul(60)));
  /** 20 to 40 turns both; A on that shaft, B behind 30 to 20, and behind B a stage that turns nothing. */
  const plan = planOf(
    shopOf({
      ...inLine([stageRow(20, 40), stageRow(30, 20), stageRow(17, 17)]),
      shafts: [
        { id: 'motor' },
        { id: 'jack', turnedBy: { shaft: 'motor', stage: 's1' } },
        { id: 'b', turnedBy: { shaft: 'jack', stage: 's2' } },
        { id: 'idle', turnedBy: { shaft: 'b', stage: 's3' } },
      ],
      A: { ...inLine([]).A, shaft: 'jack' },
      B: { ...inLine([]).B, shaft: 'b' },
    }),
  );

  test('90 rpm through 20 to 40 and 30 to 20: 90 and 45, 45 and 67.5 rpm, exact [kinematics]', () => {
    expect(texts(stageAt(plan, 90).speeds)).toEqual(['90/1', '45/1']);
    expect(texts(stageAt(plan, 90, 1).speeds)).toEqual(['45/1', '135/2']);
  });
  test('teeth that are asked for count, not the fitted ones', () => {
    expect(texts(stageAt(plan, 90, 1, [pair(40, 20), pair(23, 25), pair(17, 17)]).speeds)).toEqual(['180/1', '828/5']);
  });
  test('a stage that turns no pump has none: nobody says what turns behind it', () => {
    const [, , idle] = plan.stages;
    expect(idle && stageSpeeds(plan, fittedTeeth(plan), idle, rpmOf(90))).toBeNull();
  });
  test('printed as computed [mathjs, npm]', () => {
    const { driver, driven } = stageAt(plan, 90, 1).speeds;
    for (const speed of [driver, driven]) expectPrinted(speed);
  });
});

test('17 teeth of chain 40 at 1000 rpm run at 708.3 ft/min, whatever they drive [asme-b29.1, N p n / 12, from memory]', () => {
  for (const driven of [13, 17, 34]) {
    const { stage, speeds } = stageAt(chainOf('40', 17, driven), 1000);
    const speed = loopSpeedOf(stage, pair(17, driven), speeds);
    expect(Number(inUnit(speed.value, 'velocity', 'ft/min'))).toBeCloseTo(708.3, 1);
    expectPrinted(speed);
  }
});

describe('power in a stage', () => {
  test('15.9155 N m at a driven wheel of 750 rpm are 1250 W, 1.3 times 1625 [definition]', () => {
    // 1e7 Pa times 10 cm³ a turn at 12.5 turns a second.
    const { stage, speeds } = stageAt(chainOf('40', 15, 20), 1000);
    const power = powerIn(stage, speeds, input('torque', 100 / (2 * Math.PI), 'torque'));
    const counted = countedPower(power, input('service factor', 1.3, 'number'));
    expect([power.value, counted.value]).toEqual([expect.closeTo(1250, 9), expect.closeTo(1625, 9)]);
    expect([power.what, counted.what]).toEqual(['power in s1', 'power in s1, with the service factor']);
    expectPrinted(counted);
  });
  test('its share of the rating, printed as computed: 2.74 of 5.48 hp are half [arithmetic; mathjs, npm]', () => {
    const { stage, speeds } = stageAt(chainOf('40', 17, 17), 1000);
    const rated = ratedPowerOf(stage, pair(17, 17), speeds);
    if (rated === null) throw new Error('chain 40 has a rating');
    const torque = input('torque', float(toSI('power', new Fraction('2.74'), 'hp')) / (2 * Math.PI * (1000 / 60)), 'torque');
    const share = shareOfPower(powerIn(stage, speeds, torque), rated);
    expect(share.value).toBeCloseTo(0.5, 3);
    expectPrinted(share);
  });
});

describe('what a chain is rated for in a stage', () => {
  const horsepower = (size: string, driver: number, driven: number, motor_rpm: number): number | null => {
    const { stage, speeds } = stageAt(chainOf(size, driver, driven), motor_rpm);
    const rated = ratedPowerOf(stage, pair(driver, driven), speeds);
    return rated && Number(inUnit(rated.value, 'power', 'hp'));
  };

  test('5.48 hp on 17 teeth at 1000 rpm, whether they drive or are driven [mechanical-engineering-design, text after eq. 17-33, from memory]', () => {
    expect(horsepower('40', 17, 34, 1000)).toBeCloseTo(5.48, 2);
    expect(horsepower('40', 34, 17, 500)).toBeCloseTo(5.48, 2);
    expect(horsepower('40', 17, 17, 1000)).toBeCloseTo(5.48, 2);
  });
  test('both names of a chain have one rating [iso-606, annex B, from memory]', () => {
    expect(horsepower('08A', 17, 34, 1000)).toBe(horsepower('40', 17, 34, 1000));
  });
  test('for the B series none is published', () => {
    for (const size of ['05B', '06B', '08B', '16B']) expect(horsepower(size, 17, 34, 1000), size).toBeNull();
  });
});
