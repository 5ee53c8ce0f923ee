import { en } from '../en.ts';
import { freshId } from './freshId.ts';
import { putOnRack, type RackedWheel } from './putOnRack.ts';
import type { RackRow } from './rack.ts';
import type { ShopFile } from './shopFile.ts';

/**
 * Lays wheels on the rack of a machine; one that has none gets a rack of its own.
 *
 * @param file  a checked shop file, to be changed
 * @throws RangeError  where there is no such machine
 */
export function addToRack(file: ShopFile, machineId: string, wheels: readonly RackedWheel[]): void {
  const machine = file.machines.find((one) => one.id === machineId);
  if (machine === undefined) throw new RangeError(`addToRack: there is no machine ${machineId}`);
  const named = machine.rack ?? (file.racks.length === 1 ? file.racks[0]?.id : undefined);
  const rack = file.racks.find(({ id }) => id === named) ?? newRack(file);
  machine.rack ??= rack.id;
  for (const wheel of wheels) putOnRack(rack, wheel);
}

function newRack(file: ShopFile): RackRow {
  file.racks.push({ id: freshId(file.racks, 'rack'), name: en`Rack`, pieces: [] });
  const rack = file.racks.at(-1);
  if (rack === undefined) throw new RangeError('addToRack: no rack');
  return rack;
}
