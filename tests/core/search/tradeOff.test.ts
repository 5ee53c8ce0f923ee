import { describe, expect, it } from 'vitest';
import { exactText, type Fraction, ratioOf, whole, ZERO } from '../../../core/src/ratio.ts';
import { type Candidate, findOptions, type Option, type Pair, type SearchProblem, tradeOff } from '../../../core/src/search/index.ts';
import { anything, row, stageOf, teethFrom, trainProblem } from './racks.ts';
import { diceOf, randomProblem } from './randomProblem.ts';
import { everyOption } from './slowTwin.ts';
import { TUNINGS } from './tunings.ts';

/** What an option takes: the times of its pairs and of its pumps. */
function timeOf({ stages, pumps }: SearchProblem, { pump, pairs }: Candidate): Fraction {
  return stages.reduce((sum, stage, s) => sum.add(stage.pairs[pairs[s] ?? -1]?.work ?? 0), pumps[pump]?.work ?? ZERO);
}

/** Smaller is better placed; without limits all are alike in the first. */
const placeOf = ({ inside, offRatio }: Option): readonly [number, Fraction] => [inside === false ? 1 : 0, offRatio.abs()];
const comparePlaces = (a: Option, b: Option): number => placeOf(a)[0] - placeOf(b)[0] || placeOf(a)[1].compare(placeOf(b)[1]);

/** By the definition: kept where no other is at least as good in both and better in one; of those alike in both the first of the ranking. */
function byDefinition(problem: SearchProblem, every: readonly Option[]): readonly Option[] {
  const times = new Map(every.map((option) => [option, timeOf(problem, option)]));
  const time = (option: Option): Fraction => times.get(option) ?? ZERO;
  const dominates = (a: Option, b: Option): boolean => {
    const quicker = time(a).compare(time(b));
    const nearer = comparePlaces(a, b);
    return quicker <= 0 && nearer <= 0 && (quicker < 0 || nearer < 0);
  };
  const alike = (a: Option, b: Option): boolean => time(a).equals(time(b)) && comparePlaces(a, b) === 0;
  const free = every.filter((option) => !every.some((other) => dominates(other, option)));
  return free
    .filter((option, index) => !free.slice(0, index).some((earlier) => alike(earlier, option)))
    .sort((a, b) => time(a).compare(time(b)));
}

describe('tradeOff against comparing every option with every other [slow twin]', () => {
  it.each(Array.from({ length: 4 }, (_, i) => 60_000 + i * 150))('agrees on 150 random problems from seed %i', (from) => {
    for (let seed = from; seed < from + 150; seed++) {
      const { problem, rules } = randomProblem(diceOf(seed));
      const expected = byDefinition(problem, everyOption(problem, rules)).map(row);
      for (const [name, tuning] of TUNINGS)
        expect(tradeOff(problem, rules, {}, tuning).map(row), `seed ${seed}, ${name}`).toEqual(expected);
    }
  });
});

describe('three stages of 12 wheels, all 3 million trains [nested loops over integers]', () => {
  const rack = teethFrom(13, 24);
  const fitted = [
    [14, 19],
    [22, 17],
    [13, 24],
  ] as const;
  const stages = fitted.map((wheels) => stageOf('B', rack, rack, wheels));

  /** Least |N q - D p| / (D p) for each number of minutes, as pairs of integers. */
  function bestByMinutes(p: number, q: number): Map<number, readonly [distance: number, D: number]> {
    const [first, second, third] = stages.map(({ pairs }) =>
      pairs.map(({ driver, driven, work }) => [driver, driven, Number(work.div(60).valueOf())] as const),
    );
    const best = new Map<number, readonly [number, number]>();
    for (const [a, b, s] of first ?? [])
      for (const [c, d, t] of second ?? [])
        for (const [e, f, u] of third ?? []) {
          const D = b * d * f;
          const distance = Math.abs(a * c * e * q - D * p);
          const known = best.get(s + t + u);
          if (known === undefined || distance * known[1] < known[0] * D) best.set(s + t + u, [distance, D]);
        }
    return best;
  }

  it.each([
    ['an ordinary ratio', 5381, 10000],
    ['exactly 1, made in very many ways', 1, 1],
    ['just beside 1', 100001, 100000],
  ])('%s: %i/%i', (_, p, q) => {
    const problem = trainProblem(ratioOf(p, q), stages);
    const expected: (readonly [number, string])[] = [];
    let nearest: readonly [number, number] = [Number.POSITIVE_INFINITY, 1];
    for (const [minutes, one] of [...bestByMinutes(p, q)].sort(([a], [b]) => a - b)) {
      if (one[0] * nearest[1] >= nearest[0] * one[1]) continue;
      nearest = one;
      expected.push([minutes, exactText(ratioOf(one[0], one[1] * p))]);
    }
    const found = tradeOff(problem, anything).map((option): readonly [number, string] => [
      timeOf(problem, option).div(60).valueOf(),
      exactText(option.offRatio.abs()),
    ]);
    expect(found).toEqual(expected);
    expect(expected.length).toBeGreaterThan(3);
    const [closest] = findOptions(problem, anything, 1).options;
    expect(exactText(closest?.offRatio.abs() ?? ZERO)).toBe(expected.at(-1)?.[1]);
  });
});

describe('what beats what [the definition]', () => {
  const pair = (driver: number, driven: number, minutes: number, changed: 0 | 1 | 2 = 2): Pair => ({
    driver,
    driven,
    changed,
    work: whole(60 * minutes),
    failed: 0,
  });
  const front = (pairs: readonly Pair[], limits: SearchProblem['limits'] = null): readonly number[] =>
    tradeOff({ ...trainProblem('1', [{ effect: 'B', pairs }]), limits }, anything).map(({ pairs: [index] }) => index ?? -1);

  it('as close for more time is no gain, even with fewer parts changed', () => {
    expect(front([pair(20, 20, 40, 1), pair(30, 30, 27, 2)])).toEqual([1]);
    expect(front([pair(18, 20, 10), pair(22, 20, 20)])).toEqual([0]);
  });
  it('of two that take as long and are as close the first of the ranking stands: fewer parts, then fewer teeth', () => {
    expect(front([pair(18, 20, 10, 2), pair(22, 20, 10, 1)])).toEqual([1]);
    expect(front([pair(22, 20, 10), pair(18, 20, 10)])).toEqual([1]);
  });
  it('inside the limits beats a closer one outside for the same time, and is worth more time', () => {
    const lopsided = { low: ratioOf(-1, 100), high: ratioOf(3, 20) };
    expect(front([pair(19, 20, 10), pair(23, 20, 10)], lopsided)).toEqual([1]);
    expect(front([pair(19, 20, 10), pair(23, 20, 20)], lopsided)).toEqual([0, 1]);
  });
  it('nothing that fails a check, nothing the rules refuse', () => {
    const blocked = { ...pair(20, 20, 5), failed: 1 };
    expect(front([blocked, pair(19, 20, 10)])).toEqual([1]);
    const problem = trainProblem('1', [{ effect: 'B', pairs: [pair(20, 20, 5), pair(19, 20, 10)] }]);
    expect(tradeOff(problem, { admit: ({ pairs }) => (pairs[0] === 0 ? null : 0) }).map(({ pairs }) => pairs)).toEqual([[1]]);
    expect(tradeOff(problem, { admit: () => null })).toEqual([]);
  });
});
