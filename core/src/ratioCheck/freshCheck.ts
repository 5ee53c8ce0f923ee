import { quantityText } from '../entry.ts';
import type { MachineRow } from '../file/machine.ts';
import type { RatioCheckRow } from '../file/ratioCheckRow.ts';
import type { SheetRecord } from '../file/sheetRecord.ts';
import type { ShopFile } from '../file/shopFile.ts';
import type { UnfinishedCheck } from '../file/unfinishedCheck.ts';
import type { TypedQuantity } from '../reading.ts';
import type { Dimension } from '../units.ts';
import { blankCatch } from './blankCatch.ts';
import { boxUnit, type CheckBox } from './boxes.ts';

/** So many lines stand ready; fewer catches than that show no spread worth the name. */
const READY = 3;
const USUAL_TURNS = 20;

/**
 * A check of a machine before anything is written in it: scale, run and confidence stay from the last kept one.
 *
 * @source our choice
 */
export function freshCheck(file: Pick<ShopFile, 'changeSheets' | 'ratioChecks'>, machine: MachineRow): UnfinishedCheck {
  const last = file.ratioChecks.filter((one) => one.machine === machine.id).reduce<RatioCheckRow | null>(later, null);
  const sheet = lastFitted(file.changeSheets, machine);
  const { run, scale, confidence } = last ?? {};
  const turns = run === undefined ? { value: String(machine.catchTurns ?? USUAL_TURNS), unit: '' } : run.turns;
  return {
    machine: machine.id,
    ...(sheet && { changeSheet: sheet.id }),
    runBy: turns === undefined ? 'time' : 'turns',
    ...text('turns', 'number', turns),
    ...text('time', 'time', run?.time),
    ...text('dial', 'share', run?.dial),
    ...text('step', 'mass', scale?.step),
    weighing: weighingOf(last),
    ...text('uncertainty', 'mass', scale?.uncertainty),
    ...text('confidence', 'share', confidence),
    catches: Array.from({ length: READY }, blankCatch),
  };
}

const later = (best: RatioCheckRow | null, one: RatioCheckRow) => (best !== null && best.date > one.date ? best : one);

const text = (box: CheckBox, dimension: Dimension, typed: TypedQuantity | undefined) =>
  typed && { [box]: quantityText(dimension, typed, boxUnit(box)) };

function weighingOf(last: RatioCheckRow | null): UnfinishedCheck['weighing'] {
  if (last === null) return 'gross';
  if (last.scale.tared) return 'tared';
  return last.catches.some(({ A, B }) => A.gross !== undefined || B.gross !== undefined) ? 'gross' : 'net';
}

/**
 * The change sheet that was fitted last, as long as what it puts on is what is on the machine.
 *
 * @returns null where nothing was fitted from a sheet, or where the machine was changed since
 * @source our choice
 */
export function lastFitted(sheets: readonly SheetRecord[], machine: MachineRow): SheetRecord | null {
  const last = sheets
    .filter((one) => one.machine === machine.id && one.fittedOn !== undefined)
    .reduce<SheetRecord | null>((best, one) => (best !== null && (best.fittedOn ?? '') > (one.fittedOn ?? '') ? best : one), null);
  return last !== null && isOn(last.mounted, machine) ? last : null;
}

/** Whether these pumps and teeth are what is on a machine now. */
export function isOn({ pumps, teeth }: SheetRecord['mounted'], { A, B, stages }: MachineRow): boolean {
  return (
    pumps.A === A.fitted &&
    pumps.B === B.fitted &&
    teeth.length === stages.length &&
    stages.every(({ driver, driven }, index) => teeth[index]?.driver === driver.teeth && teeth[index]?.driven === driven.teeth)
  );
}

/** The id after the largest one kept: checks are numbered through, whatever the machine. */
export function nextCheckId(kept: readonly { readonly id: string }[]): string {
  const largest = kept.reduce((most, { id }) => Math.max(most, Number(/^check-(\d{1,9})$/.exec(id)?.[1] ?? 0)), 0);
  return `check-${String(largest + 1).padStart(4, '0')}`;
}
