import { Fraction, float, whole } from '../../core/src/ratio.ts';
import type { Candidate, OpenStage, Option, Pair, PumpPair, Rules, SearchProblem } from '../../core/src/search/index.ts';
import { nearest } from './nearest.ts';

// The search as nested loops over every combination, in floats, with nothing allocated on the way: what the product is measured against.

/** Up to four ratios of wheels, one of pumps and their products, each off by 2^-53 of itself at most: 12 such, four times over. */
const SLACK = 48 * 2 ** -53;

/** The combinations of one list of choices: which of them pass, and what each multiplies y = ratio made / ratio wanted by. */
interface Level {
  readonly places: readonly number[];
  readonly ratios: Float64Array;
}

/** How many combinations the loops visit: what fails a check is left out before they start. */
export function rawCount({ stages, pumps }: SearchProblem): number {
  return [...stages.map(({ pairs }) => pairs), pumps].reduce((product, list) => product * passing(list).length, 1);
}

/**
 * The first `keep` options of a problem without limits, in the order of the ranking.
 *
 * Floats choose whatever may be among them, ties and near ties included; whole numbers put those in order.
 */
export function nestedLoops(problem: SearchProblem, rules: Rules, keep: number): readonly Option[] {
  if (problem.limits !== null) throw new RangeError('nestedLoops: a problem with limits');
  const levels = [pumpLevel(problem), ...problem.stages.map(stageLevel)];
  const lengths = levels.map(({ places }) => places.length);
  const last = levels.at(-1)?.ratios ?? new Float64Array();
  const held = nearest(keep, SLACK);
  let bound = Infinity;

  const innermost = (product: number, from: number): void => {
    for (let i = nextWithin(last, product, bound, 0); i < last.length; i = nextWithin(last, product, bound, i + 1)) {
      if (rules.admit(candidateAt(levels, from + i)) !== null) bound = held.take(product * (last[i] ?? 0) - 1, from + i);
    }
  };
  const loop = (depth: number, product: number, number: number): void => {
    const { ratios } = levels[depth] ?? { ratios: last };
    const length = lengths[depth] ?? 1;
    if (depth === levels.length - 1) innermost(product, number * length);
    else for (let i = 0; i < length; i++) loop(depth + 1, product * (ratios[i] ?? 0), number * length + i);
  };
  loop(0, float(problem.fixed.div(problem.wanted)), 0);
  return inOrder(
    problem,
    rules,
    held.numbers().map((number) => candidateAt(levels, number)),
  ).slice(0, keep);
}

/** The loop that nearly all the time is spent in: a function of its own, for the compiler then holds all of it in registers. */
function nextWithin(ratios: Float64Array, product: number, bound: number, from: number): number {
  let i = from;
  while (i < ratios.length && !(Math.abs(product * (ratios[i] ?? 0) - 1) <= bound)) i += 1;
  return i;
}

const passing = (choices: readonly (Pair | PumpPair)[]): readonly number[] =>
  choices.flatMap(({ failed }, place) => (failed === 0 ? [place] : []));

function pumpLevel({ pumps }: SearchProblem): Level {
  const places = passing(pumps);
  return { places, ratios: Float64Array.from(places, (place) => float(pumps[place]?.ratio ?? new Fraction(0))) };
}

function stageLevel({ effect, pairs }: OpenStage): Level {
  const places = passing(pairs);
  const ratioAt = (place: number): number => {
    const { driver, driven } = pairs[place] ?? { driver: 0, driven: 1 };
    return effect === 'B' ? driver / driven : effect === 'A' ? driven / driver : 1;
  };
  return { places, ratios: Float64Array.from(places, ratioAt) };
}

/** Combinations are numbered as the loops pass them. */
function candidateAt(levels: readonly Level[], number: number): Candidate {
  const chosen: number[] = [];
  let rest = number;
  for (const { places } of [...levels].reverse()) {
    chosen.unshift(places[rest % places.length] ?? 0);
    rest = Math.floor(rest / places.length);
  }
  const [pump = 0, ...pairs] = chosen;
  return { pump, pairs };
}

/** |off-ratio| is `distance / made.d` times what is common to all. */
interface Ranked extends Candidate {
  readonly numerator: bigint;
  readonly denominator: bigint;
  readonly distance: bigint;
  readonly changed: number;
  readonly purchases: number;
  /** pumps in the order of the file, then teeth slot by slot */
  readonly places: readonly number[];
}

function inOrder(problem: SearchProblem, rules: Rules, candidates: readonly Candidate[]): readonly Option[] {
  const { wanted } = problem;
  return candidates
    .map((candidate) => ranked(problem, rules, candidate))
    .sort(compareRanked)
    .map(({ pump, pairs, numerator, denominator, changed, purchases }) => {
      const ratio = whole(numerator).div(whole(denominator));
      return { pump, pairs, ratio, offRatio: ratio.div(wanted).sub(1), inside: null, changed, purchases };
    });
}

function ranked({ stages, pumps, fixed, wanted }: SearchProblem, rules: Rules, candidate: Candidate): Ranked {
  const pump = pumps[candidate.pump];
  let numerator = fixed.n * (pump?.ratio.n ?? 0n);
  let denominator = fixed.d * (pump?.ratio.d ?? 1n);
  let changed: number = pump?.changed ?? 0;
  const places = [pump?.order ?? 0];
  for (const [s, { effect, pairs }] of stages.entries()) {
    const pair = pairs[candidate.pairs[s] ?? -1];
    if (pair === undefined) continue;
    if (effect !== 'none') {
      numerator *= BigInt(effect === 'B' ? pair.driver : pair.driven);
      denominator *= BigInt(effect === 'B' ? pair.driven : pair.driver);
    }
    changed += pair.changed;
    places.push(pair.driver, pair.driven);
  }
  const signed = numerator * wanted.d - denominator * wanted.n;
  const distance = signed < 0n ? -signed : signed;
  return { ...candidate, numerator, denominator, distance, changed, purchases: rules.admit(candidate) ?? 0, places };
}

function compareRanked(a: Ranked, b: Ranked): number {
  const [left, right] = [a.distance * b.denominator, b.distance * a.denominator];
  if (left !== right) return left < right ? -1 : 1;
  const byCost = a.changed - b.changed || a.purchases - b.purchases;
  return byCost || a.places.reduce((sign, place, i) => sign || place - (b.places[i] ?? 0), 0);
}
