import { en, plural } from '../en.ts';
import { capital } from '../format.ts';
import type { LimitsRow } from './material.ts';

/** Limits while they are typed: any of the three may still be missing. */
export type LimitsDraft = Partial<LimitsRow>;

const NAMES: Readonly<Record<keyof LimitsRow, string>> = {
  low: en`the low limit`,
  high: en`the high limit`,
  definition: en`the definition`,
};

/**
 * Limits fit for the file: all three, or none. A number without its definition means nothing.
 *
 * @example wholeLimits({ low: '-2', high: '2' })  // null
 */
export function wholeLimits({ low, high, definition }: LimitsDraft): LimitsRow | null {
  return low === undefined || high === undefined || definition === undefined ? null : { definition, low, high };
}

/**
 * What limits still lack, as a sentence; null where they are complete.
 *
 * @example limitsTrouble({ low: '-2', high: '2' })  // 'The definition is missing: the limits count once low, high and definition are all given.'
 */
export function limitsTrouble(draft: LimitsDraft): string | null {
  const missing = (['low', 'high', 'definition'] as const).filter((key) => draft[key] === undefined);
  if (missing.length === 0) return null;
  if (missing.length === 3)
    return en`The limits are not given: until they are, no option is called inside or outside. The data sheet states them.`;
  const names = capital(missing.map((key) => NAMES[key]).join(en` and `));
  return plural(
    missing.length,
  )`${names} is missing: the limits count once low, high and definition are all given.|${names} are missing: the limits count once low, high and definition are all given.`;
}
