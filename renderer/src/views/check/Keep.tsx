import { Show } from 'solid-js';
import type { RatioCheckState } from '../../state/ratioCheck.ts';

/** Keeps the check with the terms of today; whatever stands against it is said beside the button. */
export function Keep(props: { readonly state: RatioCheckState }) {
  const ready = () => props.state.written()?.typed !== null && props.state.written() !== null;
  const against = () => {
    if (!props.state.begun()) return 'Nothing is written yet.';
    return props.state.written()?.findings.find(({ severity }) => severity === 'blocks')?.what ?? null;
  };
  return (
    <div class="gap">
      <p class="bar-of">
        <button type="button" class="pri" disabled={!ready()} onClick={props.state.keep}>
          Keep this ratio check
        </button>
        <Show when={props.state.begun()}>
          <button type="button" onClick={props.state.discard}>
            Start anew
          </button>
        </Show>
      </p>
      <p class="hint">{ready() ? 'It is kept in the shop file with the limits, densities and pumps of today.' : against()}</p>
    </div>
  );
}
