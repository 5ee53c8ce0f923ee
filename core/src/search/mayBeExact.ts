import { type Fraction, greatestCommon } from '../ratio.ts';
import type { RatioList } from './ratioLists.ts';
import { distinctAscending } from './sorted.ts';

/** Whether constant * product = 1 is possible by size, which `makes` relies on for its proof, and by prime factors. */
export function mayBeExact(constant: Fraction, factors: readonly RatioList[]): boolean {
  const mostNumerator = factors.reduce((product, list) => product * list.mostNumerator, 1);
  const mostDenominator = factors.reduce((product, list) => product * list.mostDenominator, 1);
  if (Number(constant.d) > mostNumerator || Number(constant.n) > mostDenominator) return false;
  // stages with the same ratios share their arrays, and dividing by the same again changes nothing
  const lists = factors.filter((list, f) => !factors.slice(0, f).some(({ numerator }) => numerator === list.numerator));
  const left = (value: bigint, part: 0 | 1): bigint => lists.reduce((rest, list) => without(rest, list, part), value);
  return left(constant.d, 0) === 1n && left(constant.n, 1) === 1n;
}

/** What is left of `value` once every factor it shares with the numerators (0) or denominators (1) is divided out, as often as it goes. */
function without(value: bigint, list: RatioList, part: 0 | 1): bigint {
  let rest = value;
  for (const divisor of divisorsIn(list, part)) {
    if (rest === 1n) break;
    for (let common = greatestCommon(rest, divisor); common > 1n; common = greatestCommon(rest, common)) rest /= common;
  }
  return rest;
}

/** The same few teeth stand in thousands of ratios; only what is too long for a float is taken one by one. */
function* divisorsIn({ numerator, denominator, mostNumerator, mostDenominator, exact }: RatioList, part: 0 | 1): Generator<bigint> {
  const values = part === 0 ? numerator : denominator;
  if (Math.max(mostNumerator, mostDenominator) < 2 ** 53) for (const value of distinctAscending(values)) yield BigInt(value);
  else for (let g = 0; g < values.length; g++) yield exact(g)[part];
}
