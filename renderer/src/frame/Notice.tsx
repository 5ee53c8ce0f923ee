import { Show } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { useApp } from '../state/app.ts';

/** One line at the foot: a file that was refused, a disk that failed, a fault of ours with text to copy. */
export function Notice() {
  const app = useApp();
  const line = () => app.solution.fault() ?? app.notice();
  return (
    <div role="status" class="notice-place">
      <Show when={line()}>
        <div class="notice">
          <p>
            <Show when={app.solution.fault()}>
              {en`The search failed; this is a fault of the program. Copy this text for its makers:`}{' '}
            </Show>
            {line()}
          </p>
          <button type="button" onClick={() => app.tell(null)}>{en`Close`}</button>
        </div>
      </Show>
    </div>
  );
}
