import { createMemo, For, Show } from 'solid-js';
import { type MaterialReach, materialReach } from '../../../../core/src/materialReach.ts';
import { reachSentences } from '../../../../core/src/reachWords.ts';
import { useApp } from '../../state/app.ts';
import { createReach, type ReachState } from '../../state/reach.ts';
import '../../style/reach.css';
import { Gaps } from './Gaps.tsx';
import { Materials } from './Materials.tsx';
import { ReachRule } from './ReachRule.tsx';
import { WindowFields } from './WindowFields.tsx';

/** Which ratios the machine can make, how far off any target is at worst, and where the shop's materials lie. */
export function ReachPage() {
  const app = useApp();
  const reach = createReach(app);
  const rows = createMemo((): readonly MaterialReach[] =>
    reach.materials().flatMap(({ id, plan }) => (plan === null ? [] : [materialReach(plan, reach.best(id) ?? null, app.say())])),
  );
  return (
    <main id="main" class="reach">
      <section aria-label="Reach">
        <h1 class="heard">Reach</h1>
        <Show when={app.solution.plan()?.ok} fallback={<p>The plan is not complete yet: the Options page says what is missing.</p>}>
          <WindowFields reach={reach} />
          <Said reach={reach} />
          <ReachRule reach={reach} rows={rows()} />
          <div class="tables">
            <Gaps reach={reach} rows={rows()} />
            <Materials reach={reach} rows={rows()} />
          </div>
        </Show>
      </section>
    </main>
  );
}

function Said(props: { readonly reach: ReachState }) {
  const app = useApp();
  const sentences = createMemo(() => {
    const found = props.reach.found();
    return found === null ? [] : reachSentences(found.reach, app.say());
  });
  return (
    <div class="said" role="status">
      <For each={sentences()}>{(sentence, index) => <p class={index() < 2 ? '' : 'faint'}>{sentence}</p>}</For>
    </div>
  );
}
