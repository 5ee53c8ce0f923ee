import type { Choices } from '../choices.ts';
import { type Plan, type Pump, SIDES, type Side, type SideName } from '../plan.ts';
import type { Need } from './need.ts';
import { type Wheel, wheelsToBuy, withWheels } from './wheels.ts';

/** A pump that a side may carry, and that is not fitted. */
export interface SidePump {
  readonly side: SideName;
  readonly pump: Pump;
}

/** All that may be bought, by index: the wheels first, then the pumps. */
export interface Parts {
  readonly wheels: readonly Wheel[];
  readonly pumps: readonly SidePump[];
  readonly count: number;
}

/**
 * @param plan  in which wheels may be bought
 * @param pumps whether the pumps that are not fitted have to be bought; else none are
 * @source the plan
 */
export function partsToBuy(plan: Plan, pumps: boolean): Parts {
  const wheels = wheelsToBuy(plan);
  const others = pumps
    ? SIDES.flatMap((side) =>
        plan.sides[side].pumps.filter((_, index) => index !== plan.sides[side].fitted).map((pump): SidePump => ({ side, pump })),
      )
    : [];
  return { wheels, pumps: others, count: wheels.length + others.length };
}

/** Of every set of pumps, those to buy. */
export function pumpNeeds({ problem, pumpsOf }: Choices, { wheels, pumps }: Parts): readonly Need[] {
  return problem.pumps.map((_, pump) => {
    const set = pumpsOf({ pump, pairs: [] });
    return pumps.flatMap((other, index) => (set[other.side].id === other.pump.id ? [wheels.length + index] : []));
  });
}

/** What a need is made of. */
export function bought({ wheels, pumps }: Parts, need: Need): { readonly wheels: readonly Wheel[]; readonly pumps: readonly SidePump[] } {
  return { wheels: need.flatMap((index) => wheels[index] ?? []), pumps: need.flatMap((index) => pumps[index - wheels.length] ?? []) };
}

/**
 * The same machine with these parts at hand, and nothing more to buy.
 *
 * @param pumps null where every pump that a side may carry is at hand as the plan says
 */
export function withBought(plan: Plan, wheels: readonly Wheel[], pumps: readonly SidePump[] | null): Plan {
  const laid = withWheels(plan, wheels);
  if (pumps === null) return laid;
  const side = (name: SideName): Side => {
    const { pumps: all, fitted: index, ...rest } = plan.sides[name];
    const fitted = all[index] ?? all[0];
    const before = all.slice(0, index).filter((one) => isBought(name, one));
    const after = all.slice(index + 1).filter((one) => isBought(name, one));
    const [first, ...others] = before;
    return { ...rest, pumps: first === undefined ? [fitted, ...after] : [first, ...others, fitted, ...after], fitted: before.length };
  };
  const isBought = (name: SideName, one: Pump): boolean => pumps.some(({ side: of, pump }) => of === name && pump.id === one.id);
  return { ...laid, sides: { A: side('A'), B: side('B') }, choice: { ...laid.choice, anyPump: true } };
}
