import { createEffect, createMemo, createSignal, on } from 'solid-js';
import { type DriveTree, driveTree } from '../../../../core/src/file/driveTree.ts';
import type { MachineRow, SlotRow, StageRow } from '../../../../core/src/file/machine.ts';
import type { Place } from '../../../../core/src/index.ts';
import { visible } from '../../../../core/src/visible.ts';
import { type EntryUnits, entryUnits } from '../../fields/entryUnits.ts';
import { placeKey, useApp } from '../../state/app.ts';

export type End = 'driver' | 'driven';

/** A slot by its stage, as an index, and its end. */
export interface SlotAt {
  readonly stage: number;
  readonly end: End;
}

/** The machine the page works on, how it is changed, and which slot of it is looked at. */
export interface MachineForm {
  readonly row: () => MachineRow;
  readonly place: (...steps: Place) => Place;
  /** Changes the machine; edits at one place in a row are one undo step. */
  readonly edit: (at: Place, change: (row: MachineRow) => void) => void;
  readonly editStage: (stage: number, at: Place, change: (row: StageRow) => void) => void;
  readonly editSlot: (slot: SlotAt, at: Place, change: (row: SlotRow) => void) => void;
  /** An undo step of its own. */
  readonly act: (what: string, change: (row: MachineRow) => void) => void;
  readonly tree: () => DriveTree;
  /** The ringed slot; null where the drive has no stage. */
  readonly slot: () => SlotAt | null;
  readonly pickSlot: (slot: SlotAt) => void;
  /** Units meant where none is typed. */
  readonly units: () => EntryUnits;
}

export function createMachineForm(first: MachineRow): MachineForm {
  const app = useApp();
  const rows = () => app.shop.file?.machines ?? [];
  // While the row is being removed the form stands for a last moment without it.
  const row = createMemo<MachineRow>((before) => rows().find(({ id }) => id === before.id) ?? before, first);
  const index = () =>
    Math.max(
      0,
      rows().findIndex(({ id }) => id === first.id),
    );
  const place = (...steps: Place): Place => ['machines', index(), ...steps];
  const edit: MachineForm['edit'] = (at, change) =>
    app.shop.edit(placeKey(place(...at)), (file) => {
      const found = file.machines.find(({ id }) => id === first.id);
      if (found !== undefined) change(found);
    });
  const editStage: MachineForm['editStage'] = (stage, at, change) =>
    edit(['stages', stage, ...at], (machine) => {
      const found = machine.stages[stage];
      if (found !== undefined) change(found);
    });
  const tree = createMemo(() => driveTree(row()));
  const [picked, setPicked] = createSignal<{ readonly stage: string | undefined; readonly end: End } | null>(null);
  const pickSlot = (slot: SlotAt) => void setPicked({ stage: row().stages[slot.stage]?.id, end: slot.end });
  const slot = createMemo((): SlotAt | null => {
    const stage = row().stages.findIndex(({ id }) => id === picked()?.stage);
    if (stage >= 0) return { stage, end: picked()?.end ?? 'driver' };
    const drawn = tree().links.find((link) => link.stage !== null)?.stage;
    return drawn === undefined || drawn === null ? null : { stage: drawn, end: 'driver' };
  });
  // Only the ringed slot shows its details, so the one that is sought is ringed before the cursor goes there.
  createEffect(
    on(app.sought, (sought) => {
      const [list, machine, stages, stage, end] = sought ?? [];
      if (list !== 'machines' || machine !== index() || stages !== 'stages' || typeof stage !== 'number') return;
      pickSlot({ stage, end: end === 'driven' ? 'driven' : 'driver' });
    }),
  );
  return {
    row,
    place,
    edit,
    editStage,
    editSlot: ({ stage, end }, at, change) => editStage(stage, [end, ...at], (found) => change(found[end])),
    act(what, change) {
      app.shop.pause();
      edit([what], change);
      app.shop.pause();
    },
    tree,
    slot,
    pickSlot,
    units: () => entryUnits(app.say()),
  };
}

export const stageName = (stage: StageRow): string => visible(stage.name ?? stage.id);
