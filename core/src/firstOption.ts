import type { Mounted } from './layOut.ts';
import { triedRatios } from './nearRatios.ts';
import type { Plan } from './plan.ts';

/**
 * The first option of the search for the material of a plan, without the rest of its list; null where nothing can be built.
 *
 * @source the search, asked for one ratio
 * @example firstOption(E12 on Bench 1 of the demo)?.teeth  // [{ driver: 23, driven: 25 }]
 */
export const firstOption = (plan: Plan): Mounted | null => triedRatios(plan).near(plan.mix.wantedBPerA, 1)[0]?.first ?? null;
