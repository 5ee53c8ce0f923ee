import { Show } from 'solid-js';
import type { Place } from '../../../core/src/index.ts';
import { placeKey, useApp } from '../state/app.ts';

/** A question of yes or no. Where a yes would do nothing it cannot be ticked, and the note says why. */
export function CheckField(props: {
  readonly label: string;
  readonly place: Place;
  readonly value: boolean;
  readonly set: (value: boolean) => void;
  readonly note?: string;
  readonly idle?: boolean;
}) {
  const app = useApp();
  return (
    <label class="choice">
      <input
        type="checkbox"
        data-place={placeKey(props.place)}
        checked={props.value}
        // What an older file has ticked can still be taken away.
        disabled={props.idle === true && !props.value}
        onChange={(event) => {
          app.shop.pause();
          props.set(event.currentTarget.checked);
          app.shop.pause();
        }}
      />
      <span classList={{ faint: props.idle === true }}>{props.label}</span>
      <Show when={props.note}>{(note) => <small>{note()}</small>}</Show>
    </label>
  );
}
