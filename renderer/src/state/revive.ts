import { Fraction } from '../../../core/src/ratio.ts';

/**
 * What came out of a worker, its exact numbers as fractions again: on the way they keep their digits and lose their methods.
 * The types are those of what was sent.
 */
export function revived<T>(sent: T): T {
  return revive(sent) as T;
}

function revive(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(revive);
  if (typeof value !== 'object' || value === null) return value;
  if ('s' in value && 'n' in value && 'd' in value) {
    const { s, n, d } = value;
    if (typeof s === 'bigint' && typeof n === 'bigint' && typeof d === 'bigint') return new Fraction(s * n, d);
  }
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, revive(inner)]));
}
