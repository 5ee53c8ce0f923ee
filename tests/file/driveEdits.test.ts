import { describe, expect, test } from 'vitest';
import { addStageBelow, removeStage } from '../../core/src/file/driveEdits.ts';
import { driveTree } from '../../core/src/file/driveTree.ts';
import type { MachineRow } from '../../core/src/file/machine.ts';

const pumps = (shaft: string) => ({ shaft, fitted: 'p', pumps: [{ id: 'p' }] });
const direct = (): MachineRow => ({
  id: 'm',
  name: 'Bench',
  motor: {},
  shafts: [
    { id: 'motor', name: 'Motor and pump A' },
    { id: 'b', name: 'Pump B', turnedBy: { shaft: 'motor', stage: 's' } },
  ],
  stages: [{ id: 's', kind: 'chain', size: '40', driver: { teeth: 20 }, driven: { teeth: 30 } }],
  A: pumps('motor'),
  B: pumps('b'),
});
/** Stages from the motor to each pump, counted by hand from the pump upwards. */
const trains = (machine: MachineRow) =>
  [machine.A, machine.B].map(({ shaft }) => {
    let stages = 0;
    let at = machine.shafts.find(({ id }) => id === shaft);
    while (at?.turnedBy !== undefined) {
      const { shaft: above, stage } = at.turnedBy;
      if (machine.stages.some(({ id }) => id === stage)) stages += 1;
      at = machine.shafts.find(({ id }) => id === above);
    }
    return at === undefined ? 'not from the motor' : stages;
  });

describe('adding a stage below a shaft [our choice]', () => {
  test('below pump B: the pump moves down, so B has two stages', () => {
    const machine = direct();
    const stage = addStageBelow(machine, 'b');
    expect(stage).toEqual({ id: 's1', name: 's1', kind: 'chain', size: '40', driver: {}, driven: {} });
    expect(trains(machine)).toEqual([0, 2]);
    expect(machine.shafts.map(({ name }) => name)).toEqual(['Motor and pump A', 'Jackshaft', 'Pump B']);
  });

  test('below the motor that carries pump A: each pump then has its own stage', () => {
    const machine = direct();
    addStageBelow(machine, 'motor');
    expect(trains(machine)).toEqual([1, 1]);
    expect(machine.shafts[0]?.name).toBe('Motor');
  });

  test('below a shaft without a pump: a free shaft, whatever came before stays', () => {
    const machine = direct();
    addStageBelow(machine, 'motor');
    addStageBelow(machine, 'motor');
    expect(trains(machine)).toEqual([1, 1]);
    expect(driveTree(machine).links.map(({ turns }) => turns)).toEqual(['B', 'A', 'neither']);
  });

  test('a shaft that is not there is our fault', () => {
    expect(() => addStageBelow(direct(), 'x')).toThrow(RangeError);
  });
});

describe('removing a stage [our choice]', () => {
  test('what it turned moves up: the drive is as before the stage was added', () => {
    const machine = direct();
    const before = driveTree(machine).shape;
    const stage = addStageBelow(machine, 'b');
    removeStage(machine, stage.id);
    expect(driveTree(machine).shape).toBe(before);
    expect(trains(machine)).toEqual([0, 1]);
  });

  test('a stage in the middle: the stage behind it is turned by the shaft above', () => {
    const machine = direct();
    addStageBelow(machine, 'b');
    removeStage(machine, 's');
    expect(trains(machine)).toEqual([0, 1]);
    expect(machine.stages.map(({ id }) => id)).toEqual(['s1']);
  });

  test('the last stage: both pumps on the motor', () => {
    const machine = direct();
    removeStage(machine, 's');
    expect(trains(machine)).toEqual([0, 0]);
    expect(machine.B.shaft).toBe('motor');
  });

  test('a stage that is not there is our fault', () => {
    expect(() => removeStage(direct(), 'x')).toThrow(RangeError);
  });
});
