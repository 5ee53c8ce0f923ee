import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { CauseState } from '../../../../core/src/ratioCheck/causes/index.ts';
import { CAUSE_STATES } from '../../../../core/src/ratioCheckWords.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';

const COLOURS: Readonly<Record<CauseState, string>> = { likely: 'bad', possible: 'warn', 'ruled out': 'good', 'not looked for': 'faint' };

/** What may stand behind the off-ratio, looked for before any sprocket is touched. */
export function Causes(props: { readonly state: RatioCheckState }) {
  const causes = () => (props.state.shown() === null ? [] : (props.state.judged()?.causes ?? []));
  return (
    <section class="block causes" aria-labelledby="causes">
      <div class="head">
        <h2 id="causes">{en`Causes, before any sprocket`}</h2>
        <Show when={props.state.shown() !== null && !props.state.judgedIsCurrent()}>
          <span class="faint">{en`looking`}</span>
        </Show>
      </div>
      <Show when={causes().length > 0} fallback={<p class="faint">{en`They are looked for as soon as catches are written.`}</p>}>
        <dl class="find" classList={{ faint: !props.state.judgedIsCurrent() }}>
          <For each={causes()}>
            {({ cause, title, state, what }) => (
              <>
                <dt class={COLOURS[state]} data-cause={cause}>
                  {CAUSE_STATES[state]}
                </dt>
                <dd>
                  <b>{title}.</b> {what}
                </dd>
              </>
            )}
          </For>
        </dl>
      </Show>
    </section>
  );
}
