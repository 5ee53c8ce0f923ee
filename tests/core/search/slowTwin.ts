import { Fraction, ONE } from '../../../core/src/ratio.ts';
import type { Candidate, Option, Rules, SearchProblem } from '../../../core/src/search/index.ts';

/** Every way to choose, in no order. */
export function everyCandidate({ stages, pumps }: SearchProblem): readonly Candidate[] {
  const choices = stages.reduce<readonly (readonly number[])[]>(
    (lists, { pairs }) => lists.flatMap((list) => [...pairs.keys()].map((pair) => [...list, pair])),
    [[]],
  );
  return [...pumps.keys()].flatMap((pump) => choices.map((pairs) => ({ pump, pairs })));
}

/** Every option that fails no check outside `mask` and is admitted, by plain enumeration, ordered as stated. */
export function everyOption(problem: SearchProblem, rules: Rules, mask = 0): readonly Option[] {
  const candidates = everyCandidate(problem).filter((candidate) => passes(problem, candidate, mask));
  const options = candidates.flatMap((candidate) => optionOf(problem, candidate, rules));
  const places = new Map(options.map((option) => [option, placeOf(problem, option)]));
  return options.sort((a, b) => {
    const byClass = Number(b.inside ?? true) - Number(a.inside ?? true);
    const byOff = a.offRatio.abs().compare(b.offRatio.abs());
    return byClass || byOff || a.changed - b.changed || a.purchases - b.purchases || compareLists(places.get(a) ?? [], places.get(b) ?? []);
  });
}

function picked({ stages }: SearchProblem, pairs: readonly number[]) {
  return stages.flatMap((stage, s) => stage.pairs[pairs[s] ?? -1] ?? []);
}

const passes = (problem: SearchProblem, { pump, pairs }: Candidate, mask: number): boolean =>
  [...picked(problem, pairs), problem.pumps[pump]].every((choice) => choice && (choice.failed & ~mask) === 0);

function optionOf(problem: SearchProblem, candidate: Candidate, rules: Rules): Option[] {
  const purchases = rules.admit(candidate);
  if (purchases === null) return [];
  const ratio = ratioMade(problem, candidate);
  const offRatio = ratio.div(problem.wanted).sub(ONE);
  const { limits } = problem;
  const inside = limits && offRatio.compare(limits.low) >= 0 && offRatio.compare(limits.high) <= 0;
  const parts = [...picked(problem, candidate.pairs), problem.pumps[candidate.pump]];
  return [{ ...candidate, ratio, offRatio, inside, changed: parts.reduce((sum, part) => sum + (part?.changed ?? 0), 0), purchases }];
}

/** B per A that a candidate makes. */
export function ratioMade({ fixed, stages, pumps }: SearchProblem, { pump, pairs }: Candidate): Fraction {
  let ratio = fixed.mul(pumps[pump]?.ratio ?? 0);
  for (const [s, { effect, pairs: choices }] of stages.entries()) {
    const { driver, driven } = choices[pairs[s] ?? -1] ?? { driver: 0, driven: 1 };
    if (effect === 'B') ratio = ratio.mul(new Fraction(driver, driven));
    if (effect === 'A') ratio = ratio.mul(new Fraction(driven, driver));
  }
  return ratio;
}

const placeOf = (problem: SearchProblem, { pump, pairs }: Candidate): readonly number[] => [
  problem.pumps[pump]?.order ?? 0,
  ...picked(problem, pairs).flatMap(({ driver, driven }) => [driver, driven]),
];

const compareLists = (a: readonly number[], b: readonly number[]): number => a.reduce((sign, x, i) => sign || x - (b[i] ?? 0), 0);

/** All sets of up to three checks by whose relaxing something fits, none holding another. */
export function everyRelaxation(problem: SearchProblem, failures: (candidate: Candidate) => number, bits: number): readonly number[] {
  const inside = everyOption(problem, { admit: () => 0 }, -1).filter((option) => option.inside);
  const fits = (mask: number): boolean =>
    inside.some(({ pump, pairs }) => passes(problem, { pump, pairs }, mask) && (failures({ pump, pairs }) & ~mask) === 0);
  const ones = (mask: number): number => [...mask.toString(2)].filter((bit) => bit === '1').length;
  if (!fits(2 ** bits - 1)) return [];
  const working = [...Array(2 ** bits).keys()].filter((mask) => ones(mask) <= 3 && fits(mask));
  return working.filter((mask) => !working.some((other) => other !== mask && (other & mask) === other));
}
