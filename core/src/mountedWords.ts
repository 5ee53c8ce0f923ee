import { en } from './en.ts';
import type { Mounted } from './layOut.ts';
import { type Plan, SIDES } from './plan.ts';
import { teethText } from './teethWords.ts';
import { fittedPumps } from './train.ts';

// What an option mounts, in the few words of a table.

/** A pump by its side and name. */
export const sidePumpText = (side: string, name: string): string => en`pump ${side} ${name}`;

/**
 * Teeth stage by stage, and every pump that is not the one fitted now: without it the teeth make another ratio.
 *
 * @source our choice of words
 * @example mountedText(Bench 1 of the demo with a pump PB3, 24 driving 30 teeth with PB3)  // '24 to 30; pump B PB3'
 */
export function mountedText(plan: Plan, { pumps, teeth }: Mounted): string {
  const fitted = fittedPumps(plan);
  const other = SIDES.filter((side) => pumps[side] !== fitted[side].id).map((side) => {
    const name = plan.sides[side].pumps.find(({ id }) => id === pumps[side])?.name ?? pumps[side];
    return sidePumpText(side, name);
  });
  return [teethText(teeth), ...other].join('; ');
}
