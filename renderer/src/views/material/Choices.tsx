import { createUniqueId, For } from 'solid-js';
import type { Place } from '../../../../core/src/index.ts';
import { placeKey, useApp } from '../../state/app.ts';

interface ChoicesProps<T extends string> {
  readonly label: string;
  readonly place: Place;
  /** Other places that an answer settles. */
  readonly also?: readonly Place[];
  readonly options: readonly (readonly [T, string])[];
  /** Undefined where nobody has said yet: then none is marked. */
  readonly value: T | undefined;
  readonly pick: (value: T) => void;
}

/** A question with a few answers. A question of fact starts without one. */
export function Choices<T extends string>(props: ChoicesProps<T>) {
  const app = useApp();
  const name = createUniqueId();
  return (
    <fieldset class="choices">
      <legend class="k">{props.label}</legend>
      <For each={props.options}>
        {([value, words], index) => (
          <label class="choice">
            <input
              type="radio"
              name={name}
              data-place={index() === 0 ? placeKey(props.place) : undefined}
              data-also={index() === 0 ? props.also?.map(placeKey).join(' ') : undefined}
              checked={props.value === value}
              onChange={() => {
                app.shop.pause();
                props.pick(value);
                app.shop.pause();
              }}
            />
            {words}
          </label>
        )}
      </For>
    </fieldset>
  );
}
