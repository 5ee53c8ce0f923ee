import { withErrorText } from './entry.ts';
import type { MachineRow } from './file/machine.ts';
import { SIDES } from './plan.ts';

/**
 * The pumps of a machine whose delivery was measured, each with its figure.
 *
 * @returns one line, or null where none was measured
 * @source our choice
 * @example measuredDeliveries(Bench 1 with pump B measured at 96 %)  // 'B 96 %'
 */
export function measuredDeliveries(machine: Pick<MachineRow, 'A' | 'B'>): string | null {
  const measured = SIDES.flatMap((side) => {
    const { pumps } = machine[side];
    return pumps.flatMap(({ id, name, measuredDelivery }) => {
      if (measuredDelivery === undefined) return [];
      const whose = pumps.length === 1 ? side : `${side} ${name ?? id}`;
      return [`${whose} ${withErrorText('share', measuredDelivery, '%')}\u00A0%`];
    });
  });
  return measured.length === 0 ? null : measured.join(', ');
}
