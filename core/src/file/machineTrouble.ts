import * as v from 'valibot';
import { driveKinds } from '../drives/index.ts';
import { en } from '../en.ts';
import { type MachineRow, machine, type SideRow, type SlotRow, type StageRow } from './machine.ts';

/** What is looked at; everything else of the machine is left out. */
export interface MachinePart {
  readonly motor?: MachineRow['motor'];
  readonly stage?: Partial<StageRow>;
  readonly slot?: SlotRow;
  readonly pump?: Partial<SideRow['pumps'][number]>;
  readonly side?: Partial<Omit<SideRow, 'shaft' | 'fitted' | 'pumps'>>;
  /** What is said of the machine as a whole. */
  readonly machine?: Partial<
    Pick<MachineRow, 'wantedFlow' | 'wantedShot' | 'batch' | 'mixerVolume' | 'serviceFactor' | 'minutes' | 'checklist'>
  >;
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
  const side = { ...part.side, shaft: 's', fitted: 'p', pumps: [{ id: 'p', ...part.pump }] };
  const read = v.safeParse(machine, {
    ...part.machine,
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

/**
 * What is wrong with giving a flow or a shot where the other is given already; null where nothing is.
 *
 * @param row  the machine as it stands
 * @param key  which of the two is being given
 * @source our choice: both say what is wanted, so only one of them is kept
 * @example wantedTrouble({ wantedShot }, 'wantedFlow')  // 'a shot is given, which says the same: empty that box first'
 */
export function wantedTrouble(row: Pick<MachineRow, 'wantedFlow' | 'wantedShot'>, key: 'wantedFlow' | 'wantedShot'): string | null {
  const other = key === 'wantedFlow' ? 'wantedShot' : 'wantedFlow';
  return row[other] === undefined ? null : GIVEN[other];
}

const GIVEN = {
  wantedFlow: en`a flow is given, which says the same: empty that box first`,
  wantedShot: en`a shot is given, which says the same: empty that box first`,
} as const;

/**
 * Why the teeth of a pump's gear may not be taken away; null where they may.
 *
 * @param gear  as it stands
 * @source our choice: nothing else of a gear says anything without its teeth
 * @example gearTeethTrouble({ teeth: 12 })  // null
 */
export function gearTeethTrouble(gear: NonNullable<SideRow['pumps'][number]['gear']> | undefined): string | null {
  const others = Object.keys(gear ?? {}).some((key) => key !== 'teeth');
  return others ? en`the other figures of the gear need its teeth: empty them first` : null;
}
