import { en } from '../../../core/src/en.ts';
import { machineTrouble } from '../../../core/src/file/machineTrouble.ts';
import { SIDES } from '../../../core/src/plan.ts';
import type { MeasuredDelivery } from '../../../core/src/ratioCheck/delivery.ts';
import type { BySide } from '../../../core/src/ratioCheck/model.ts';
import { storedDelivery } from '../../../core/src/ratioCheck/storedDelivery.ts';
import type { App } from './app.ts';
import type { Shown } from './ratioCheck.ts';

/** Both deliveries of a check, where they may be used: known on both sides, from catches that agree. */
export function usableDeliveries({ evaluation }: Shown): BySide<MeasuredDelivery> | null {
  const { delivery, interval, unstable } = evaluation;
  return delivery.A === null || delivery.B === null || interval === null || unstable.length > 0 ? null : { A: delivery.A, B: delivery.B };
}

/**
 * Keeps both deliveries with the pumps of the check: one undo step.
 *
 * @param counted  whether the ratio is to count them from now on
 * @returns what stands against it, or null
 */
export function useDeliveries(app: App, shown: Shown, counted: boolean): string | null {
  const usable = usableDeliveries(shown);
  if (usable === null) return en`The catches do not agree, or do not tell both deliveries.`;
  const stored = { A: storedDelivery(usable.A), B: storedDelivery(usable.B) };
  const [trouble] = SIDES.flatMap((side) => machineTrouble({ pump: { measuredDelivery: stored[side] } }) ?? []);
  if (trouble !== undefined) return trouble;
  const { machine, mounted } = shown.row;
  app.shop.pause();
  app.shop.edit(`deliveries of ${shown.row.id}`, (file) => {
    const row = file.machines.find(({ id }) => id === machine);
    for (const side of SIDES) {
      const pump = row?.[side].pumps.find(({ id }) => id === mounted.pumps[side]);
      if (pump !== undefined) pump.measuredDelivery = stored[side];
    }
    if (row !== undefined && counted) row.search = { ...row.search, asMeasured: true };
  });
  app.shop.pause();
  return null;
}

/** Puts the machine's options in sight with the pumps as this check found them. */
export function showAsMeasured(app: App, shown: Shown): string | null {
  const trouble = useDeliveries(app, shown, true);
  if (trouble !== null) return trouble;
  pickMaterialOf(app, shown.row.material);
  void app.show('options');
  return null;
}

/** Has all pages work on a material of the file. */
export function pickMaterialOf(app: App, id: string): void {
  const index = app.shop.file?.materials.findIndex((one) => one.id === id) ?? -1;
  if (index >= 0) app.pickMaterial(index);
}
