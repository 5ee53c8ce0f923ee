import { createEffect } from 'solid-js';
import { isOn } from '../../../core/src/ratioCheck/freshCheck.ts';

import type { App, Measured } from './app.ts';
import { type Kept, keptOf } from './keptChecks.ts';

/** Keeps the mark of what was measured on the ratio band: the last kept check of just what the band shows as fitted. */
export function watchMeasured(app: App): void {
  createEffect(() => {
    const file = app.shop.file;
    const last = file === null ? undefined : keptOf(file.ratioChecks, app.selection().machine).find((one) => isOnBand(app, one.row));
    app.setMeasured('kept', last === undefined ? null : measuredOf(last));
  });
}

/** Whether a check was made of the machine and the material of the pages, with what is on the machine now. */
export function isOnBand(app: App, { machine, material, mounted }: Kept['row']): boolean {
  const selected = app.selection();
  const row = app.shop.file?.machines[app.machine()];
  return machine === selected.machine && material === selected.material && row !== undefined && isOn(mounted, row);
}

export function measuredOf({ row, evaluation }: Pick<Kept, 'row' | 'evaluation'>): Measured | null {
  if (evaluation === null || evaluation.volumeBPerA === null) return null;
  const { volumeBPerA, offRatio, verdict } = evaluation;
  return { bPerA: volumeBPerA, offRatio: offRatio.value, verdict, day: row.date };
}
