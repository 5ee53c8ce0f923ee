import { type BuyingTarget, bestLevel, layPlan, type Purchase, type PurchasePlan, planBuying, targetOf } from '../buying/index.ts';
import { boreText, countOf, wheelsOf, wheelsText } from '../buyWords.ts';
import { en, plural } from '../en.ts';
import { offRatioText, type Say } from '../format.ts';
import type { Plan } from '../plan.ts';
import type { Hooks } from '../search/index.ts';
import { clip } from '../visible.ts';

/** More wheels than this are a new rack, not an addition to one. */
const MOST_ADDED = 2;
/** So many equal choices are told; of more, how many there are. */
const TOLD = 4;
/** So many materials are named in one sentence. */
const NAMED = 8;
const NAME_LENGTH = 28;

/**
 * The fewest wheels to add so that as many materials as can be are inside their limits, in sentences.
 *
 * @param plans  of the materials, on one machine
 * @returns none where no material has limits, or where the search takes any wheel as it is
 * @source the exact buying plan
 * @example quoteAdd([E12, U40 and L5 on Bench 1 of the demo], say)  // 'With 1 wheel added, the fewest, all 3 materials …: 08B 14 T, bore 25.00 mm; or 08B 37 T, bore 25.00 mm.', …
 */
export function quoteAdd(plans: readonly Plan[], say: Say, hooks: Hooks = {}): readonly string[] {
  const targets = plans.flatMap((plan) => targetOf(plan) ?? []);
  const choice = targets[0]?.plan.choice;
  if (choice === undefined || choice.wheels !== 'rack') return [];
  const found = planBuying(targets, { teeth: choice.teeth, mostPurchases: MOST_ADDED }, hooks);
  const best = bestLevel(found);
  const unserved =
    found.unserved.length === 0
      ? []
      : [
          en`No ${MOST_ADDED} wheels bring these inside their limits: ${some(
            found.unserved.map((index) => nameOf(targets[index])),
            ', ',
          )}.`,
        ];
  if (best.servedCount === 0) return unserved;
  const served = servedText(best.servedCount, targets.length);
  if (best.purchases === 0) return [en`Nothing to add: with the rack as it is, ${served}.`, ...unserved];
  const told = best.plans.slice(0, TOLD).map(({ purchases }) => purchases.map((purchase) => purchaseText(purchase, say)).join(en` and `));
  const more = best.planCount - TOLD;
  const ways = [...told, ...(more > 0 ? [moreText(more)] : [])].join(en`; or `);
  return [
    en`With ${countOf(best.purchases, false)} added, the fewest, ${served}: ${ways}.`,
    ...best.plans.slice(0, TOLD).flatMap((plan) => thenText(targets, plan, say)),
    ...unserved,
  ];
}

function servedText(servedCount: number, count: number): string {
  if (count === 1) return en`the one material that has limits is inside them`;
  return servedCount === count
    ? en`all ${count} materials that have limits are inside them`
    : plural(
        servedCount,
      )`${servedCount} of the ${count} materials that have limits is inside them|${servedCount} of the ${count} materials that have limits are inside them`;
}

const nameOf = (target: BuyingTarget | undefined): string => clip(target?.plan.material.name ?? '', NAME_LENGTH);

const moreText = (more: number): string => en`one of ${more} more equal choices`;

/** A page has room for the first few; of the others, how many there are. */
function some(words: readonly string[], between: string): string {
  const rest = words.length > NAMED ? [en`and ${words.length - NAMED} more`] : [];
  return [...words.slice(0, NAMED), ...rest].join(between);
}

const purchaseText = (purchase: Purchase, say: Say): string => `${wheelsText(wheelsOf([purchase]))}, ${boreText(purchase.wheel, say)}`;

/** What the materials that needed it then get. */
function thenText(targets: readonly BuyingTarget[], plan: PurchasePlan, say: Say): readonly string[] {
  const needed = new Set(plan.purchases.flatMap(({ lost }) => lost));
  const then = layPlan(targets, plan).options.flatMap((option, index) =>
    option !== null && needed.has(index) ? [`${nameOf(targets[index])} ${offRatioText(option.offRatio, say)}`] : [],
  );
  const wheels = plan.purchases.map(({ wheel }) => en`${wheel.teeth}\u00A0T`).join(en` and `);
  return then.length === 0 ? [] : [en`With ${wheels}: ${some(then, '; ')}.`];
}
