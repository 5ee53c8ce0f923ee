import { type Candidate, type Hooks, insideSearch } from '../search/index.ts';
import type { PlanTable } from './planTable.ts';
import type { Shop } from './shop.ts';
import type { BuyingTarget } from './target.ts';

export interface Noter {
  /** Notes in the table which parts serve a target; whether any do. */
  readonly note: (table: PlanTable, target: number, wanted: Omit<BuyingTarget, 'plan'>, hooks: Hooks) => boolean;
}

/** Finds what the options inside the limits of one target after another need. */
export function noterOf({ choices, needs }: Shop, mostPurchases: number): Noter {
  const search = insideSearch(choices.problem, (choice) => needs.lacking(choice).length, mostPurchases);
  return {
    note: (table, target, { wantedBPerA, limits }, hooks) => {
      let any = false;
      const take = (candidate: Candidate): boolean => {
        const open = needs
          .of(candidate, () => choices.teethOf(candidate))
          .filter((need) => need.length <= mostPurchases && !table.isServed(target, need));
        // the rules are slow to ask, so only of what would say something new
        if (open.length === 0 || !choices.runs(candidate)) return false;
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
