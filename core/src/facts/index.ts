import type { Say } from '../format.ts';
import type { PlannedOption } from '../option.ts';
import type { Plan } from '../plan.ts';
import type { FactGroup } from '../workingText.ts';
import { budgetFacts } from './budgetFacts.ts';
import { chainFacts } from './chainFacts.ts';
import { driftFacts } from './driftFacts.ts';
import { flowFacts } from './flowFacts.ts';
import { loadFacts } from './loadFacts.ts';
import { mixFacts } from './mixFacts.ts';
import { pumpFacts } from './pumpFacts.ts';
import { tankFacts } from './tankFacts.ts';
import { workFacts } from './workFacts.ts';

/** What is said of an option, group by group: the list that screen, sheet and answer draw on. */
const GROUPS: readonly ((plan: Plan, option: PlannedOption, say: Say) => FactGroup)[] = [
  mixFacts,
  flowFacts,
  loadFacts,
  budgetFacts,
  driftFacts,
  pumpFacts,
  tankFacts,
  workFacts,
  chainFacts,
];

/** Every figure of an option that follows from the plan, with its working; a group without figures is left out. */
export function optionFacts(plan: Plan, option: PlannedOption, say: Say): readonly FactGroup[] {
  return GROUPS.map((group) => group(plan, option, say)).filter(({ facts }) => facts.length > 0);
}
