import Fraction from 'fraction.js';

export { Fraction };

export const ZERO: Fraction = new Fraction(0);
export const ONE: Fraction = new Fraction(1);

/** A whole number as a fraction. Only for integers: text goes through `readNumber`, so that no float ever becomes a fraction. */
export function whole(value: number | bigint): Fraction {
  if (typeof value === 'number' && !Number.isSafeInteger(value)) throw new RangeError(`whole(${value}): not a whole number`);
  return new Fraction(BigInt(value));
}

/** Two whole numbers as a reduced fraction. */
export function ratioOf(numerator: number | bigint, denominator: number | bigint): Fraction {
  return whole(numerator).div(whole(denominator));
}

/** The reduced fraction as `n/d`, always with its denominator: how every exact ratio is written in files and JSON. */
export function exactText(value: Fraction): string {
  return `${value.s * value.n}/${value.d}`;
}

/** The nearest float, for geometry and display; never for ranking. */
export function float(value: Fraction): number {
  return value.valueOf();
}

export const least = (a: Fraction, b: Fraction): Fraction => (a.compare(b) <= 0 ? a : b);
export const most = (a: Fraction, b: Fraction): Fraction => (a.compare(b) >= 0 ? a : b);

/** The greatest common divisor of two whole numbers >= 0; 0 divides nothing and is divided by all. */
export function greatestCommon(a: bigint, b: bigint): bigint {
  return b === 0n ? a : greatestCommon(b, a % b);
}
