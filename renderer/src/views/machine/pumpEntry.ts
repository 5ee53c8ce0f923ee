import { en } from '../../../../core/src/en.ts';
import type { SideRow } from '../../../../core/src/file/machine.ts';
import type { Place, SideName } from '../../../../core/src/index.ts';
import { visible } from '../../../../core/src/visible.ts';
import type { EntryUnits } from '../../fields/entryUnits.ts';
import type { MachineForm } from './machineForm.ts';

export type PumpRow = SideRow['pumps'][number];

export interface PumpAt {
  readonly form: MachineForm;
  readonly side: SideName;
  readonly pump: PumpRow;
  readonly index: number;
}

/** One pump as it is typed: what it is called, where it stands in the file, and how it is changed. */
export interface PumpEntry {
  readonly row: () => PumpRow;
  readonly called: () => string;
  readonly place: (...steps: Place) => Place;
  /** Changes the pump; edits at one place in a row are one undo step. */
  readonly edit: (at: Place, change: (pump: PumpRow) => void) => void;
  readonly fit: () => void;
  readonly remove: () => void;
  readonly units: () => EntryUnits;
}

/** @param at  read anew at every call, so that it may be the props of a component */
export const createPumpEntry = (at: PumpAt): PumpEntry => ({
  row: () => at.pump,
  called: () => visible(at.pump.name ?? en`pump ${at.index + 1} of ${at.side}`),
  place: (...steps) => at.form.place(at.side, 'pumps', at.index, ...steps),
  edit: (steps, change) =>
    at.form.edit([at.side, 'pumps', at.index, ...steps], (row) => {
      const changed = row[at.side].pumps[at.index];
      if (changed !== undefined) change(changed);
    }),
  fit: () =>
    at.form.act(`${at.side}.fitted`, (row) => {
      row[at.side].fitted = at.pump.id;
    }),
  remove: () =>
    at.form.act(`${at.side}.pumps.remove`, (row) => {
      const side = row[at.side];
      side.pumps = side.pumps.filter((_, index) => index !== at.index);
      const [first] = side.pumps;
      if (first !== undefined && !side.pumps.some(({ id }) => id === side.fitted)) side.fitted = first.id;
    }),
  units: () => at.form.units(),
});
