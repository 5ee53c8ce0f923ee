import type { SideName, Turns } from '../plan.ts';
import type { MachineRow } from './machine.ts';

/** What a drawing needs of a machine. */
type Drive = Pick<MachineRow, 'shafts'> & {
  readonly stages: readonly { readonly id: string }[];
  readonly A: { readonly shaft: string };
  readonly B: { readonly shaft: string };
};

/** A shaft on the grid: motor in column 0, each shaft one column after the one that turns it; it reaches over the rows of all it turns. */
export interface ShaftNode {
  /** Index into the machine's shafts. */
  readonly shaft: number;
  readonly column: number;
  readonly row: number;
  readonly lastRow: number;
}

/** How one shaft turns the next, in the row of the shaft that is turned. */
export interface ShaftLink {
  /** Index into the machine's stages; null where the shafts are coupled. */
  readonly stage: number | null;
  readonly from: ShaftNode;
  readonly to: ShaftNode;
  readonly turns: Turns;
}

export interface PumpNode {
  readonly side: SideName;
  readonly column: number;
  readonly row: number;
}

export interface DriveTree {
  readonly columns: number;
  readonly rows: number;
  readonly shafts: readonly ShaftNode[];
  /** Motor first, each branch to its end before the next. */
  readonly links: readonly ShaftLink[];
  readonly pumps: readonly PumpNode[];
  /** The form of the tree without its names: two drives built alike have the same. */
  readonly shape: string;
}

/** One shaft with all that it turns. */
interface Branch {
  readonly node: ShaftNode;
  readonly rows: number;
  readonly shape: string;
  readonly sides: readonly SideName[];
  readonly shafts: readonly ShaftNode[];
  readonly links: readonly ShaftLink[];
  readonly pumps: readonly PumpNode[];
}

const SIDES = ['A', 'B'] as const;

/**
 * Lays the shafts of a machine out on a grid, left to right from the motor.
 *
 * @param drive  a machine of a checked file; a shaft that the motor does not turn is left out
 * @source our choice
 * @example driveTree(machine).columns  // 2 where the motor carries pump A and turns pump B
 */
export function driveTree(drive: Drive): DriveTree {
  const root = drive.shafts.find((shaft) => shaft.turnedBy === undefined);
  if (root === undefined) return { columns: 0, rows: 0, shafts: [], links: [], pumps: [], shape: '' };
  const { rows, shafts, links, pumps, shape } = grow(drive, root, 0, 0);
  return { columns: 1 + Math.max(...shafts.map(({ column }) => column)), rows, shafts, links, pumps, shape };
}

function grow(drive: Drive, shaft: MachineRow['shafts'][number], column: number, row: number): Branch {
  const own = SIDES.filter((side) => drive[side].shaft === shaft.id);
  let next = row + own.length;
  const children = drive.shafts
    .filter((one) => one.turnedBy?.shaft === shaft.id)
    .map((child) => {
      const branch = grow(drive, child, column + 1, next);
      next += branch.rows;
      const stage = drive.stages.findIndex(({ id }) => id === child.turnedBy?.stage);
      return { branch, stage: stage < 0 ? null : stage };
    });
  const branches = children.map(({ branch }) => branch);
  const lastRow = Math.max(row, row + own.length - 1, ...branches.map(({ node }) => node.row));
  const node: ShaftNode = { shaft: drive.shafts.indexOf(shaft), column, row, lastRow };
  return {
    node,
    rows: Math.max(1, next - row),
    shape: `${own.join('')}(${children
      .map(({ branch, stage }) => `${stage === null ? '=' : '-'}${branch.shape}`)
      .sort()
      .join('')})`,
    sides: [...own, ...branches.flatMap(({ sides }) => sides)],
    shafts: [node, ...branches.flatMap(({ shafts }) => shafts)],
    links: children.flatMap(({ branch, stage }) => [{ stage, from: node, to: branch.node, turns: turnsOf(branch.sides) }, ...branch.links]),
    pumps: [...own.map((side, index) => ({ side, column, row: row + index })), ...branches.flatMap(({ pumps }) => pumps)],
  };
}

function turnsOf(sides: readonly SideName[]): Turns {
  const [first, second] = sides;
  if (first === undefined) return 'neither';
  return second === undefined ? first : 'both';
}
