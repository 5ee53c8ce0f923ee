import { Cancelled, type Candidate, type Hooks, insideSearch, partOf } from '../search/index.ts';
import type { Need } from './need.ts';
import type { Shop } from './shop.ts';
import type { BuyingTarget } from './target.ts';

/** Of each target, everything that has to be bought for one of its options; none holds another of the same target. */
export type Requirements = readonly (readonly Need[])[];

/** With so many slots that may change, every option can be gone through, whatever it needs. */
const FEW_SLOTS = 4;

/** How many parts one option may need at most, and whether no option needs more. */
export function mostNeeded({ plan, parts }: Shop, mostPurchases: number): { readonly most: number; readonly all: boolean } {
  const slots = plan.stages
    .filter(({ open }) => open)
    .flatMap(({ driver, driven }) => [driver, driven].filter(({ mayChange }) => mayChange));
  const sides = new Set(parts.pumps.map(({ side }) => side)).size;
  const all = slots.length + sides;
  if (slots.length <= FEW_SLOTS || all <= mostPurchases) return { most: all, all: true };
  return { most: mostPurchases, all: false };
}

/**
 * Goes through the options inside the limits of each target, those that need least first.
 *
 * @param shops  of the targets, in their order
 * @param most   parts that an option may need
 * @param isOf   whether a part is of interest: an option that needs another is passed over
 * @throws Cancelled when asked to stop
 */
export function requirementsOf(
  targets: readonly BuyingTarget[],
  shops: readonly Shop[],
  { most, isOf }: { readonly most: number; readonly isOf: (part: number) => boolean },
  hooks: Hooks,
): Requirements {
  const searches = new Map(
    [...new Set(shops)].map(
      (shop) => [shop, insideSearch(shop.choices.problem, (choice) => shop.needs.lacking(choice).length, most)] as const,
    ),
  );
  return targets.map(({ wantedBPerA, limits }, index) => {
    const shop = shops[index];
    if (shop === undefined) throw new RangeError('requirementsOf: a target without a machine');
    const { choices, needs } = shop;
    const known = new Map<number | string, Need>();
    const key = keyed(shop.parts.count + 1, most);
    const holdsKnown = (need: Need): boolean => {
      for (let picked = 2 ** need.length - 1; picked >= 0; picked--) if (known.has(key(need, picked))) return true;
      return false;
    };
    const take = (candidate: Candidate): boolean => {
      for (const need of needs.of(candidate, () => choices.teethOf(candidate))) {
        if (need.length > most || !need.every(isOf) || holdsKnown(need) || !choices.runs(candidate)) continue;
        known.set(key(need, ALL), need);
        if (need.length === 0) return true;
      }
      return false;
    };
    if (hooks.cancelled?.()) throw new Cancelled();
    searches.get(shop)?.each(wantedBPerA, limits, take, partOf(hooks, index / targets.length, 1 / targets.length));
    // one that came late may lie in one that came before
    return [...known.values()].filter((need) => {
      known.delete(key(need, ALL));
      const isLeast = !holdsKnown(need);
      if (isLeast) known.set(key(need, ALL), need);
      return isLeast;
    });
  });
}

/** Tells needs apart: by one number of which the parts are the digits, while that stays exact. */
function keyed(base: number, most: number): (need: Need, picked: number) => number | string {
  if (base ** most < 2 ** 53)
    return (need, picked) => {
      let key = 0;
      for (let i = 0; i < need.length; i++) if ((picked >> i) & 1) key = key * base + (need[i] ?? 0) + 1;
      return key;
    };
  return (need, picked) => need.filter((_, i) => (picked >> i) & 1).join();
}

const ALL = -1;
