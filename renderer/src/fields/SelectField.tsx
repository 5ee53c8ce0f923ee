import { createUniqueId, For, Show } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import type { Place } from '../../../core/src/index.ts';
import { visible } from '../../../core/src/visible.ts';
import { placeKey, useApp } from '../state/app.ts';

interface SelectProps {
  readonly label: string;
  readonly bare?: boolean;
  readonly place: Place;
  /** Other places that this box stands for. */
  readonly also?: readonly Place[];
  readonly value: string | undefined;
  readonly options: readonly (readonly [value: string, words: string])[];
  readonly pick: (value: string) => void;
}

/** One out of a list; each pick is an undo step of its own. */
export function SelectField(props: SelectProps) {
  const app = useApp();
  const id = createUniqueId();
  return (
    <div class="field">
      <label class="k" classList={{ heard: props.bare === true }} for={id}>
        {props.label}
      </label>
      <select
        id={id}
        data-place={placeKey(props.place)}
        data-also={props.also?.map(placeKey).join(' ')}
        onChange={(event) => {
          app.shop.pause();
          props.pick(event.currentTarget.value);
          app.shop.pause();
        }}
      >
        <Show when={props.value === undefined}>
          <option value="" selected disabled>{en`not given`}</option>
        </Show>
        <For each={props.options}>
          {([value, words]) => (
            <option value={value} selected={value === props.value}>
              {visible(words)}
            </option>
          )}
        </For>
      </select>
    </div>
  );
}
