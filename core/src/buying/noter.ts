import type { Choices } from '../choices.ts';
import type { Plan } from '../plan.ts';
import { type Candidate, type Hooks, insideSearch } from '../search/index.ts';
import { needsOf } from './needs.ts';
import type { PlanTable } from './planTable.ts';
import type { BuyingTarget } from './target.ts';
import type { Wheel } from './wheels.ts';

export interface Noter {
  /** Notes in the table which wheels serve a target; whether any do. */
  readonly note: (table: PlanTable, target: number, wanted: Omit<BuyingTarget, 'plan'>, hooks: Hooks) => boolean;
}

/**
 * Finds what the options inside the limits of one target after another need.
 *
 * @param plan whose search may buy so many wheels
 */
export function noterOf(plan: Plan, choices: Choices, wheels: readonly Wheel[], mostPurchases: number): Noter {
  const needs = needsOf(plan, choices.problem, wheels);
  const search = insideSearch(choices.problem, needs.absent, mostPurchases);
  const rules = choices.rules(0);
  return {
    note: (table, target, { wantedBPerA, limits }, hooks) => {
      let any = false;
      const take = (candidate: Candidate): boolean => {
        const open = needs
          .of(candidate, () => choices.teethOf(candidate))
          .filter((need) => need.length <= mostPurchases && !table.isServed(target, need));
        // the rules are slow to ask, so only of what would say something new
        if (open.length === 0 || rules.admit(candidate) === null) return false;
        for (const need of open) table.mark(target, need);
        any = true;
        // what the rack serves by itself needs no purchase
        return open.some((need) => need.length === 0);
      };
      search.each(wantedBPerA, limits, take, hooks);
      return any;
    },
  };
}
