import { Show } from 'solid-js';
import { FIRST_CHANGE } from '../../../core/src/help/firstChange.ts';
import type { Walk } from './createWalk.ts';

/** What to do next, and where; it goes on by itself once that is done. */
export function WalkLine(props: { readonly walk: Walk }) {
  return (
    <aside class="walk" aria-label="First change">
      <p role="status">
        <Show when={props.walk.step()} fallback="That was a whole change, from data sheet to proof. Undo takes any of it back.">
          {(step) => (
            <>
              <b class="nw">
                Step {(props.walk.at() ?? 0) + 1} of {FIRST_CHANGE.length}.
              </b>{' '}
              {step().what}
            </>
          )}
        </Show>
      </p>
      <div class="bar-of">
        <Show when={props.walk.step()}>
          <button type="button" onClick={() => void props.walk.show()}>
            Show me where
          </button>
        </Show>
        <button type="button" onClick={() => props.walk.leave()}>
          {props.walk.step() === null ? 'Close' : 'Leave the first change'}
        </button>
      </div>
    </aside>
  );
}
