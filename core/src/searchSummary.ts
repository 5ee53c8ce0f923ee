import { en } from './en.ts';
import type { MachineRow } from './file/machine.ts';

type SearchRow = NonNullable<MachineRow['search']>;

/** Where the wheels of a search come from, as a person picks it. */
export const WHEEL_CHOICES = [
  ['rack', en`from the rack`],
  ['rack and purchases', en`from the rack, and some to buy`],
  ['any', en`any in a range`],
] as const satisfies readonly (readonly [NonNullable<SearchRow['wheels']>, string])[];

/**
 * What a search may use and what it counts, in one line.
 *
 * @source our choice
 * @example searchSummary(Bench 1 without search settings)  // 'wheels from the rack; pumps as fitted'
 */
export function searchSummary({ search = {}, A, B }: Pick<MachineRow, 'search' | 'A' | 'B'>): string {
  const wheels = search.wheels ?? 'rack';
  const words = WHEEL_CHOICES.find(([id]) => id === wheels)?.[1];
  const used = [
    en`wheels ${words}`,
    ...(wheels === 'rack and purchases' ? [en`up to ${search.purchases ?? 1}`] : []),
    ...(wheels === 'rack' || search.teeth === undefined ? [] : [en`${search.teeth.from} to ${search.teeth.to} teeth`]),
  ];
  const counted = search.asMeasured === true && [A, B].some(({ pumps }) => pumps.some((pump) => pump.measuredDelivery !== undefined));
  return [
    used.join(', '),
    search.anyPump ? en`pumps any the machine may carry` : en`pumps as fitted`,
    ...(search.openShared ? [en`shared stages open`] : []),
    ...(counted ? [en`delivery as measured`] : []),
  ].join('; ');
}
