import type { PlannedOption, StageOption } from '../option.ts';
import { ENDS, type Slot } from '../plan.ts';
import type { TypedQuantity } from '../reading.ts';
import { movesCentre } from '../work.ts';
import type { MachineRow } from './machine.ts';
import { putOnRack } from './putOnRack.ts';
import type { RackRow } from './rack.ts';
import type { ShopFile } from './shopFile.ts';

/**
 * Marks an option as fitted: new wheels leave the rack, old ones go back to it (to a new row where there is none), and the
 * machine takes over teeth, pitches, centres and pumps. Changes the file it is given, so that one call is one undo step.
 *
 * @param file  a checked shop file, to be changed
 * @throws RangeError  where the option was planned for another file
 */
export function fitOption(file: ShopFile, machineId: string, rackId: string | null, option: PlannedOption): void {
  const machine = file.machines.find((one) => one.id === machineId);
  if (machine === undefined) throw new RangeError(`fitOption: there is no machine ${machineId}`);
  const rack = file.racks.find((one) => one.id === rackId);
  const origins = option.stages.flatMap((stage) => ENDS.map((end) => stage.origins[end]));
  const reused = new Set(origins.flatMap((origin) => (origin.from === 'machine' ? [origin.slot] : [])));
  for (const stage of option.stages) fitStage(machine, rack, stage, reused);
  for (const side of ['A', 'B'] as const) machine[side].fitted = option.pumps[side].id;
}

function fitStage(machine: MachineRow, rack: RackRow | undefined, option: StageOption, reused: ReadonlySet<Slot>): void {
  const { stage, teeth, fit, origins } = option;
  const row = machine.stages.find((one) => one.id === stage.id);
  if (row === undefined) throw new RangeError(`fitStage: the machine has no stage ${stage.id}`);
  const changed = ENDS.filter((end) => teeth[end] !== stage[end].teeth);
  for (const end of changed) {
    const origin = origins[end];
    if (rack !== undefined && origin.from === 'rack') take(rack, origin.piece.id);
    // A wheel that goes straight on to another slot never reaches the rack.
    if (rack !== undefined && !reused.has(stage[end])) putOnRack(rack, { kind: stage.kind, size: stage.size, ...stage[end] });
    row[end].teeth = teeth[end];
  }
  if (changed.length === 0 || fit.loop === null) return;
  row.pitches = fit.loop.pitches;
  if (movesCentre(option)) row.centreNow = millimetres(fit.loop.centre_m);
}

function take(rack: RackRow, id: string): void {
  const row = rack.pieces.find((piece) => piece.id === id);
  if (row === undefined || row.quantity === 0) throw new RangeError(`take: the rack has no piece ${id}`);
  row.quantity -= 1;
}

/** A centre is set with a rule or a feeler: hundredths of a millimetre say all there is to say. */
const millimetres = (length_m: number): TypedQuantity => ({ value: (1000 * length_m).toFixed(2), unit: 'mm' });
