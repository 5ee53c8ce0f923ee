import type { Need } from './need.ts';
import type { Parts, SidePump } from './parts.ts';
import type { Wheel } from './wheels.ts';

/** How many equal plans are kept. */
export const KEPT_PLANS = 50;

/** What one piece of a plan is good for. Targets are told by their index. */
export interface Gain {
  /** What one piece of it alone adds to the rack. */
  readonly alone: readonly number[];
  /** What the plan would lose without one piece of it. */
  readonly lost: readonly number[];
}

/** One wheel of a plan. */
export interface Purchase extends Gain {
  readonly wheel: Wheel;
  readonly quantity: number;
}

/** One pump of a plan. */
export interface PumpPurchase extends SidePump, Gain {}

export interface PurchasePlan {
  readonly purchases: readonly Purchase[];
  /** Null where no pump has to be bought, so that the machine's own settings say which are at hand. */
  readonly pumps: readonly PumpPurchase[] | null;
  /** Targets that then have an option inside their limits. */
  readonly served: readonly number[];
}

/**
 * Choices of parts as people read them.
 *
 * @param servedBy which targets a choice serves
 * @param buysPumps whether pumps have to be bought
 */
export function planOf(servedBy: (need: Need) => readonly number[], parts: Parts, need: Need, buysPumps: boolean): PurchasePlan {
  const served = servedBy(need);
  const fitted = servedBy([]);
  const gainOf = (index: number): Gain => {
    const left = servedBy(need.toSpliced(need.indexOf(index), 1));
    return {
      alone: servedBy([index]).filter((target) => !fitted.includes(target)),
      lost: served.filter((target) => !left.includes(target)),
    };
  };
  const different = [...new Set(need)];
  const purchases = different.flatMap((index): readonly Purchase[] => {
    const wheel = parts.wheels[index];
    return wheel === undefined ? [] : [{ wheel, quantity: need.filter((other) => other === index).length, ...gainOf(index) }];
  });
  const pumps = different.flatMap((index): readonly PumpPurchase[] => {
    const pump = parts.pumps[index - parts.wheels.length];
    return pump === undefined ? [] : [{ ...pump, ...gainOf(index) }];
  });
  return { purchases, pumps: buysPumps ? pumps : null, served };
}
