import { americanName } from './chainSizes.ts';

// Constants of the two limits of the power that a roller chain takes, by American chain number; no dimension.
//
// Link plates: 0.004, and 0.0022 for the lighter chain 41. Rollers and bushings: 29 for 25 and 35, 3.4 for 41, 17 from 40 on.
// `mechanical-engineering-design`, equations 17-32 and 17-33 (constants seen in a data sheet that cites them).
// They go with horsepower, inches and revolutions a minute; the formulas that take them are in `drives/chainPower.ts`.

export interface PowerConstants {
  readonly linkPlateFactor: number;
  readonly rollerFactor: number;
}

const USUAL: PowerConstants = { linkPlateFactor: 0.004, rollerFactor: 17 };
const SMALL: PowerConstants = { linkPlateFactor: 0.004, rollerFactor: 29 };

const BY_NUMBER: ReadonlyMap<string, PowerConstants> = new Map([
  ['25', SMALL],
  ['35', SMALL],
  ['41', { linkPlateFactor: 0.0022, rollerFactor: 3.4 }],
  ['40', USUAL],
  ['50', USUAL],
  ['60', USUAL],
  ['80', USUAL],
]);

/**
 * Constants of the power limits of a chain.
 *
 * @param written  chain number as typed, by either of its names
 * @returns null for the B series, for which no such constants are published, and for unknown numbers
 * @source mechanical-engineering-design, eq. 17-32 and 17-33
 * @example powerConstants('08A')?.rollerFactor  // 17
 */
export const powerConstants = (written: string): PowerConstants | null => BY_NUMBER.get(americanName(written)) ?? null;
