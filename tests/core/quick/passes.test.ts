import { describe, expect, test } from 'vitest';
import { motorRange } from '../../../core/src/dial.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import { PASSES } from '../../../core/src/quick/passes.ts';
import { float } from '../../../core/src/ratio.ts';
import { fittedPumps, fittedTeeth } from '../../../core/src/train.ts';
import { inLine, planOf, pumpRow, rpm, shopOf, stageRow } from '../planFixture.ts';

type Limits = { readonly from?: string; readonly to?: string };

/** Motor 60 rpm, usable 20 to 100 %: pump A at two turns for one of the motor makes 24 to 120 rpm, pump B at half a turn 6 to 30. */
function told(a: Limits, b: Limits, motor?: MachineRow['motor']): boolean | null | undefined {
  const machine = inLine([stageRow(17, 34)]);
  const speeds = ({ from, to }: Limits) => ({
    ...(from !== undefined && { speedFrom: rpm(from) }),
    ...(to !== undefined && { speedTo: rpm(to) }),
  });
  const usable = { from: { value: '20', unit: '%' }, to: { value: '100', unit: '%' } };
  const plan = planOf(
    shopOf({
      ...machine,
      motor: motor ?? { speed: rpm('60'), usable },
      A: { ...machine.A, pumps: [pumpRow('pump-a', '10', speeds(a))] },
      B: { ...machine.B, pumps: [pumpRow('pump-b', '5', speeds(b))] },
    }),
  );
  expect(float(motorRange(plan).to.share)).toBe(1);
  return PASSES['option.pumpSpeed']?.({ plan, pumps: fittedPumps(plan), steepest: fittedTeeth(plan) })(2, 0.5);
}

describe('whether the pump speeds leave anything of the dial, told from the turns of both pumps [arithmetic]', () => {
  test('no limits, or limits that leave all', () => {
    expect([told({}, {}), told({ from: '24', to: '120' }, { from: '6', to: '30' })]).toEqual([true, true]);
  });
  // under, at and over the one setting that would be left; at it the option has to be laid out
  test.each<[string, readonly [Limits, Limits], readonly [Limits, Limits], readonly [Limits, Limits]]>([
    ['A no slower than 120 rpm', [{ from: '119' }, {}], [{ from: '120' }, {}], [{ from: '121' }, {}]],
    ['B no slower than 30 rpm', [{}, { from: '29' }], [{}, { from: '30' }], [{}, { from: '31' }]],
    ['A no faster than 24 rpm', [{ to: '25' }, {}], [{ to: '24' }, {}], [{ to: '23' }, {}]],
    ['B no faster than 6 rpm', [{}, { to: '7' }], [{}, { to: '6' }], [{}, { to: '5' }]],
    [
      'A no slower than 60, B no faster than 15',
      [{ from: '59' }, { to: '15' }],
      [{ from: '60' }, { to: '15' }],
      [{ from: '61' }, { to: '15' }],
    ],
    [
      'B no slower than 15, A no faster than 60',
      [{ to: '60' }, { from: '14' }],
      [{ to: '60' }, { from: '15' }],
      [{ to: '60' }, { from: '16' }],
    ],
  ])('%s', (_, passes, edge, blocked) => {
    expect([told(...passes), told(...edge), told(...blocked)]).toEqual([true, null, false]);
  });
  test('the usable range not given: from standstill to full speed', () => {
    const whole = { speed: rpm('60') };
    expect([told({ to: '1' }, {}, whole), told({ from: '119' }, {}, whole), told({ from: '121' }, {}, whole)]).toEqual([true, true, false]);
  });
});
