import { describe, expect, test } from 'vitest';
import { gearTeethTrouble, type MachinePart, machineTrouble, wantedTrouble } from '../../core/src/file/machineTrouble.ts';
import { resolve } from '../../core/src/file/resolve.ts';
import { STARTING_MINUTES } from '../../core/src/file/startingMinutes.ts';
import { demoWith, GONE, opened, say } from './shop.ts';

const of = (value: string, unit: string) => ({ value, unit });

describe('figures the file would refuse [limits of the file, our choice]', () => {
  test('machineTrouble example: a motor that stands still', () => {
    expect(machineTrouble({ motor: { speed: of('0', 'rpm') } })).toBe('0 rpm is out of range: it must be above 0 rpm');
  });

  test.each<[MachinePart, MachinePart]>([
    [{ motor: { dialStep: of('100', '%') } }, { motor: { dialStep: of('101', '%') } }],
    [{ motor: { usable: { from: of('0', '%'), to: of('100', '%') } } }, { motor: { usable: { from: of('-1', '%'), to: of('100', '%') } } }],
    [{ slot: { bore: of('20', 'm') } }, { slot: { bore: of('20.001', 'm') } }],
    [{ stage: { takeUp: of('0', 'pitches') } }, { stage: { takeUp: of('-0.5', 'pitches') } }],
    [{ stage: { centre: { fixed: of('1', 'mm') } } }, { stage: { centre: { fixed: of('0', 'mm') } } }],
    [{ pump: { displacement: of('0.01', 'cc/rev') } }, { pump: { displacement: of('0', 'cc/rev') } }],
    [{ pump: { tolerance: of('99.9', '%') } }, { pump: { tolerance: of('100', '%') } }],
    [{ motor: { ratedTorque: of('0.1', 'N m') } }, { motor: { ratedTorque: of('0', 'N m') } }],
    [{ pump: { pressureLimit: of('2000', 'bar') } }, { pump: { pressureLimit: of('2001', 'bar') } }],
    [{ pump: { measuredDelivery: { value: of('120', '%') } } }, { pump: { measuredDelivery: { value: of('121', '%') } } }],
    [{ pump: { gear: { teeth: 12, module: of('2', 'mm') } } }, { pump: { gear: { teeth: 12, module: of('0', 'mm') } } }],
    [{ side: { pressure: of('0', 'bar') } }, { side: { pressure: of('-1', 'bar') } }],
    [{ side: { mechanicalEfficiency: of('1', '') } }, { side: { mechanicalEfficiency: of('88', '') } }],
    [{ side: { tank: { lowMark: of('0.1', 'L') } } }, { side: { tank: { lowMark: of('0', 'L') } } }],
    [{ machine: { wantedFlow: of('1', 'cc/min') } }, { machine: { wantedFlow: of('0', 'cc/min') } }],
    [
      { machine: { wantedShot: { amount: of('1', 'g'), time: of('1', 's') } } },
      { machine: { wantedShot: { amount: of('1', 'g'), time: of('0', 's') } } },
    ],
    [{ machine: { batch: { of: 'mix', amount: of('1', 'kg') } } }, { machine: { batch: { of: 'mix', amount: of('0', 'kg') } } }],
    [{ machine: { mixerVolume: of('1', 'cc') } }, { machine: { mixerVolume: of('0', 'cc') } }],
    [{ machine: { serviceFactor: of('1', '') } }, { machine: { serviceFactor: of('0.9', '') } }],
    [{ machine: { minutes: { pump: of('0', 'min') } } }, { machine: { minutes: { pump: of('-1', 'min') } } }],
  ])('%j is kept, %j is not', (inside, outside) => {
    expect(machineTrouble(inside)).toBeNull();
    expect(machineTrouble(outside)).toContain('out of range');
  });
});

describe('what one field needs of another [our choice]', () => {
  test('a flow and a shot are not both wanted', () => {
    const wantedFlow = of('1000', 'cc/min');
    const wantedShot = { amount: of('400', 'g'), time: of('6', 's') };
    expect(wantedTrouble({ wantedShot }, 'wantedFlow')).toBe('a shot is given, which says the same: empty that box first');
    expect(wantedTrouble({ wantedFlow }, 'wantedShot')).toBe('a flow is given, which says the same: empty that box first');
    expect([wantedTrouble({ wantedFlow }, 'wantedFlow'), wantedTrouble({}, 'wantedShot')]).toEqual([null, null]);
  });

  test('the teeth of a gear stay while its other figures do', () => {
    expect([gearTeethTrouble(undefined), gearTeethTrouble({ teeth: 12 })]).toEqual([null, null]);
    expect(gearTeethTrouble({ teeth: 12, module: of('2', 'mm') })).toContain('empty them first');
  });

  test('the minutes shown in empty boxes are those that count [our choice: 12, 10, 3 and 90]', () => {
    expect(STARTING_MINUTES).toEqual({ sprocket: 12, chainLength: 10, centre: 3, pump: 90 });
    const plan = resolve(opened(demoWith([['machines', 0, 'minutes'], GONE])), { machine: 'bench-1', material: 'e12' }, say);
    if (!plan.ok) return expect.unreachable();
    const { sprocket_s, chainLength_s, centre_s, pump_s } = plan.value.minutes;
    expect([sprocket_s, chainLength_s, centre_s, pump_s].map((time_s) => Number(time_s) / 60)).toEqual(Object.values(STARTING_MINUTES));
  });
});
