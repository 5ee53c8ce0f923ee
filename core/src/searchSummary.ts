import { withErrorText } from './entry.ts';
import type { MachineRow } from './file/machine.ts';
import { SIDES } from './plan.ts';

type SearchRow = NonNullable<MachineRow['search']>;

/** Where the wheels of a search come from, as a person picks it. */
export const WHEEL_CHOICES = [
  ['rack', 'from the rack'],
  ['rack and purchases', 'from the rack, and some to buy'],
  ['any', 'any in a range'],
] as const satisfies readonly (readonly [NonNullable<SearchRow['wheels']>, string])[];

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

/**
 * What a search may use and what it counts, in one line.
 *
 * @source our choice
 * @example searchSummary(Bench 1 without search settings)  // 'wheels from the rack; pumps as fitted'
 */
export function searchSummary({ search = {}, A, B }: Pick<MachineRow, 'search' | 'A' | 'B'>): string {
  const wheels = search.wheels ?? 'rack';
  const words = WHEEL_CHOICES.find(([id]) => id === wheels)?.[1];
  const bought = wheels === 'rack and purchases' ? `, up to ${search.purchases ?? 1}` : '';
  const teeth = wheels === 'rack' || search.teeth === undefined ? '' : `, ${search.teeth.from} to ${search.teeth.to} teeth`;
  const counted = search.asMeasured === true && measuredDeliveries({ A, B }) !== null;
  return [
    `wheels ${words}${bought}${teeth}`,
    `pumps ${search.anyPump ? 'any the machine may carry' : 'as fitted'}`,
    ...(search.openShared ? ['shared stages open'] : []),
    ...(counted ? ['delivery as measured'] : []),
  ].join('; ');
}
