import { Fraction, float } from '../ratio.ts';
import { toSI } from '../units.ts';

// Simplex roller chains by chain number.
//
// Pitch: pin to pin, exact; inch sizes as fractions of an inch, 05B in millimetres.
// Strength: minimum tensile strength of one strand, typed as printed: lbf in the first table, kN in the second.
// `asme-b29.1` rows: as tabulated in `mechanical-engineering-design`, table 17-19 (seen), read again in `chain-standards-article` (seen).
// `iso-606` rows: table 1, from memory; 08B to 16B, 12A and 16A compared with `iso-chain-chart` (seen).
//
// Known conflicts, not smoothed over here:
//   40: 3125 lbf in some copies, 3130 in others (rounding); 35: 1760 or 1758; 25: 780 or 781.
//   08A: 13.9 kN, but 13.8 in the edition of 2004. Makers print 4.4 to 5.0 kN for 05B and 60.0 to 60.9 for 16B.
// The two names of one chain keep the figure of their own table; they differ by less than one per cent.

/** One row of the table. */
export interface ChainSize {
  readonly number: string;
  readonly pitch_m: Fraction;
  /** A: American series; B: European series. Sprockets of one do not suit the other. */
  readonly series: 'A' | 'B';
  readonly leastTensileStrength_N: number;
  /** Id in SOURCES.md. */
  readonly source: string;
}

const inch = (pitch: string): Fraction => toSI('length', new Fraction(pitch), 'in');
const millimetre = (pitch: string): Fraction => toSI('length', new Fraction(pitch), 'mm');
const newtons = (strength: string, unit: 'lbf' | 'kN'): number => float(toSI('force', new Fraction(strength), unit));

function asme(number: string, pitch_m: Fraction, strength_lbf: string): ChainSize {
  return { number, pitch_m, series: 'A', leastTensileStrength_N: newtons(strength_lbf, 'lbf'), source: 'asme-b29.1' };
}

function iso(number: string, pitch_m: Fraction, series: 'A' | 'B', strength_kN: string): ChainSize {
  return { number, pitch_m, series, leastTensileStrength_N: newtons(strength_kN, 'kN'), source: 'iso-606' };
}

/** Every chain known here, American numbers first, each list from small to large. */
export const CHAIN_SIZES: readonly ChainSize[] = [
  asme('25', inch('1/4'), '780'),
  asme('35', inch('3/8'), '1760'),
  asme('40', inch('1/2'), '3125'),
  asme('41', inch('1/2'), '1500'),
  asme('50', inch('5/8'), '4880'),
  asme('60', inch('3/4'), '7030'),
  asme('80', inch('1'), '12500'),
  iso('04C', inch('1/4'), 'A', '3.5'),
  iso('05B', millimetre('8'), 'B', '4.4'),
  iso('06B', inch('3/8'), 'B', '8.9'),
  iso('06C', inch('3/8'), 'A', '7.9'),
  iso('08A', inch('1/2'), 'A', '13.9'),
  iso('08B', inch('1/2'), 'B', '17.8'),
  iso('085', inch('1/2'), 'A', '6.7'),
  iso('10A', inch('5/8'), 'A', '21.8'),
  iso('10B', inch('5/8'), 'B', '22.2'),
  iso('12A', inch('3/4'), 'A', '31.3'),
  iso('12B', inch('3/4'), 'B', '28.9'),
  iso('16A', inch('1'), 'A', '55.6'),
  iso('16B', inch('1'), 'B', '60.0'),
];

const BY_NUMBER: ReadonlyMap<string, ChainSize> = new Map(CHAIN_SIZES.map((size) => [size.number, size]));

/** American number for each metric name of the same chain [iso-606 annex B, from memory]. */
const AMERICAN_NAME: ReadonlyMap<string, string> = new Map([
  ['04C', '25'],
  ['06C', '35'],
  ['085', '41'],
  ['08A', '40'],
  ['10A', '50'],
  ['12A', '60'],
  ['16A', '80'],
]);

function plainNumber(written: string): string {
  return written
    .trim()
    .replace(/^(?:#|no\.)\s*/i, '')
    .toUpperCase();
}

/**
 * The table row of a chain number, however it is written.
 *
 * @param written  chain number as typed; blanks around it, a leading `#` or `no.` and small letters are accepted
 * @returns the row, or null where the number is not in the table
 * @source asme-b29.1 and iso-606, see the header
 * @example chainSize(' #40 ')?.number  // '40'
 */
export function chainSize(written: string): ChainSize | null {
  return BY_NUMBER.get(plainNumber(written)) ?? null;
}

/**
 * Whether two chain numbers name one and the same chain, as 40 and 08A do.
 *
 * @param a  chain number as typed; one that is not in the table is only the same as itself
 * @param b  likewise
 * @returns true for two names of one chain; the B series is never the same as the A series
 * @source iso-606, annex B (equivalent designations), from memory
 * @example sameChain('no. 40', '08a')  // true
 */
export function sameChain(a: string, b: string): boolean {
  return americanName(a) === americanName(b);
}

/**
 * The American number of a chain that has two names; any other number as it is.
 *
 * @param written  chain number as typed
 * @source iso-606, annex B (equivalent designations), from memory
 * @example americanName('08A')  // '40'
 */
export function americanName(written: string): string {
  const number = plainNumber(written);
  return AMERICAN_NAME.get(number) ?? number;
}
