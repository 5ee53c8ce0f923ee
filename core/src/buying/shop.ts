import { type Choices, choicesOf } from '../choices.ts';
import type { Plan } from '../plan.ts';
import { type Needs, needsOf } from './needs.ts';
import { type Parts, partsToBuy, pumpNeeds } from './parts.ts';
import { type BuyingWish, buyingPlan } from './target.ts';

/** A machine in which parts may be bought, as the search sees it. */
export interface Shop {
  readonly plan: Plan;
  readonly choices: Choices;
  readonly parts: Parts;
  readonly needs: Needs;
}

export function shopOf(plan: Plan, wish: BuyingWish): Shop {
  const buying = buyingPlan(plan, wish);
  const choices = choicesOf(buying);
  const parts = partsToBuy(buying, wish.pumps === true);
  return { plan: buying, choices, parts, needs: needsOf(buying, choices.problem, parts.wheels, pumpNeeds(choices, parts)) };
}

/** What may be bought is the same for every target of a machine. */
export function partsOf(shops: readonly Shop[]): Parts {
  const [first] = shops;
  if (first === undefined) throw new RangeError('buying: no target');
  return first.parts;
}
