import { type CountedWheel, counted, nameOfWheel, planWindowLevels, type SidePump, type Wheel, withBought } from './buying/index.ts';
import type { Plan } from './plan.ts';
import { type Fraction, ONE } from './ratio.ts';
import type { Reach, ReachWish } from './reach/figures.ts';
import { reachOf } from './reach/reach.ts';
import { type Hooks, partOf } from './search/index.ts';

/** What is left of a window with some wheels on the rack. */
export interface WindowLeft {
  /** A per B; null where nothing can be built. */
  readonly worstTarget: Fraction | null;
  /** How far off it is, without its sign. */
  readonly offRatio: Fraction | null;
}

/** The least that a number of wheels leaves. */
export interface WindowStep extends WindowLeft {
  readonly purchases: number;
  /** Fewer leave no more. */
  readonly noGain: boolean;
  /** The first plan that leaves so little; null where there is no gain. */
  readonly first: {
    readonly purchases: readonly CountedWheel[];
    readonly pumps: readonly SidePump[] | null;
  } | null;
}

/** One plan of purchases, with what it leaves of the window, and what each of its wheels is good for. */
export interface WindowPlan extends WindowLeft {
  readonly purchases: readonly WindowPurchase[];
  /** Null where none has to be bought. */
  readonly pumps: readonly WindowPump[] | null;
}

export interface WindowGain {
  readonly quantity: number;
  /** With one of it alone. */
  readonly alone: WindowLeft;
  /** With all of the plan but one of it. */
  readonly without: WindowLeft;
}

export interface WindowPurchase extends WindowGain {
  readonly wheel: Wheel;
}

export interface WindowPump extends WindowGain, SidePump {}

export interface WindowPlans {
  /** Null where as many wheels as were looked at do not do. */
  readonly fewestPurchases: number | null;
  readonly mostPurchases: number;
  readonly buysPumps: boolean;
  /** From the rack as it is up. */
  readonly steps: readonly WindowStep[];
  /** Wanted ratios, A per B, that no fewer wheels serve together. */
  readonly proofRatios: readonly Fraction[];
  /** The first plans of the fewest wheels; of those that leave least where none does. */
  readonly plans: readonly WindowPlan[];
  readonly planCount: number;
  /** There may be more than were counted. */
  readonly more: boolean;
}

/** Of the work, looking for the plans. */
const SEARCHING = 0.8;

/**
 * The least that each number of wheels leaves of a window, the fewest that bring all of it within its tolerance, and the first such
 * plans with what they leave.
 *
 * @param wish  ratios A per B
 * @param keep  so many plans are told
 * @throws as `planWindowLevels` and `reachOf`
 * @source `planWindowLevels`; what is left is the reach with the wheels on the rack
 * @example windowPlans(Bench 1 of the demo, 1 to 9:2 within 1.5 %, { teeth: 13 to 40, mostPurchases: 3 }, 4).fewestPurchases  // 1
 */
export function windowPlans(
  plan: Plan,
  wish: Omit<ReachWish, 'bins'>,
  buying: Parameters<typeof planWindowLevels>[2],
  keep: number,
  hooks: Hooks = {},
): WindowPlans {
  const inBPerA = { low: ONE.div(wish.high), high: ONE.div(wish.low), tolerance: wish.tolerance };
  const { levels, within } = planWindowLevels(plan, inBPerA, buying, partOf(hooks, 0, SEARCHING));
  const buysPumps = buying.pumps === true;
  const left = leftOf(plan, wish, buysPumps);
  // where none brings all of it within the tolerance, those that leave least
  const told = within.fewestPurchases === null ? levels.findLast(({ noGain }) => !noGain) : within;
  const shown = (told?.plans ?? []).slice(0, keep);
  const plans = shown.map((wheels, index): WindowPlan => {
    hooks.progress?.(SEARCHING + ((1 - SEARCHING) * index) / shown.length);
    const pumps = told?.planPumps[index] ?? [];
    const purchases = counted(wheels).map(
      (one): WindowPurchase => ({
        ...one,
        alone: left([one.wheel], []),
        without: left(wheels.toSpliced(wheels.indexOf(one.wheel), 1), pumps),
      }),
    );
    const ofPumps = pumps.map(
      (pump, place): WindowPump => ({
        ...pump,
        quantity: 1,
        alone: left([], [pump]),
        without: left(wheels, pumps.toSpliced(place, 1)),
      }),
    );
    return { ...left(wheels, pumps), purchases, pumps: buysPumps ? ofPumps : null };
  });
  return {
    fewestPurchases: within.fewestPurchases,
    mostPurchases: within.mostPurchases,
    buysPumps,
    steps: levels.map(({ purchases, offRatio, worstTarget, noGain, plans: [wheels], planPumps: [pumps] }) => ({
      purchases,
      offRatio,
      worstTarget: ONE.div(worstTarget),
      noGain,
      first: wheels === undefined ? null : { purchases: counted(wheels), pumps: buysPumps ? (pumps ?? []) : null },
    })),
    proofRatios: within.proofRatios.map((ratio) => ONE.div(ratio)),
    plans,
    planCount: told?.plans.length ?? 0,
    more: told?.more ?? false,
  };
}

/** The reach with parts at hand; each choice of them is worked out once. */
function leftOf(plan: Plan, wish: Omit<ReachWish, 'bins'>, buysPumps: boolean) {
  const known = new Map<string, WindowLeft>();
  return (wheels: readonly Wheel[], pumps: readonly SidePump[]): WindowLeft => {
    const name = [...wheels.map(nameOfWheel), ...pumps.map(({ side, pump }) => `${side} ${pump.id}`)].sort().join();
    const one = known.get(name) ?? worstOf(reachOf(withBought(plan, wheels, buysPumps ? pumps : null), { ...wish, bins: 1 }));
    known.set(name, one);
    return one;
  };
}

const worstOf = ({ worst }: Reach): WindowLeft => ({ worstTarget: worst?.worstTarget ?? null, offRatio: worst?.offRatio ?? null });
