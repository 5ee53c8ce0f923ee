import type { Wheel } from '../../../../core/src/buying/index.ts';
import { wheelsText } from '../../../../core/src/buyWords.ts';
import { en } from '../../../../core/src/en.ts';
import { addToRack } from '../../../../core/src/file/addToRack.ts';
import type { App } from '../../state/app.ts';

/** Lays wheels on the rack of the machine: one step to take back. */
export function addWheels(app: App, wheels: readonly Wheel[]): void {
  const { machine } = app.selection();
  if (machine === undefined) return;
  app.shop.pause();
  app.shop.edit('rack.bought', (file) => addToRack(file, machine, wheels));
  app.shop.pause();
  app.tell(en`On the rack now: ${wheelsText(wheels)}. Undo takes it back.`);
}
