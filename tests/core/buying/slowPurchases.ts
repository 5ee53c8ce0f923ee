import type { BuyingTarget } from '../../../core/src/buying/index.ts';
import { choicesOf } from '../../../core/src/choices.ts';
import { known, NOT_GIVEN } from '../../../core/src/given.ts';
import type { Piece, Plan } from '../../../core/src/plan.ts';
import { Fraction } from '../../../core/src/ratio.ts';
import { everyCandidate, ratioMade } from '../search/slowTwin.ts';
import type { Kind } from './randomShop.ts';

/** Every ratio that can be built with these wheels on the rack and nothing to buy, by listing every option; rules are asked when one is wanted. */
export function madeWith(plan: Plan, wheels: readonly Kind[]) {
  const bought = wheels.map((kind, index): Piece => {
    const bore_m = kind.bore === null ? NOT_GIVEN : known(new Fraction(kind.bore).div(1000));
    return { id: `new ${index}`, kind: 'chain', size: kind.size, teeth: kind.teeth, bore_m, quantity: 1, part: '', place: '' };
  });
  const pieces = [...plan.pieces, ...bought];
  const { problem, rules } = choicesOf({ ...plan, pieces, choice: { ...plan.choice, wheels: 'rack', purchases: 0, teeth: null } });
  const { admit } = rules(0);
  return everyCandidate(problem)
    .filter(({ pump, pairs }) =>
      [problem.pumps[pump], ...problem.stages.map((stage, s) => stage.pairs[pairs[s] ?? -1])].every((choice) => choice?.failed === 0),
    )
    .map((candidate) => ({ ratio: ratioMade(problem, candidate), isBuildable: () => admit(candidate) !== null }));
}

/** Which targets have a buildable option inside. */
export function servedBy(targets: readonly BuyingTarget[], wheels: readonly Kind[]): readonly number[] {
  const [plan] = targets.map((target) => target.plan);
  if (plan === undefined) return [];
  const made = madeWith(plan, wheels);
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
