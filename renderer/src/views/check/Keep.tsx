import { Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { useApp } from '../../state/app.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';

/** Keeps the check with the terms of today; what stands against it is said beside the button, with the way to its box. */
export function Keep(props: { readonly state: RatioCheckState }) {
  const app = useApp();
  const isReady = () => (props.state.written()?.typed ?? null) !== null;
  const against = () => (props.state.begun() ? props.state.written()?.findings.find(({ severity }) => severity === 'blocks') : undefined);
  return (
    <div class="gap">
      <p class="bar-of">
        <button type="button" class="pri" disabled={!isReady()} onClick={props.state.keep}>{en`Keep this ratio check`}</button>
        <Show when={props.state.begun()}>
          <button type="button" onClick={props.state.discard}>{en`Start anew`}</button>
        </Show>
      </p>
      <p class="hint">
        <Show when={against()} fallback={isReady() ? en`It is kept in the shop file with the limits, densities and pumps of today.` : ''}>
          {(finding) => (
            <button type="button" class="plain against" onClick={() => app.goTo(finding().where)}>
              {finding().what}
            </button>
          )}
        </Show>
      </p>
    </div>
  );
}
