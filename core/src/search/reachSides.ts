import type { Space } from './space.ts';

/** Raw products of the long side: its memory. */
export const MOST_LONG = 2 ** 23;

/** Only some factors, without the constant; what was proved of all holds for some. */
export function partOf(space: Space, chosen: readonly number[]): Space {
  const factors = chosen.flatMap((f) => space.factors[f] ?? []);
  const product = (of: (list: Space['factors'][number]) => number): number => factors.reduce((n, list) => n * of(list), 1);
  return {
    ...space,
    factors,
    constant: space.constant.div(space.constant),
    logConstant: 0,
    mostNumerator: product(({ mostNumerator }) => mostNumerator),
    mostDenominator: product(({ mostDenominator }) => mostDenominator),
  };
}

/** The factors by index: the long side holds as many products as may be listed. */
export function splitOf({ factors }: Space): readonly [short: readonly number[], long: readonly number[]] {
  let best: readonly [readonly number[], readonly number[]] = [[], []];
  let most = 0;
  for (let subset = 1; subset < 2 ** factors.length; subset++) {
    const all = [...factors.keys()];
    const long = all.filter((f) => (subset >> f) & 1);
    const size = long.reduce((n, f) => n * (factors[f]?.log.length ?? 0), 1);
    if (size > MOST_LONG || size < most) continue;
    most = size;
    best = [all.filter((f) => !long.includes(f)), long];
  }
  return best;
}
