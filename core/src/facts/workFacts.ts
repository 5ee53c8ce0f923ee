import { en } from '../en.ts';
import type { Say } from '../format.ts';
import type { PlannedOption } from '../option.ts';
import type { Plan } from '../plan.ts';
import { amountText } from '../shown.ts';
import { changesOf, WORK_KINDS, type WorkKind, workOf } from '../work.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';

/** Minutes of the change: each kind of work that it needs, and all together. */
export function workFacts(plan: Plan, { pumps, stages }: PlannedOption, say: Say): FactGroup {
  const changes = changesOf(plan, pumps, stages);
  const { kinds, total } = workOf(plan.minutes, changes);
  const ofKind = (kind: WorkKind): readonly Fact[] => {
    const each = amountText(plan.minutes[`${kind}_s`], 'time', say);
    return changes[kind] === 0 ? [] : [fact(kind, kinds[kind], say, { note: en`${changes[kind]}, ${each} each` })];
  };
  return { id: 'work', title: en`Work`, facts: [...WORK_KINDS.flatMap(ofKind), fact('total', total, say)] };
}
