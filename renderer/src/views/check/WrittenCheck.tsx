import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { SEVERITY_WORDS } from '../../../../core/src/finding.ts';
import { writtenCatches } from '../../../../core/src/ratioCheck/blankCatch.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';
import { Findings } from '../options/Findings.tsx';
import { Before } from './Before.tsx';
import { CatchTable } from './CatchTable.tsx';
import { Keep } from './Keep.tsx';

/** The check that is being written, from what it proves to keeping it. */
export function WrittenCheck(props: { readonly state: RatioCheckState }) {
  const missing = () => {
    const of = props.state.proved();
    return of === null || of.ok ? [] : of.findings;
  };
  /** What is said at no box and at no catch. */
  const general = () => {
    const start = props.state.place().length;
    // before the first catch its want is no finding
    const check = props.state.check();
    if (check === null || writtenCatches(check).length === 0) return [];
    return (props.state.written()?.findings ?? []).filter(({ where }) => {
      const [field, row] = where.slice(start);
      return ['terms', 'run'].includes(String(field)) || (field === 'catches' && row === undefined);
    });
  };
  return (
    <>
      <Before state={props.state} />
      <Show
        when={missing().length === 0}
        fallback={<Findings title={en`The plan is not complete, so nothing can be held against it yet`} findings={missing()} />}
      >
        <CatchTable state={props.state} />
        <dl class="find general">
          <For each={general()}>
            {({ severity, what }) => (
              <>
                <dt classList={{ bad: severity === 'blocks', warn: severity === 'warns', faint: severity === 'notes' }}>
                  {SEVERITY_WORDS[severity]}
                </dt>
                <dd>{what}</dd>
              </>
            )}
          </For>
        </dl>
        <Keep state={props.state} />
      </Show>
    </>
  );
}
