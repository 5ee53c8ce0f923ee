import { Fraction, ONE, ratioOf, whole } from '../../../core/src/ratio.ts';
import type { Effect, OpenStage, Pair, PumpPair, Rules, SearchProblem } from '../../../core/src/search/index.ts';
import { anything, changes, stockRule } from './racks.ts';
import { everyCandidate, ratioMade } from './slowTwin.ts';

/** Throws of one seeded die: a linear congruential generator, multiplier and increment of Numerical Recipes [from memory]. */
export function diceOf(seed: number) {
  let state = (seed * 2654435761) >>> 0;
  const below = (n: number): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * n);
  };
  const between = (low: number, high: number): number => low + below(high - low + 1);
  const pick = <T>(list: readonly [T, ...T[]]): T => list[below(list.length)] ?? list[0];
  const chance = (percent: number): boolean => below(100) < percent;
  return { below, between, pick, chance };
}
export type Dice = ReturnType<typeof diceOf>;

/** Most wheels for a stage, by number of stages: the slow twin lists every option. */
const MOST_WHEELS = [0, 7, 6, 4, 2] as const;

export interface RandomProblem {
  readonly problem: SearchProblem;
  readonly rules: Rules;
}

/** How many checks there are, and how many percent of the pairs of a stage fail some of them. */
export interface Blocked {
  readonly bits: number;
  readonly percent: readonly [number, ...number[]];
}
const MOSTLY_FREE: Blocked = { bits: 2, percent: [0, 10, 40] };

/** Small problems full of ties: few sizes, equal pump ratios, round and awkward targets, limits that may touch an option exactly. */
export function randomProblem(dice: Dice, blocked: Blocked = MOSTLY_FREE): RandomProblem {
  const count = dice.below(5);
  const stages = Array.from({ length: count }, () => randomStage(dice, MOST_WHEELS[count] ?? 2, blocked));
  const blank: SearchProblem = {
    stages,
    pumps: randomPumps(dice, blocked),
    fixed: ratioOf(dice.between(1, 4), dice.between(1, 4)),
    wanted: ONE,
    limits: null,
  };
  const wanted = randomTarget(dice, blank);
  const problem = { ...blank, wanted, limits: randomLimits(dice, { ...blank, wanted }) };
  return { problem, rules: dice.chance(40) ? anything : stockRule(problem, randomStock(dice, stages), dice.below(4)) };
}

function randomStage(dice: Dice, mostWheels: number, blocked: Blocked): OpenStage {
  const sizes = (): number[] => [
    ...new Set(Array.from({ length: dice.between(2, mostWheels) }, () => dice.between(1, 8) * dice.pick([3, 3, 2]))),
  ];
  const drivers = sizes();
  const drivenWheels = dice.chance(50) ? drivers : sizes();
  const fitted = [dice.pick([drivers[0] ?? 1, 99]), dice.pick([drivenWheels[0] ?? 1, 99])] as const;
  const effect: Effect = dice.pick(['B', 'B', 'A', 'A', 'none']);
  const percent = dice.pick(blocked.percent);
  const pairs = drivers.flatMap((driver) =>
    drivenWheels.flatMap((driven): Pair[] =>
      dice.chance(10)
        ? []
        : [
            {
              driver,
              driven,
              changed: changes(fitted, [driver, driven]),
              work: randomWork(dice),
              failed: dice.chance(percent) ? dice.below(2 ** blocked.bits) : 0,
            },
          ],
    ),
  );
  return { effect, pairs };
}

/** Few times, so that many options take the same; thirds of a second, which no float holds, sixty of which are twenty seconds. */
const randomWork = (dice: Dice): Fraction => dice.pick([whole(0), whole(0), ratioOf(1, 3), ratioOf(2, 3), whole(1), ratioOf(4, 3)]);

/** Kinds of displacement ratios: plain, as printed with decimals, too long for 53 bits, and nearer to one another than floats can tell. */
const PUMP_RATIOS: readonly [(dice: Dice) => Fraction, ...((dice: Dice) => Fraction)[]] = [
  (dice) => ratioOf(dice.between(1, 4), dice.between(1, 4)),
  (dice) => new Fraction(dice.pick(['1.168', '2.92', '5.84', '1.752'])).div(dice.pick(['1.168', '2.92', '3.504'])),
  (dice) => ratioOf(dice.between(1, 9) * 1000003 * 1000033, dice.between(1, 9) * 999983 * 999979),
  (dice) => dice.pick(NEAR_ONE),
];

/** Neighbours within 1e-14 of one another or less; the last two also agree modulo 2^32 as `n * d'` and `d * n'`. */
const NEAR_ONE: readonly [Fraction, ...Fraction[]] = [
  ratioOf(10000001n, 10000000n),
  ratioOf(10000000n, 9999999n),
  ratioOf(10n ** 20n + 1n, 10n ** 20n),
  ratioOf(10n ** 25n + 1n + 2n ** 32n, 10n ** 25n + 1n),
  ONE,
];

function randomPumps(dice: Dice, { bits }: Blocked): PumpPair[] {
  const ratio = dice.pick(PUMP_RATIOS);
  const orders = dice.chance(50) ? [0, 1, 2, 3] : [3, 1, 0, 2];
  return Array.from({ length: dice.between(1, 4) }, (_, i) => ({
    ratio: ratio(dice),
    changed: dice.pick([0, 1, 2]),
    work: randomWork(dice),
    failed: dice.chance(15) ? dice.below(2 ** bits) : 0,
    order: orders[i] ?? i,
  }));
}

function randomTarget(dice: Dice, blank: SearchProblem): Fraction {
  const kind = dice.below(7);
  if (kind === 0) return ONE;
  if (kind === 1) return ratioOf(dice.between(1, 12), dice.between(1, 12));
  if (kind === 2) return new Fraction(`${dice.below(4)}.${dice.between(1, 10 ** 9)}${dice.between(1, 10 ** 9)}`);
  if (kind === 3) return ratioOf(dice.between(1, 9) * 1000003, dice.between(1, 9) * 999983);
  const [a, b] = [someRatio(dice, blank), someRatio(dice, blank)];
  // a ratio that can be made; the middle of two, which are then equally far off; one missed by a billionth
  return kind === 4 ? a : kind === 5 ? a.add(b).div(2) : a.mul(new Fraction('1.000000001'));
}

function randomLimits(dice: Dice, blank: SearchProblem): SearchProblem['limits'] {
  if (dice.chance(30)) return null;
  const bound = (): Fraction => (dice.chance(20) ? new Fraction(0) : ratioOf(dice.between(1, 60), dice.pick([100, 100, 1000])));
  const off = someRatio(dice, blank).div(blank.wanted).sub(ONE);
  const touching = dice.chance(40);
  const low = touching && off.compare(0) < 0 ? off : bound().neg();
  return { low, high: touching && off.compare(0) > 0 ? off : bound() };
}

/** The ratio of some option, blocked or not; 1 where there is none. */
function someRatio(dice: Dice, problem: SearchProblem): Fraction {
  const candidates = everyCandidate(problem);
  const chosen = candidates[dice.below(candidates.length)];
  return chosen ? ratioMade(problem, chosen) : ONE;
}

function randomStock(dice: Dice, stages: readonly OpenStage[]): number[] {
  const sizes = new Set(stages.flatMap(({ pairs }) => pairs.flatMap(({ driver, driven }) => [driver, driven])));
  return [...sizes].flatMap((teeth) => Array.from({ length: dice.pick([0, 1, 1, 2, 2]) }, () => teeth));
}
