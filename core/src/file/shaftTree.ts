import type { Place } from '../finding.ts';
import type { MachineRow } from './machine.ts';
import type { Problems } from './problems.ts';

/** Stages between the motor and each pump, motor first, as indexes into the machine's stages. */
export interface Trains {
  readonly A: readonly number[];
  readonly B: readonly number[];
}

/** Follows the shafts from each pump back to the motor; null where they do not form a tree (the problems say why). */
export function shaftTree(machine: MachineRow, place: Place, problems: Problems): Trains | null {
  const shafts = new Map(machine.shafts.map((shaft) => [shaft.id, shaft]));
  const stages = new Map(machine.stages.map((stage, index) => [stage.id, index]));
  const used = new Map<string, string>();
  const roots: string[] = [];
  let sound = true;
  const wrong = (where: Place, what: string) => {
    sound = false;
    problems.add([...place, ...where], what);
  };

  machine.shafts.forEach((shaft, index) => {
    const turnedBy = shaft.turnedBy;
    const at = ['shafts', index, 'turnedBy'];
    if (turnedBy === undefined) {
      roots.push(shaft.id);
      return;
    }
    if (!shafts.has(turnedBy.shaft)) wrong([...at, 'shaft'], `there is no shaft with the id "${turnedBy.shaft}"`);
    if (turnedBy.stage === undefined) return;
    if (!stages.has(turnedBy.stage)) wrong([...at, 'stage'], `there is no stage with the id "${turnedBy.stage}"`);
    const user = used.get(turnedBy.stage);
    if (user !== undefined) wrong([...at, 'stage'], `the stage "${turnedBy.stage}" already turns the shaft "${user}"`);
    used.set(turnedBy.stage, shaft.id);
  });
  if (roots.length !== 1) {
    wrong(
      ['shafts'],
      roots.length === 0
        ? 'no shaft is the motor shaft: one shaft is turned by no other'
        : `only the motor shaft is turned by no other; here are ${roots.length}: ${roots.join(', ')}`,
    );
  }
  machine.stages.forEach((stage, index) => {
    if (!used.has(stage.id)) wrong(['stages', index], `the stage "${stage.id}" turns no shaft`);
  });

  const trainOf = (side: 'A' | 'B'): number[] => {
    const train: number[] = [];
    const seen = new Set<string>();
    let shaft = shafts.get(machine[side].shaft);
    if (shaft === undefined) wrong([side, 'shaft'], `there is no shaft with the id "${machine[side].shaft}"`);
    while (shaft?.turnedBy !== undefined) {
      if (seen.has(shaft.id)) {
        wrong(['shafts'], `the shafts ${[...seen].join(', ')} turn each other in a ring`);
        return [];
      }
      seen.add(shaft.id);
      const stage = shaft.turnedBy.stage === undefined ? undefined : stages.get(shaft.turnedBy.stage);
      if (stage !== undefined) train.unshift(stage);
      shaft = shafts.get(shaft.turnedBy.shaft);
    }
    return train;
  };
  const trains = { A: trainOf('A'), B: trainOf('B') };
  return sound ? trains : null;
}
