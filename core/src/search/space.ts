import { type Fraction, greatestCommon, ONE, ratioOf } from '../ratio.ts';
import { mayBeExact } from './mayBeExact.ts';
import type { Pair, PumpPair, SearchProblem } from './problem.ts';
import { pumpRanks, stageRanks } from './ranks.ts';
import { logarithm, pumpList, type RatioList, type StageRatios, stageList } from './ratioLists.ts';
import type { Tuning } from './tuning.ts';
import { openWindow, type Window } from './window.ts';

/**
 * A problem laid out for the search: every option is one choice from each factor, and
 * y = ratio made / ratio wanted = 1 + off-ratio = constant * product of the factors' ratios.
 */
export interface Space {
  readonly problem: SearchProblem;
  /** the stages in order, the pumps last; none is empty */
  readonly factors: readonly RatioList[];
  readonly constant: Fraction;
  readonly logConstant: number;
  /** how far a computed ln y may be from the true one, see `layOut` */
  readonly slack: number;
  /** no product of the factors has a larger numerator or denominator; not exact, but not too small by more than rounding */
  readonly mostNumerator: number;
  readonly mostDenominator: number;
  /** whether residues modulo 2^32 decide on equality, see `makes` */
  readonly residuesDecide: boolean;
  /** whether y = 1 is possible at all; asked once it matters */
  readonly mayBeExact: () => boolean;
  /** the y inside the limits */
  readonly inside: Window;
  /** parts changed by every option, where the space is a part of one level; null: by any number */
  readonly changed: number | null;
  readonly tuning: Tuning;
}

/** Which choices of a factor take part. */
export type Chosen = (choice: Pair | PumpPair) => boolean;

const buildable: Chosen = ({ failed }) => failed === 0;

/** The space of all buildable choices, null where a factor has none. */
export function buildableSpace(problem: SearchProblem, tuning: Tuning): Space | null {
  return layOut(
    problem,
    factorsOf(problem).map((list) => list(buildable)),
    tuning,
  );
}

/** For each factor (the stages in order, the pumps last): its ratios under the chosen choices. */
export function factorsOf(problem: SearchProblem): readonly ((chosen: Chosen) => RatioList)[] {
  const { stages, pumps } = problem;
  const unit = unitOf(problem);
  const ofPumps = pumpRanks(pumps);
  const known: StageRatios[] = [];
  return [
    ...stages.map((stage) => {
      const ranks = stageRanks(stage);
      return (chosen: Chosen) => stageList(stage, ranks, chosen, known);
    }),
    (chosen: Chosen) => pumpList(pumps, unit, ofPumps, chosen),
  ];
}

/** What all pump ratios have in common, as a factor: left in the lists it would only make the integers long. */
function unitOf({ pumps }: SearchProblem): Fraction {
  if (pumps.length === 0) throw new RangeError('search: no pumps');
  let [n, d] = [0n, 0n];
  for (const { ratio } of pumps) {
    if (ratio.s <= 0n || ratio.n === 0n) throw new RangeError(`pump ratio ${ratio.toFraction()}: not above 0`);
    n = greatestCommon(ratio.n, n);
    d = greatestCommon(ratio.d, d);
  }
  return ratioOf(n, d);
}

export function layOut(problem: SearchProblem, factors: readonly RatioList[], tuning: Tuning): Space | null {
  const { limits } = problem;
  if (limits && (limits.low.compare(-1) <= 0 || limits.low.compare(0) > 0 || limits.high.compare(0) < 0))
    throw new RangeError(`search: limits ${limits.low.toFraction()} to ${limits.high.toFraction()}`);
  // a machine without choices is still asked for a ratio above 0
  if (problem.wanted.compare(0) <= 0 || problem.fixed.compare(0) <= 0)
    throw new RangeError(`search: ratio ${problem.wanted.toFraction()} or ${problem.fixed.toFraction()} not above 0`);
  const aim = aimOf(problem, problem.fixed.mul(unitOf(problem)).div(problem.wanted), factors);
  if (factors.some((list) => list.log.length === 0)) return null;
  const mostNumerator = factors.reduce((product, list) => product * list.mostNumerator, 1);
  const mostDenominator = factors.reduce((product, list) => product * list.mostDenominator, 1);
  return {
    ...aim,
    factors,
    mostNumerator,
    mostDenominator,
    residuesDecide: mostNumerator * mostDenominator * 5 * aim.slack < 2 ** 31,
    inside: limits ? openWindow(ONE.add(limits.low), ONE.add(limits.high)) : openWindow(null, null),
    changed: null,
    tuning,
  };
}

/** The same space for another wanted ratio, > 0: the factors' ratios, and all that is made of them, stay. */
export function aimedAt(space: Space, wanted: Fraction): Space {
  if (wanted.compare(0) <= 0) throw new RangeError(`search: ratio ${wanted.toFraction()} not above 0`);
  const aim = aimOf({ ...space.problem, wanted }, space.constant.mul(space.problem.wanted).div(wanted), space.factors);
  return { ...space, ...aim, residuesDecide: space.mostNumerator * space.mostDenominator * 5 * aim.slack < 2 ** 31 };
}

type Aim = Pick<Space, 'problem' | 'constant' | 'logConstant' | 'slack' | 'mayBeExact'>;

function aimOf(problem: SearchProblem, constant: Fraction, factors: readonly RatioList[]): Aim {
  const logConstant = logarithm(constant);
  const span = factors.reduce((sum, { log }) => sum + Math.max(Math.abs(log[0] ?? 0), Math.abs(log.at(-1) ?? 0)), Math.abs(logConstant));
  if (!Number.isFinite(span)) throw new RangeError('search: a ratio lies outside the range of floats');
  // Each logarithm is within 3.4e-16 (two roundings and a division) + 2.3e-16 of itself (Math.log, one unit in the last place); up to six
  // of them and six additions give 2.1e-15 + 9e-16 * span, a window's bound half of that again. 2^-46 = 1.4e-14 covers this four times.
  const slack = 2 ** -46 * (1 + span);
  let known: boolean | null = null;
  const possible = (): boolean => {
    known ??= mayBeExact(constant, factors);
    return known;
  };
  return { problem, constant, logConstant, slack, mayBeExact: possible };
}

/** y of one ratio from each factor, exactly. */
export function exactY({ factors, constant }: Space, groups: ArrayLike<number>): Fraction {
  let numerator = constant.n;
  let denominator = constant.d;
  for (const [f, list] of factors.entries()) {
    const [n, d] = list.exact(groups[f] ?? 0);
    numerator *= n;
    denominator *= d;
  }
  return ratioOf(numerator, denominator);
}
