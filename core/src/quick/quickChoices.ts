import { type Choices, choicesOf } from '../choices.ts';
import type { Plan } from '../plan.ts';
import { quickRules } from './quickRules.ts';

/**
 * The choices of a plan for a search that asks for very many options: the same answers, most of them without laying an option out.
 *
 * Apart from `choicesOf`, since the list of options asks for few and is loaded first.
 *
 * @source `choicesOf`
 * @example quickChoices(Bench 1 of the demo).rules.admit({ pump: 0, pairs: [0] })  // as that of choicesOf
 */
export function quickChoices(plan: Plan): Choices {
  const choices = choicesOf(plan);
  const { stages, pumps } = choices.problem;
  const open = plan.stages.filter((stage) => stage.open).map((stage, s) => ({ stage, pairs: stages[s]?.pairs ?? [] }));
  const sets = pumps.map((_, pump) => choices.pumpsOf({ pump, pairs: [] }));
  const { told, span } = quickRules(plan, open, sets);
  const { admit } = choices.rules;
  return {
    ...choices,
    rules: {
      span,
      admit: (candidate) => {
        const passes = told(candidate);
        return passes === null ? admit(candidate) : passes ? 0 : null;
      },
    },
  };
}
