import { createMemo } from 'solid-js';
import type { RackRow } from '../../../../core/src/file/rack.ts';
import type { Place } from '../../../../core/src/index.ts';
import { placeKey, useApp } from '../../state/app.ts';

/** The rack the page works on, and how it is changed. */
export interface RackForm {
  readonly row: () => RackRow;
  readonly place: (...steps: Place) => Place;
  /** Changes the rack; edits at one place in a row are one undo step. */
  readonly edit: (at: Place, change: (row: RackRow) => void) => void;
  /** An undo step of its own. */
  readonly act: (what: string, change: (row: RackRow) => void) => void;
  /** A plain copy, free of the store. */
  readonly copy: () => RackRow;
}

export function createRackForm(first: RackRow): RackForm {
  const app = useApp();
  const { id } = first;
  const rows = () => app.shop.file?.racks ?? [];
  const row = createMemo<RackRow>((before) => rows().find((one) => one.id === id) ?? before, first);
  const place = (...steps: Place): Place => ['racks', Math.max(0, rows().indexOf(row())), ...steps];
  const edit: RackForm['edit'] = (at, change) =>
    app.shop.edit(placeKey(place(...at)), (file) => {
      const found = file.racks.find((one) => one.id === id);
      if (found !== undefined) change(found);
    });
  return {
    row,
    place,
    edit,
    act(what, change) {
      app.shop.pause();
      edit([what], change);
      app.shop.pause();
    },
    copy: () => app.shop.snapshot()?.racks.find((one) => one.id === id) ?? { id, name: '', pieces: [] },
  };
}
