import { Fraction, float } from '../ratio.ts';
import { toSI } from '../units.ts';
import { americanName, CHAIN_SIZES, chainSize } from './chainSizes.ts';

// How fast a roller chain may run with each way of oiling it, by American chain number, in feet a minute as printed:
// type A, by hand or drip; type B, oil bath or slinger disc. Above that, type C, an oil stream.
// `asme-b29.1`, supplementary information: maximum chain speed by type of lubrication; from memory.
//
// The B series has no such table here. It is taken as the A series chain of the same pitch (our choice); 05B has none.

/** Up to which chain speed each way of oiling will do. */
export interface OilLimits {
  /** The American number whose limits these are. */
  readonly number: string;
  readonly byHand_m_per_s: number;
  readonly bath_m_per_s: number;
}

const feetPerMinute = (speed: string): number => float(toSI('velocity', new Fraction(speed), 'ft/min'));
const row = (number: string, byHand: string, bath: string): OilLimits => ({
  number,
  byHand_m_per_s: feetPerMinute(byHand),
  bath_m_per_s: feetPerMinute(bath),
});

const ROWS: readonly OilLimits[] = [
  row('25', '480', '3250'),
  row('35', '350', '2650'),
  row('40', '300', '2200'),
  row('41', '300', '2200'),
  row('50', '250', '1900'),
  row('60', '215', '1750'),
  row('80', '165', '1475'),
];

/**
 * Limits of chain speed by the way of oiling.
 *
 * @param written  chain number as typed
 * @returns the limits of that chain, or of the A series chain of the same pitch; null where there is none
 * @source asme-b29.1, supplementary information, from memory
 * @example oilLimits('08B')?.number  // '40'
 */
export function oilLimits(written: string): OilLimits | null {
  const own = ROWS.find(({ number }) => number === americanName(written));
  if (own !== undefined) return own;
  const pitch_m = chainSize(written)?.pitch_m;
  const alike = CHAIN_SIZES.find((size) => size.series === 'A' && pitch_m !== undefined && size.pitch_m.equals(pitch_m));
  return ROWS.find(({ number }) => number === alike?.number) ?? null;
}
