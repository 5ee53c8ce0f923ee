import { en } from '../en.ts';
import { freshId } from './freshId.ts';
import type { MachineRow, StageRow } from './machine.ts';

/** Kind and size of the first stage of a drive; every further one begins like the stage before it. */
const FIRST_STAGE = { kind: 'chain', size: '08B' } as const;
const SIDES = ['A', 'B'] as const;

/**
 * Puts a stage below a shaft, with a new shaft at its end. A pump that sits on the shaft moves down to the new one, since a stage
 * that turns no pump is never wanted; of two pumps it is B, the side that is metered to A.
 *
 * @param machine  to be changed
 * @param shaftId  one of its shafts
 * @returns the new stage, its wheels still to be given
 * @throws RangeError  where there is no such shaft
 */
export function addStageBelow(machine: MachineRow, shaftId: string): StageRow {
  const shaft = machine.shafts.find(({ id }) => id === shaftId);
  if (shaft === undefined) throw new RangeError(`addStageBelow: there is no shaft ${shaftId}`);
  const { kind, size } = machine.stages.at(-1) ?? FIRST_STAGE;
  const id = freeStageId(machine.stages);
  const stage: StageRow = { id, name: id, kind, size, driver: {}, driven: {} };
  const pump = SIDES.findLast((side) => machine[side].shaft === shaftId);
  const below = freshId(machine.shafts, 'shaft');
  machine.stages.push(stage);
  machine.shafts.push({ id: below, name: pump === undefined ? en`Jackshaft` : en`Pump ${pump}`, turnedBy: { shaft: shaftId, stage: id } });
  if (pump === undefined) return stage;
  machine[pump].shaft = below;
  if (!SIDES.some((side) => machine[side].shaft === shaftId)) shaft.name = shaft.turnedBy === undefined ? en`Motor` : en`Jackshaft`;
  return stage;
}

/**
 * Takes a stage out: what its driven shaft carried and turned moves to the shaft above.
 *
 * @param machine  to be changed
 * @param stageId  one of its stages
 * @throws RangeError  where no shaft is turned by it
 */
export function removeStage(machine: MachineRow, stageId: string): void {
  const gone = machine.shafts.find(({ turnedBy }) => turnedBy?.stage === stageId);
  const above = gone?.turnedBy?.shaft;
  if (gone === undefined || above === undefined) throw new RangeError(`removeStage: the stage ${stageId} turns no shaft`);
  for (const shaft of machine.shafts) if (shaft.turnedBy?.shaft === gone.id) shaft.turnedBy.shaft = above;
  for (const side of SIDES) if (machine[side].shaft === gone.id) machine[side].shaft = above;
  machine.shafts = machine.shafts.filter(({ id }) => id !== gone.id);
  machine.stages = machine.stages.filter(({ id }) => id !== stageId);
}

/** Short, since it stands in drawings and sentences: `s1`. It is also the name to begin with, so no other stage may be called so. */
function freeStageId(stages: readonly StageRow[]): string {
  const taken = new Set(stages.flatMap(({ id, name }) => [id, name]));
  for (let n = 1; ; n += 1) if (!taken.has(`s${n}`)) return `s${n}`;
}
