import type { BuyingTarget, RatioWindow } from '../../../core/src/buying/index.ts';
import { choicesOf } from '../../../core/src/choices.ts';
import { known, NOT_GIVEN } from '../../../core/src/given.ts';
import { type Piece, type Plan, SIDES } from '../../../core/src/plan.ts';
import { Fraction } from '../../../core/src/ratio.ts';
import type { Candidate } from '../../../core/src/search/index.ts';
import { everyCandidate, ratioMade } from '../search/slowTwin.ts';
import type { Kind } from './randomShop.ts';

/** Every ratio that can be built with these parts at hand and nothing to buy, by listing every option; rules are asked when one is wanted. */
export function madeWith(plan: Plan, parts: readonly Kind[], buysPumps: boolean) {
  const pieces = [
    ...plan.pieces,
    ...parts.flatMap((kind, index): readonly Piece[] => {
      if ('pump' in kind) return [];
      const bore_m = kind.bore === null ? NOT_GIVEN : known(new Fraction(kind.bore).div(1000));
      return [{ id: `new ${index}`, kind: 'chain', size: kind.size, teeth: kind.teeth, bore_m, quantity: 1, part: '', place: '' }];
    }),
  ];
  const anyPump = plan.choice.anyPump || buysPumps;
  const { problem, rules, pumpsOf } = choicesOf({
    ...plan,
    pieces,
    choice: { ...plan.choice, wheels: 'rack', purchases: 0, teeth: null, anyPump },
  });
  const { admit } = rules;
  const hasPumps = (candidate: Candidate): boolean =>
    !buysPumps ||
    SIDES.every((side) => {
      const { pumps, fitted } = plan.sides[side];
      const { id } = pumpsOf(candidate)[side];
      return id === pumps[fitted]?.id || parts.some((kind) => 'pump' in kind && kind.side === side && kind.pump === id);
    });
  return everyCandidate(problem)
    .filter(({ pump, pairs }) =>
      [problem.pumps[pump], ...problem.stages.map((stage, s) => stage.pairs[pairs[s] ?? -1])].every((choice) => choice?.failed === 0),
    )
    .filter(hasPumps)
    .map((candidate) => ({ ratio: ratioMade(problem, candidate), isBuildable: () => admit(candidate) !== null }));
}

/** Which targets have a buildable option inside. */
export function servedBy(targets: readonly BuyingTarget[], parts: readonly Kind[], buysPumps: boolean): readonly number[] {
  const [plan] = targets.map((target) => target.plan);
  if (plan === undefined) return [];
  const made = madeWith(plan, parts, buysPumps);
  return targets.flatMap(({ wantedBPerA, limits }, target) => {
    const serves = made.some(({ ratio, isBuildable }) => {
      const off = ratio.div(wantedBPerA).sub(1);
      return off.compare(limits.low) >= 0 && off.compare(limits.high) <= 0 && isBuildable();
    });
    return serves ? [target] : [];
  });
}

/** Every choice of so many wheels, one kind more than once too. */
export const choices = (kinds: readonly Kind[], size: number): readonly (readonly Kind[])[] =>
  size === 0 ? [[]] : kinds.flatMap((kind, index) => choices(kinds.slice(index), size - 1).map((rest) => [kind, ...rest]));

/** Every ratio that can be built, each once, ascending. */
export function buildable(plan: Plan, parts: readonly Kind[], buysPumps: boolean): readonly Fraction[] {
  const built = new Map<string, Fraction>();
  for (const { ratio, isBuildable } of madeWith(plan, parts, buysPumps)) {
    const key = ratio.toFraction();
    if (!built.has(key) && isBuildable()) built.set(key, ratio);
  }
  return [...built.values()].sort((a, b) => a.compare(b));
}

/** The off-ratio is worst at an end of the window or half way between two ratios, so these few decide; null where nothing can be built. */
export function worstLeft(ratios: readonly Fraction[], { low, high }: Pick<RatioWindow, 'low' | 'high'>): Fraction | null {
  const middles = ratios.slice(1).map((ratio, index) => ratio.add(ratios[index] ?? ratio).div(2));
  const wanted = [low, ...middles.filter((one) => one.compare(low) > 0 && one.compare(high) < 0), high];
  const offs = wanted.map((one) => ratios.map((ratio) => ratio.div(one).sub(1).abs()).reduce(smaller, new Fraction(10 ** 6)));
  return ratios.length === 0 ? null : offs.reduce((a, b) => (a.compare(b) < 0 ? b : a));
}

const smaller = (a: Fraction, b: Fraction): Fraction => (a.compare(b) > 0 ? b : a);
