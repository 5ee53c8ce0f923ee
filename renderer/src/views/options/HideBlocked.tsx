import { Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { OptionLines } from './optionLines.ts';

export function HideBlocked(props: { readonly lines: OptionLines }) {
  return (
    <Show when={props.lines.blockedCount() > 0}>
      <label class="hideblocked">
        <input
          type="checkbox"
          name="hide-blocked"
          checked={props.lines.hidesBlocked()}
          onChange={(event) => props.lines.hideBlocked(event.currentTarget.checked)}
        />
        {en`Hide ${props.lines.blockedCount()} blocked`} <kbd>B</kbd>
      </label>
    </Show>
  );
}
