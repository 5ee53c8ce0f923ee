import { Show, untrack } from 'solid-js';
import { budgetOf, VERDICT_WORDS } from '../../../../core/src/budget.ts';
import type { PlannedOption } from '../../../../core/src/index.ts';
import { verdictWord } from '../../../../core/src/optionWords.ts';
import { useApp } from '../../state/app.ts';

export const VERDICT_COLOURS = {
  'inside with margin': 'good',
  'inside, margin not known': 'faint',
  'inside only nominally': 'warn',
  outside: 'bad',
} as const;

/** The verdict of the off-ratio budget in a list, worked out when its row is first drawn; nothing where there are no limits. */
export function VerdictWord(props: { readonly option: PlannedOption }) {
  const app = useApp();
  const verdict = untrack(() => {
    const plan = app.solution.answered()?.plan;
    return plan === undefined ? null : budgetOf(plan, props.option).verdict;
  });
  return (
    <Show when={verdict}>
      {(of) => (
        <small class={VERDICT_COLOURS[of()]} title={VERDICT_WORDS[of()]}>
          {' '}
          {verdictWord(of())}
        </small>
      )}
    </Show>
  );
}
