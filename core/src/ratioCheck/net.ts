import { en } from '../en.ts';
import { si } from '../file/problems.ts';
import type { CaughtRow } from '../file/ratioCheckRow.ts';
import type { Place, Severity } from '../finding.ts';
import { type Given, known, NOT_GIVEN } from '../given.ts';
import { type Fraction, ZERO } from '../ratio.ts';
import type { TypedQuantity } from '../reading.ts';

/** What is the matter with catches as they were typed. */
export interface CatchTrouble {
  readonly severity: Severity;
  readonly where: Place;
  readonly what: string;
}

/** Where a weighing stands in the file, and how it begins a sentence. */
interface Weighing {
  readonly place: Place;
  readonly what: string;
}

/**
 * Net weight of one side of a catch.
 *
 * @param tared     whether the scale was set to zero with the empty cup: then a gross is the net
 * @param troubles  what stands against it is added here
 * @returns not given where nothing was weighed, or where what was typed gives no net
 * @source net = gross − tare
 */
export function net_kg(
  { gross, tare, net }: CaughtRow,
  tared: boolean,
  { place, what }: Weighing,
  troubles: CatchTrouble[],
): Given<Fraction> {
  const trouble = (field: string, sentence: string): Given<Fraction> => {
    troubles.push({ severity: 'blocks', where: [...place, field], what: `${what}: ${sentence}` });
    return NOT_GIVEN;
  };
  if (net !== undefined && gross !== undefined)
    return trouble('net', en`net ${said(net)} and gross ${said(gross)} are both written down; keep one of them, gross with its tare.`);
  if (net !== undefined) {
    const mass = si('mass', net);
    return mass.compare(ZERO) > 0 ? known(mass) : trouble('net', en`net is ${said(net)}; it must be above 0.`);
  }
  if (gross === undefined) return tare === undefined ? NOT_GIVEN : trouble('gross', en`the tare is ${said(tare)} but there is no gross.`);
  if (tare === undefined && !tared)
    return trouble('tare', en`gross is ${said(gross)} but the tare is missing: weigh the empty cup, or say that the scale was tared.`);
  if (tare !== undefined && tared)
    return trouble('tare', en`the scale was tared, yet a tare of ${said(tare)} is written down; one of the two is wrong.`);
  const mass = si('mass', gross).sub(tare === undefined ? ZERO : si('mass', tare));
  if (mass.compare(ZERO) > 0) return known(mass);
  return trouble(
    'gross',
    tare === undefined
      ? en`gross ${said(gross)} leaves nothing; net must be above 0.`
      : en`gross ${said(gross)} less tare ${said(tare)} leaves nothing; net must be above 0.`,
  );
}

const said = ({ value, unit }: TypedQuantity): string => `${value}\u00A0${unit}`;
