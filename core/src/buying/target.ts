import type { Plan } from '../plan.ts';
import type { Fraction } from '../ratio.ts';
import type { OffLimits } from '../search/index.ts';
import type { SidePump } from './parts.ts';
import type { Wheel } from './wheels.ts';

/** A ratio that is to be within reach: of the material of its plan, or any other run as that material. */
export interface BuyingTarget {
  readonly plan: Plan;
  /** By volume, as run. */
  readonly wantedBPerA: Fraction;
  /** Of the off-ratio, inclusive. */
  readonly limits: OffLimits;
}

/** What may be bought. */
export interface BuyingWish {
  /** Null leaves it to the limits of each slot. */
  readonly teeth: { readonly from: number; readonly to: number } | null;
  /** Parts to buy, a whole number from 0 to 8. */
  readonly mostPurchases: number;
  /** Whether every pump that is not fitted has to be bought, one purchase each; otherwise the plan says which are at hand. */
  readonly pumps?: boolean;
  /** Of one piece, a whole number of the smallest coin, 0 or more; null for a wheel whose price is not known. */
  readonly priceOf?: (wheel: Wheel) => number | null;
  /** The same of a pump; without it no pump has a price. */
  readonly pumpPriceOf?: (pump: SidePump) => number | null;
}

/**
 * The material of a plan as a target.
 *
 * @returns null where the material has no limits: nothing could then be called within reach
 * @source the plan
 */
export function targetOf(plan: Plan): BuyingTarget | null {
  const { wantedBPerA, limits } = plan.mix;
  return limits === null ? null : { plan, wantedBPerA, limits };
}

/** @throws RangeError on targets of several machines, on none, or on a number of purchases that no search takes on */
export function checkWish(targets: readonly BuyingTarget[], { mostPurchases }: BuyingWish): Plan {
  const plan = targets[0]?.plan;
  if (plan === undefined) throw new RangeError('buying: no target');
  const strange = targets.find((target) => target.plan.machine.id !== plan.machine.id || target.plan.rack?.id !== plan.rack?.id);
  if (strange !== undefined) throw new RangeError(`buying: ${strange.plan.machine.id} beside ${plan.machine.id}`);
  if (!Number.isInteger(mostPurchases) || mostPurchases < 0 || mostPurchases > 8)
    throw new RangeError(`buying: ${mostPurchases} purchases`);
  return plan;
}

/** The machine of a target when so many wheels may be bought. */
export const buyingPlan = (plan: Plan, { teeth, mostPurchases, pumps }: BuyingWish): Plan => ({
  ...plan,
  choice: {
    ...plan.choice,
    wheels: 'rack and purchases',
    purchases: mostPurchases,
    teeth,
    anyPump: plan.choice.anyPump || pumps === true,
  },
});

/** Targets by their plan, so that what a plan lets one do is worked out once for all of them. */
export function byPlan<T>(targets: readonly BuyingTarget[], make: (plan: Plan) => T): readonly T[] {
  const made = new Map<Plan, T>();
  return targets.map(({ plan }) => {
    const known = made.get(plan) ?? make(plan);
    made.set(plan, known);
    return known;
  });
}
