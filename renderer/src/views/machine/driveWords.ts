import { en } from '../../../../core/src/en.ts';
import type { DriveTree } from '../../../../core/src/file/driveTree.ts';
import type { MachineRow } from '../../../../core/src/file/machine.ts';
import { visible } from '../../../../core/src/visible.ts';
import { stageName } from './machineForm.ts';

/** What the drawing shows, in one sentence for those who do not see it. */
export function driveSentence(machine: MachineRow, tree: DriveTree): string {
  const shaft = (index: number) => visible(machine.shafts[index]?.name ?? machine.shafts[index]?.id ?? '');
  const links = tree.links.map(({ stage, from, to }) => {
    const row = stage === null ? undefined : machine.stages[stage];
    const [turning, turned] = [shaft(from.shaft), shaft(to.shaft)];
    return row === undefined ? en`${turning} turns ${turned} directly` : en`${turning} turns ${turned} by ${stageName(row)}`;
  });
  const pumps = (['A', 'B'] as const).map(
    (side) => en`pump ${side} on ${shaft(machine.shafts.findIndex(({ id }) => id === machine[side].shaft))}`,
  );
  return en`Drive: ${[...links, ...pumps].join('; ')}.`;
}
