import { describe, expect, test } from 'vitest';
import { motorTorque } from '../../../core/src/checks/motorTorque.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { expectFinding, expectNotMade, inLine, judgeOption, only, pair, planOf, rpm, shopOf, stageRow } from '../planFixture.ts';

const bar = (value: string) => ({ value, unit: 'bar' });
const share = (value: string) => ({ value, unit: '' });

/** Pump A of 10 cc on the motor, pump B of 5 cc behind 20 to 20 teeth. */
function fileWith(rated: string | null, pressureB: string | null = '100'): ShopFile {
  const machine = inLine([stageRow(20, 20)]);
  return shopOf({
    ...machine,
    motor: { speed: rpm('60'), ...(rated !== null && { ratedTorque: { value: rated, unit: 'N m' } }) },
    A: { ...machine.A, pressure: bar('100'), mechanicalEfficiency: share('1') },
    B: { ...machine.B, ...(pressureB !== null && { pressure: bar(pressureB) }), mechanicalEfficiency: share('1') },
  });
}
const judged = (file: ShopFile) => judgeOption(motorTorque, planOf(file), [pair(20, 20)]);

// 10 cc at 100 bar take 15.915 N m [hydraulics textbooks: T = Δp D / 2π, from memory]; 5 cc half of it, through a stage of 0.98.
const ASKED_N_m = 15.9155 + 15.9155 / 2 / 0.98;

describe('torque of both pumps against the rating of the motor', () => {
  test('just inside passes, just outside blocks, with both figures and what to do', () => {
    expect(judged(fileWith('24.036'))).toEqual([]);
    const file = fileWith('24.035');
    expectFinding(only(judged(file)), file, {
      severity: 'blocks',
      where: ['machines', 0, 'motor', 'ratedTorque'],
      figure: { value: ASKED_N_m, unit: 'N m' },
      limit: { value: 24.035, unit: 'N m' },
      places: 3,
      names: ['24.035', 'Lower the pressures'],
    });
  });

  test('what is not given is not checked', () => {
    const noRating = fileWith(null);
    expectNotMade(only(judged(noRating)), noRating, ['machines', 0, 'motor', 'ratedTorque']);
    const noPressure = fileWith('45', null);
    expectNotMade(only(judged(noPressure)), noPressure, ['machines', 0, 'B', 'pressure']);
  });
});
