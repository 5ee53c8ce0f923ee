import { describe, expect, it } from 'vitest';
import { gathered } from '../../../core/src/search/gathered.ts';
import { stageRanks } from '../../../core/src/search/ranks.ts';
import { type RatioList, sameRatios, stageList } from '../../../core/src/search/ratioLists.ts';
import { stageOf, teethFrom } from './racks.ts';

const listOf = (drivers: readonly number[], driven: readonly number[] = drivers): RatioList => {
  const stage = stageOf('B', drivers, driven);
  return stageList(stage, stageRanks(stage), () => true, []);
};

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** Every product as a reduced fraction, with the ways to make it. */
function plainly(a: RatioList, b: RatioList): Map<string, string[]> {
  const products = new Map<string, string[]>();
  for (let i = 0; i < a.log.length; i++) {
    for (let j = 0; j < b.log.length; j++) {
      const n = (a.numerator[i] ?? 0) * (b.numerator[j] ?? 0);
      const d = (a.denominator[i] ?? 0) * (b.denominator[j] ?? 0);
      const key = `${n / gcd(n, d)}/${d / gcd(n, d)}`;
      products.set(key, [...(products.get(key) ?? []), `${i} ${j}`]);
    }
  }
  return products;
}

function together(a: RatioList, b: RatioList) {
  const { log, ...ways } = gathered(a, b, sameRatios(a, b));
  const width = b.log.length;
  const made = [...log.keys()].map((p) =>
    [...ways.way.subarray(ways.first[p], ways.first[p + 1])].flatMap((way) => {
      const [i, j] = [Math.trunc(way / width), way % width];
      return ways.mirrored && i !== j ? [`${i} ${j}`, `${j} ${i}`] : [`${i} ${j}`];
    }),
  );
  return { log, made };
}

describe('the products of two stages, equal ones gathered', () => {
  it.each([
    ['two alike', listOf(teethFrom(9, 20)), listOf(teethFrom(9, 20))],
    ['two that differ', listOf(teethFrom(9, 18)), listOf(teethFrom(12, 17), teethFrom(30, 41))],
    ['one pair and many', listOf([17]), listOf(teethFrom(9, 24))],
    ['all products equal', listOf([20]), listOf([20])],
  ])('finds each product once, ascending, with every way to make it: %s', (_, a, b) => {
    const { log, made } = together(a, b);
    expect([...log].every((value, p) => p === 0 || value > (log[p - 1] ?? 0))).toBe(true);
    const ways = (list: readonly string[]) => [...list].sort().join(', ');
    expect(made.map(ways).sort()).toEqual([...plainly(a, b).values()].map(ways).sort());
  });

  it('leaves a tenth of 5.7 million products of two stages of 60 sizes', () => {
    const list = listOf(teethFrom(9, 68));
    // counted once by another program: sorted reduced fractions
    expect(list.log.length).toBe(2397);
    expect(gathered(list, list, true).log.length).toBe(579_619);
    const fewer = listOf(teethFrom(9, 48));
    expect(gathered(fewer, fewer, true).log.length).toBe(143_299);
  });
});
