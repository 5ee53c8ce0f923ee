import { choicesOf } from '../choices.ts';
import type { Mounted } from '../layOut.ts';
import { insideLimits } from '../option.ts';
import type { Fraction } from '../ratio.ts';
import { findOptions } from '../search/index.ts';
import { type SidePump, withBought } from './parts.ts';
import type { PurchasePlan } from './purchasePlan.ts';
import { type BuyingTarget, byPlan } from './target.ts';
import type { Wheel } from './wheels.ts';

/** What a target gets once the wheels lie on the rack. */
export interface BoughtOption {
  readonly mounted: Mounted;
  readonly bPerA: Fraction;
  readonly offRatio: Fraction;
  readonly inside: boolean;
  readonly partsChanged: number;
}

/**
 * The first option of each target in the order of the search, with these wheels on the rack.
 *
 * @param pumps at hand beside the fitted ones; null where the plan says which are
 * @returns in the order of the targets; null where nothing can be built
 * @source the search itself
 * @example optionsWith([L5 on Bench 1 of the demo], [08B, 14 teeth, 25 mm])[0]?.bPerA  // 1/5
 */
export function optionsWith(
  targets: readonly BuyingTarget[],
  wheels: readonly Wheel[],
  pumps: readonly SidePump[] | null = null,
): readonly (BoughtOption | null)[] {
  const plans = byPlan(targets, (plan) => {
    const choices = choicesOf(withBought(plan, wheels, pumps));
    return { choices, rules: choices.rules };
  });
  return targets.map(({ wantedBPerA, limits }, index) => {
    const found = plans[index];
    if (found === undefined) return null;
    const { choices, rules } = found;
    const [option] = findOptions({ ...choices.problem, wanted: wantedBPerA, limits }, rules, 1).options;
    if (option === undefined) return null;
    const { A, B } = choices.pumpsOf(option);
    return {
      mounted: { pumps: { A: A.id, B: B.id }, teeth: choices.teethOf(option) },
      bPerA: option.ratio,
      offRatio: option.offRatio,
      inside: insideLimits(option.offRatio, limits) === true,
      partsChanged: option.changed,
    };
  });
}

/** A plan with what each target then gets. */
export interface LaidPlan extends PurchasePlan {
  readonly options: readonly (BoughtOption | null)[];
}

/**
 * A plan of purchases with the first option of each target.
 *
 * @source as `optionsWith`
 */
export const layPlan = (targets: readonly BuyingTarget[], plan: PurchasePlan): LaidPlan => ({
  ...plan,
  options: optionsWith(
    targets,
    plan.purchases.flatMap(({ wheel, quantity }) => Array<Wheel>(quantity).fill(wheel)),
    plan.pumps,
  ),
});
