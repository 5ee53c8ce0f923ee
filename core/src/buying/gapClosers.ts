import type { Plan } from '../plan.ts';
import { type Fraction, most, ratioOf, ZERO } from '../ratio.ts';
import { type Gap, type Hooks, partOf, type ReachWindow } from '../search/index.ts';
import { compareMeasured, isWithin, type Left, type Measured, measureOf } from './leftInGap.ts';
import type { Need } from './need.ts';
import { newRatios } from './newRatios.ts';
import { shopOf } from './shop.ts';
import type { BuyingWish } from './target.ts';
import type { Wheel } from './wheels.ts';

/** Wheels to buy, and how well the targets of the gap are served with them on the rack. */
export interface GapCloser extends Left {
  /** One or two; one that is bought twice stands there twice. */
  readonly wheels: readonly Wheel[];
  /** No target of the gap is then further off than the tolerance. */
  readonly closes: boolean;
}

export interface GapClosers {
  /** As the rack is. */
  readonly before: Left;
  /** Each wheel that narrows the gap, what leaves least first, then in the order of the wheels; at most 20. */
  readonly singles: readonly GapCloser[];
  /** How many wheels narrow it. */
  readonly singleCount: number;
  /** Looked at where no single wheel closes it: each pair that leaves less than either of its wheels does; at most 20. */
  readonly pairs: readonly GapCloser[];
  readonly pairCount: number;
  /** How many of the wheels, or else of the pairs, close it. */
  readonly closingCount: number;
}

const KEPT_CLOSERS = 20;
/** Nothing that errs by more than this serves a target. */
const NEXT_TO_NOTHING = ratioOf(1, 1_000_000);

/**
 * Which wheel, or else which two, would close a gap in the reach of a machine with its rack, and what each leaves of it.
 *
 * @param gap    its neighbours, both buildable; null where there is none on that side
 * @param window B per A, that the gap lies in or reaches into
 * @param teeth  that may be bought; null leaves it to the limits of each slot
 * @throws RangeError where both neighbours are missing; Cancelled when asked to stop
 * @source every option that lacks one or two wheels, by the search itself; the worst target by `gapBetween`
 * @example gapClosers(Bench 1 of the demo, below 3/14, from 1/5 to 1 within 2 %, 13 to 40 teeth).singles[0]?.wheels  // 08B, 14 teeth
 */
export function gapClosers(
  plan: Plan,
  gap: Pick<Gap, 'below' | 'above'>,
  window: ReachWindow,
  teeth: BuyingWish['teeth'],
  hooks: Hooks = {},
): GapClosers {
  const one = narrowedBy(plan, gap, window, { teeth, mostPurchases: 1 }, partOf(hooks, 0, 0.4));
  const [best] = one.singles;
  const closed = best !== undefined && isWithin(best, window.tolerance);
  // where one wheel brings nothing, two that are wanted together still may
  const pairs = closed ? [] : narrowedBy(plan, gap, window, { teeth, mostPurchases: 2 }, partOf(hooks, 0.4, 0.6)).pairs();
  hooks.progress?.(1);
  const kept = (all: readonly Narrowed[]): readonly GapCloser[] => all.slice(0, KEPT_CLOSERS).map((one) => closerOf(one, window.tolerance));
  return {
    before: one.before.exact(),
    singles: kept(one.singles),
    singleCount: one.singles.length,
    pairs: kept(pairs),
    pairCount: pairs.length,
    closingCount: (closed ? one.singles : pairs).filter((each) => isWithin(each, window.tolerance)).length,
  };
}

interface Narrowed extends Measured {
  readonly wheels: readonly Wheel[];
}

const closerOf = (one: Narrowed, tolerance: Fraction): GapCloser => ({
  ...one.exact(),
  wheels: one.wheels,
  closes: isWithin(one, tolerance),
});

function narrowedBy(plan: Plan, gap: Pick<Gap, 'below' | 'above'>, window: ReachWindow, wish: BuyingWish, hooks: Hooks) {
  const { below, above } = gap;
  const shop = shopOf(plan, wish);
  const { wheels } = shop.parts;
  // a target at the end of the window is nearer to its one neighbour than to what lies further out than that again
  const between = {
    low: below ?? most(window.low.mul(NEXT_TO_NOTHING), window.low.mul(2).sub(above ?? ZERO)),
    high: above ?? window.high.mul(2).sub(below ?? ZERO),
  };
  const { allRatios, of, needs } = newRatios(shop, wish.mostPurchases, between, hooks);
  const measure = measureOf(gap, window, allRatios);
  const before = measure([]);
  const narrowed = (need: Need, places: readonly number[]): Narrowed => ({
    ...measure(places),
    wheels: need.flatMap((index) => wheels[index] ?? []),
  });
  const used = [...new Set(needs.flat())].sort((a, b) => a - b);
  const single = new Map(used.map((index) => [index, narrowed([index], of([index]))]));
  const less = (one: Measured, index: number): boolean => compareMeasured(one, single.get(index) ?? before) < 0;
  return {
    before,
    singles: [...single.values()].filter((one) => compareMeasured(one, before) < 0).sort(compareMeasured),
    pairs: (): readonly Narrowed[] =>
      used
        .flatMap((first, place) =>
          used.slice(place).flatMap((second): readonly Narrowed[] => {
            const need = [first, second];
            const places = new Set([...of([first]), ...of([second]), ...of(need)]);
            const both = narrowed(
              need,
              [...places].sort((a, b) => a - b),
            );
            return less(both, first) && less(both, second) ? [both] : [];
          }),
        )
        .sort(compareMeasured),
  };
}
