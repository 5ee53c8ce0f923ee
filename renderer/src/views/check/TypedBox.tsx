import { createUniqueId, Show } from 'solid-js';
import type { Place } from '../../../../core/src/index.ts';
import { placeKey, useApp } from '../../state/app.ts';

const LONGEST = 200;

/** A box whose text is kept as it is typed, readable or not; what is wrong stands under it, or where `saidBy` points. */
export function TypedBox(props: {
  readonly label: string;
  readonly bare?: boolean;
  readonly place: Place;
  readonly text: string | undefined;
  readonly set: (text: string | undefined) => void;
  readonly fault: string | null;
  /** Whether an element elsewhere says what is wrong, by id. */
  readonly saidBy?: string;
  readonly reading?: string | undefined;
  readonly hint?: string;
  readonly placeholder?: string;
  readonly column?: string;
  /** Words, not a number: the keyboard of a touch screen follows. */
  readonly words?: boolean;
}) {
  const app = useApp();
  const id = createUniqueId();
  const under = () => props.saidBy ?? `${id}-hint`;
  return (
    <div class="field">
      <label class="k" classList={{ heard: props.bare === true }} for={id}>
        {props.label}
      </label>
      <input
        id={id}
        type="text"
        inputmode={props.words === true ? 'text' : 'decimal'}
        autocomplete="off"
        spellcheck={false}
        maxlength={LONGEST}
        data-place={placeKey(props.place)}
        data-column={props.column}
        value={props.text ?? ''}
        placeholder={props.placeholder}
        aria-invalid={props.fault === null ? undefined : 'true'}
        aria-describedby={under()}
        onInput={(event) => props.set(event.currentTarget.value === '' ? undefined : event.currentTarget.value)}
        onBlur={() => app.shop.pause()}
      />
      <Show when={props.reading}>
        <output class="reading" for={id}>
          {props.reading}
        </output>
      </Show>
      <Show when={props.saidBy === undefined}>
        <p id={`${id}-hint`} class="hint" classList={{ bad: props.fault !== null }}>
          {props.fault ?? props.hint ?? ''}
        </p>
      </Show>
    </div>
  );
}
