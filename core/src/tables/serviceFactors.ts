import { en } from '../en.ts';
import { Fraction } from '../ratio.ts';

// Service factors of chain drives turned by an electric motor: times which the load counts; no dimension.
// `asme-b29.1`, supplementary information, from memory; also in `machine-elements`, table 7-8, from memory.

/** A usual service factor, and the load it goes with. */
export interface ServiceFactor {
  readonly load: string;
  readonly serviceFactor: Fraction;
}

export const SERVICE_FACTORS: readonly ServiceFactor[] = [
  { load: en`an even load`, serviceFactor: new Fraction('1.0') },
  { load: en`moderate shock`, serviceFactor: new Fraction('1.3') },
  { load: en`heavy shock`, serviceFactor: new Fraction('1.5') },
];
