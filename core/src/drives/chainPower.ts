import { en } from '../en.ts';
import { float, ONE } from '../ratio.ts';
import type { PowerConstants } from '../tables/chainPower.ts';
import { toSI } from '../units.ts';
import { formula, type Input, input, type Worked, work } from '../working.ts';

// The power that a roller chain takes: what its link plates stand at low speed, what its rollers and bushings stand at high speed.
// As printed in the textbooks, with horsepower, inches and revolutions a minute; here turned to SI, with q the pitch in inches,
// N the teeth of the smaller sprocket and n its speed.

const HP_W = float(toSI('power', ONE, 'hp'));
const INCH_m = float(toSI('length', ONE, 'in'));

const pitchInInches = formula({
  letter: 'q',
  written: `p / ${INCH_m}`,
  dimension: 'number',
  source: en`definition of the inch`,
  of: ({ p }: Record<'p', number>) => p / INCH_m,
});

export const linkPlateLimit = formula({
  letter: 'H',
  written: `${HP_W} · k · N^1.08 · (60 · n)^0.9 · q^(3 - 0.07 · q)`,
  dimension: 'power',
  source: en`mechanical-engineering-design, eq. 17-32`,
  of: ({ k, N, n, q }: Record<'k' | 'N' | 'n' | 'q', number>) => HP_W * k * N ** 1.08 * (60 * n) ** 0.9 * q ** (3 - 0.07 * q),
});

export const rollerLimit = formula({
  letter: 'H',
  written: `${HP_W} · 1000 · K · N^1.5 · q^0.8 / (60 · n)^1.5`,
  dimension: 'power',
  source: en`mechanical-engineering-design, eq. 17-33`,
  of: ({ K, N, n, q }: Record<'K' | 'N' | 'n' | 'q', number>) => (HP_W * 1000 * K * N ** 1.5 * q ** 0.8) / (60 * n) ** 1.5,
});

const smallerLimit = formula({
  letter: 'H',
  written: 'min(H₁, H₂)',
  dimension: 'power',
  source: en`mechanical-engineering-design: the smaller of the two counts`,
  of: ({ 'H₁': plates, 'H₂': rollers }: Record<'H₁' | 'H₂', number>) => Math.min(plates, rollers),
});

/**
 * Power that one strand takes for 15,000 hours of full load.
 *
 * @param constants  of the chain
 * @param p      pitch in metres
 * @param teeth  of the smaller sprocket, 3 or more
 * @param n      speed of the smaller sprocket in revolutions a second, above 0
 * @returns watts, the smaller of two limits
 * @source mechanical-engineering-design, eq. 17-32 and 17-33
 * @example chain 40, 17 teeth at 1000 rpm  // 5.48 hp, by its link plates
 */
export function ratedPower(constants: PowerConstants, p: Input<number>, teeth: number, n: Input<number>): Worked<number> {
  const q = work(pitchInInches, en`pitch in inches`, { p });
  const N = input(en`teeth of the smaller sprocket`, teeth, 'number');
  const k = input(en`constant of the link plates`, constants.linkPlateFactor, 'number');
  const K = input(en`constant of rollers and bushings`, constants.rollerFactor, 'number');
  return work(smallerLimit, en`rated power`, {
    'H₁': work(linkPlateLimit, en`what the link plates take`, { k, N, n, q }),
    'H₂': work(rollerLimit, en`what rollers and bushings take`, { K, N, n, q }),
  });
}
