import { driveKind } from '../drives/index.ts';
import type { PlannedOption, StageOption } from '../option.ts';
import { ENDS, type Slot, type Stage } from '../plan.ts';
import { exactText, type Fraction, whole } from '../ratio.ts';
import type { TypedQuantity } from '../reading.ts';
import { movesCentre } from '../work.ts';
import type { MachineRow } from './machine.ts';
import { si } from './problems.ts';
import type { PieceRow, RackRow } from './rack.ts';
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
    if (rack !== undefined && !reused.has(stage[end])) giveBack(rack, stage, stage[end]);
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

function giveBack(rack: RackRow, stage: Stage, slot: Slot): void {
  const kind = driveKind(stage.kind);
  const same = (piece: PieceRow) =>
    piece.kind === stage.kind &&
    kind.sameSize(piece.size, stage.size) &&
    piece.teeth === slot.teeth &&
    sameBore(piece.bore, slot.bore_m.known ? slot.bore_m.value : null);
  const row = rack.pieces.find(same);
  if (row !== undefined) {
    row.quantity += 1;
    return;
  }
  rack.pieces.push({
    id: freeId(rack, `${stage.size}-${slot.teeth}`.toLowerCase()),
    kind: stage.kind,
    size: stage.size,
    teeth: slot.teeth,
    quantity: 1,
    ...(slot.bore_m.known && { bore: exactMillimetres(slot.bore_m.value) }),
    ...(slot.keyway_m.known && { keyway: exactMillimetres(slot.keyway_m.value) }),
  });
}

const sameBore = (typed: TypedQuantity | undefined, bore_m: Fraction | null): boolean =>
  typed === undefined ? bore_m === null : bore_m !== null && si('length', typed).equals(bore_m);

function freeId(rack: RackRow, wanted: string): string {
  const taken = new Set(rack.pieces.map((piece) => piece.id));
  if (!taken.has(wanted)) return wanted;
  for (let n = 2; ; n += 1) if (!taken.has(`${wanted}-${n}`)) return `${wanted}-${n}`;
}

/** A centre is set with a rule or a feeler: hundredths of a millimetre say all there is to say. */
const millimetres = (length_m: number): TypedQuantity => ({ value: (1000 * length_m).toFixed(2), unit: 'mm' });

/** Lossless: a bore is compared exactly, so it must come back as it was. */
function exactMillimetres(length_m: Fraction): TypedQuantity {
  const length = length_m.mul(whole(1000));
  const decimal = length.toString(12);
  return { value: decimal.includes('(') ? exactText(length) : decimal, unit: 'mm' };
}
