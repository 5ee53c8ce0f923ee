import * as v from 'valibot';
import { driveKinds } from '../drives/index.ts';
import { type MachineRow, machine, type SideRow, type SlotRow, type StageRow } from './machine.ts';

/** What is looked at; everything else of the machine is left out. */
export interface MachinePart {
  readonly motor?: MachineRow['motor'];
  readonly stage?: Partial<StageRow>;
  readonly slot?: SlotRow;
  readonly pump?: Partial<SideRow['pumps'][number]>;
}

/**
 * What the file would refuse about a figure of a machine, said while it is typed.
 *
 * @param part  only what is to be looked at, as `{ slot: { bore } }`
 * @returns the first thing that is wrong, or null
 * @source the schema of the file
 * @example machineTrouble({ motor: { speed: { value: '0', unit: 'rpm' } } })  // '0 rpm is out of range: it must be above 0 rpm'
 */
export function machineTrouble(part: MachinePart): string | null {
  const side = { shaft: 's', fitted: 'p', pumps: [{ id: 'p', ...part.pump }] };
  const read = v.safeParse(machine, {
    id: 'm',
    name: '',
    motor: part.motor ?? {},
    shafts: [{ id: 's' }],
    stages: [{ id: 's', kind: driveKinds[0]?.kind, size: '', driver: part.slot ?? {}, driven: {}, ...part.stage }],
    A: side,
    B: side,
  });
  return read.success ? null : read.issues[0].message;
}
