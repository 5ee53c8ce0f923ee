import type { Need } from './needs.ts';
import type { PlanTable } from './planTable.ts';
import type { Wheel } from './wheels.ts';

/** How many equal plans are kept. */
export const KEPT_PLANS = 50;

/** One wheel of a plan. Targets are told by their index. */
export interface Purchase {
  readonly wheel: Wheel;
  readonly quantity: number;
  /** What one piece of it alone adds to the rack. */
  readonly alone: readonly number[];
  /** What the plan would lose without one piece of it. */
  readonly lost: readonly number[];
}

export interface PurchasePlan {
  readonly purchases: readonly Purchase[];
  /** Targets that then have an option inside their limits. */
  readonly served: readonly number[];
}

/** Choices of wheels in words that people read, from a table whose levels were swept. */
export function planOf(table: PlanTable, wheels: readonly Wheel[], need: Need): PurchasePlan {
  const served = table.served(need);
  const fitted = table.served([]);
  const purchases = [...new Set(need)].flatMap((index): readonly Purchase[] => {
    const wheel = wheels[index];
    if (wheel === undefined) return [];
    const left = table.served(need.toSpliced(need.indexOf(index), 1));
    return [
      {
        wheel,
        quantity: need.filter((other) => other === index).length,
        alone: table.served([index]).filter((target) => !fitted.includes(target)),
        lost: served.filter((target) => !left.includes(target)),
      },
    ];
  });
  return { purchases, served };
}
