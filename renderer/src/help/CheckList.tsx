import { For } from 'solid-js';
import { optionChecks, pairChecks } from '../../../core/src/checks/index.ts';
import { en } from '../../../core/src/en.ts';
import type { Severity } from '../../../core/src/finding.ts';
import { CHECK_REASONS } from '../../../core/src/help/checkReasons.ts';

const AT_WORST: Readonly<Record<Severity, string>> = {
  blocks: en`At worst it blocks.`,
  warns: en`At worst it warns.`,
  notes: en`At worst it notes.`,
};

/** Every automatic check: why it is made, the worst it can say, where its limit comes from. */
export function CheckList() {
  return (
    <>
      <h2>{en`Checks that are made by themselves`}</h2>
      <dl class="words">
        <For each={[...pairChecks, ...optionChecks]}>
          {({ id, title, worst, source }) => (
            <>
              <dt>{title}</dt>
              <dd>
                {CHECK_REASONS[id]}
                {AT_WORST[worst]} <small>{en`Limit: ${source}.`}</small>
              </dd>
            </>
          )}
        </For>
      </dl>
    </>
  );
}
