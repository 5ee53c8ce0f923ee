import { createEffect, createSignal, createUniqueId, on, Show } from 'solid-js';
import type { Place } from '../../../core/src/index.ts';
import { placeKey, useApp } from '../state/app.ts';

/** What a typed text means to its field. */
export type EntryReading = { readonly ok: true; readonly reading?: string } | { readonly ok: false; readonly expected: string };

export interface EntryProps {
  readonly label: string;
  /** Hides the label where a table head already says it; it is still read aloud. */
  readonly bare?: boolean;
  readonly place: Place;
  /** Other places that this box holds: the far end of a range, what is typed here in another way. */
  readonly also?: readonly Place[] | undefined;
  /** The text that stands for the value in the file; empty where it is not given. */
  readonly text: string;
  /** The text is that of an answer, which comes at whatever moment: while the cursor is in the box it waits. */
  readonly answered?: boolean;
  /** Reads a text as it is typed, and keeps it where it can be read. Empty text clears the value where that is allowed. */
  readonly take: (text: string) => EntryReading;
  readonly hint?: string | undefined;
  readonly placeholder?: string;
  readonly width?: string;
  /** What an arrow key makes of the text, up 1 or down -1; null leaves it alone. The mouse wheel never changes a value. */
  readonly step?: (text: string, by: 1 | -1) => string | null;
  readonly wide?: boolean;
}

/**
 * The one text box of the program. What is typed stays in sight, the reading stands beside it where it differs, and an
 * unreadable entry says what was expected while the last good value stays in use.
 */
export function Entry(props: EntryProps) {
  const app = useApp();
  const id = createUniqueId();
  const [text, setText] = createSignal(props.text);
  const [trouble, setTrouble] = createSignal<string | null>(null);
  const [reading, setReading] = createSignal<string | undefined>();
  const follow = () => {
    if (props.text === text()) return;
    setText(props.text);
    setTrouble(null);
    setReading(undefined);
  };
  // Undo, or another field, may change the value: then the box follows, unless it is what was just typed.
  createEffect(
    on(
      () => props.text,
      () => {
        if (!props.answered || document.activeElement?.id !== id) follow();
      },
      { defer: true },
    ),
  );
  const take = (next: string) => {
    setText(next);
    const read = props.take(next);
    setTrouble(read.ok ? null : read.expected);
    setReading(read.ok ? read.reading : undefined);
  };
  const step = (event: KeyboardEvent) => {
    const by = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : null;
    const next = by === null ? null : (props.step?.(text(), by) ?? null);
    if (next === null) return;
    event.preventDefault();
    take(next);
  };
  return (
    <div class="field" classList={{ wide: props.wide === true }}>
      <label class="k" classList={{ heard: props.bare === true }} for={id}>
        {props.label}
      </label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        spellcheck={false}
        data-place={placeKey(props.place)}
        data-also={props.also?.map(placeKey).join(' ')}
        value={text()}
        placeholder={props.placeholder}
        size={props.width === undefined ? undefined : Number(props.width)}
        aria-invalid={trouble() === null ? undefined : 'true'}
        aria-describedby={`${id}-hint`}
        onInput={(event) => take(event.currentTarget.value)}
        onKeyDown={step}
        onBlur={() => {
          app.shop.pause();
          // What cannot be read stays, so that it can be mended.
          if (props.answered && !trouble()) follow();
        }}
      />
      <Show when={reading()}>
        <output class="reading" for={id}>
          {reading()}
        </output>
      </Show>
      <p id={`${id}-hint`} class="hint" classList={{ bad: trouble() !== null }} aria-live="polite">
        {trouble() ?? props.hint ?? ''}
      </p>
    </div>
  );
}
