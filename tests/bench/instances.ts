import { Fraction, ONE, ratioOf, ZERO } from '../../core/src/ratio.ts';
import type { PumpPair, Rules, SearchProblem } from '../../core/src/search/index.ts';
import { changes, stageOf, teethFrom, workFor } from '../core/search/racks.ts';
import { diceOf } from '../core/search/randomProblem.ts';

// What is searched: invented racks, pump sizes and ratios. No machine or shop stands behind them.

/** Options kept of every search. */
export const KEEP = 100;

/** A drive of open stages, each with every pair of a rack of consecutive tooth counts from 9, and pumps to choose on both sides. */
export interface Instance {
  /** tooth counts to the power of slots, times pump ratios */
  readonly name: string;
  readonly sizes: number;
  readonly stages: number;
  /** pump sizes on each side */
  readonly pumps: number;
}

export function instance(sizes: number, stages: number, pumps = 1): Instance {
  const name = `${sizes}^${2 * stages}${pumps > 1 ? `x${pumps * pumps}` : ''}`;
  return { name, sizes, stages, pumps };
}

/** Displacements of three or four digits, all products of 2, 3, 5 and 7, so that a round ratio is made in very many ways: the hard case. */
const SIZES_A = ['2.16', '2.88', '1.05', '1.26', '1.68', '3.75', '4.86', '6.48', '8.64', '11.52', '15.36', '20.48'];
const SIZES_B = ['1.92', '2.43', '1.12', '1.44', '3.15', '4.05', '5.12', '6.75', '9.45', '12.25', '16.2', '21.6'];

/** What is fitted in each stage: driver and driven. */
export const FITTED = [
  [12, 20],
  [25, 17],
  [9, 28],
  [18, 14],
] as const;

/** Ratios B per A that nothing makes exactly. */
const ORDINARY = [
  '2.8193',
  '0.4137',
  '1.3719',
  '0.7283',
  '3.6217',
  '0.2941',
  '1.0937',
  '5.1283',
  '0.6179',
  '1.8467',
  '0.9173',
  '2.2739',
  '0.3391',
  '4.4519',
  '1.5877',
];
/** The first `count` ordinary ratios. */
export const ordinary = (count: number): readonly Fraction[] => ORDINARY.slice(0, count).map((text) => new Fraction(text));

/** Ratios made exactly in very many ways. */
export const ROUND: readonly (readonly [string, Fraction])[] = [
  ['1:1', ONE],
  ['12:5', ratioOf(12, 5)],
  ['81/40', ratioOf(81, 40)],
];

/** Ratios just beside such a one, which nothing makes. */
export const NEAR_MISSES: readonly (readonly [string, Fraction])[] = [
  ['1 + 1e-9', ONE.add(ratioOf(1, 10 ** 9))],
  ['12/5 + 1e-8', ratioOf(12, 5).add(ratioOf(1, 10 ** 8))],
];

const rackOf = ({ sizes }: Instance): readonly number[] => teethFrom(9, 8 + sizes);

/** The problem from scratch, so that no two searches share anything. */
export function problemOf(one: Instance, wanted: Fraction): SearchProblem {
  const rack = rackOf(one);
  const stages = FITTED.slice(0, one.stages).map((fitted) => stageOf('B', rack, rack, fitted));
  return { stages, pumps: pumpsOf(one.pumps), fixed: ONE, wanted, limits: null };
}

function pumpsOf(count: number): readonly PumpPair[] {
  if (count === 1) return [{ ratio: ONE, changed: 0, work: ZERO, failed: 0, order: 0 }];
  return SIZES_A.slice(0, count).flatMap((a, i) =>
    SIZES_B.slice(0, count).map((b, j): PumpPair => {
      const changed = changes([0, 0], [i, j]);
      return { ratio: new Fraction(b).div(new Fraction(a)), changed, work: workFor(changed, 1), failed: 0, order: i * count + j };
    }),
  );
}

/** The same problem with most pairs failing some checks: `failing` throws the bits of one pair. */
export function withChecks(problem: SearchProblem, seed: number, failing: (below: (n: number) => number) => number): SearchProblem {
  const { below } = diceOf(seed);
  const stages = problem.stages.map((stage) => ({ ...stage, pairs: stage.pairs.map((pair) => ({ ...pair, failed: failing(below) })) }));
  return { ...problem, stages };
}

/** One piece of every tooth count in stock and nothing to buy. */
export function oneOfEach({ stages }: SearchProblem): Rules {
  const used = new Uint32Array(1 + Math.max(...stages.flatMap(({ pairs }) => pairs.flatMap(({ driver, driven }) => [driver, driven]))));
  let run = 0;
  const isFree = (teeth: number): boolean => {
    const free = used[teeth] !== run;
    used[teeth] = run;
    return free;
  };
  return {
    admit: ({ pairs }) => {
      run += 1;
      for (let s = 0; s < stages.length; s++) {
        const pair = stages[s]?.pairs[pairs[s] ?? -1];
        if (pair !== undefined && !(isFree(pair.driver) && isFree(pair.driven))) return null;
      }
      return 0;
    },
  };
}
