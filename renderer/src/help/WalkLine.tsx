import { Show } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { FIRST_CHANGE } from '../../../core/src/help/firstChange.ts';
import type { Walk } from './createWalk.ts';

/** What to do next, and where; it goes on by itself once that is done. */
export function WalkLine(props: { readonly walk: Walk }) {
  return (
    <aside class="walk" aria-label={en`First change`}>
      <p role="status">
        <Show when={props.walk.step()} fallback={en`That was a whole change, from data sheet to proof. Undo takes any of it back.`}>
          {(step) => (
            <>
              <b class="nw">{en`Step ${(props.walk.at() ?? 0) + 1} of ${FIRST_CHANGE.length}.`}</b> {step().what}
            </>
          )}
        </Show>
      </p>
      <div class="bar-of">
        <Show when={props.walk.step()}>
          <button type="button" onClick={() => void props.walk.show()}>{en`Show me where`}</button>
        </Show>
        <button type="button" onClick={() => props.walk.leave()}>
          {props.walk.step() === null ? en`Close` : en`Leave the first change`}
        </button>
      </div>
    </aside>
  );
}
