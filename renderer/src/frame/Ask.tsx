import { createEffect, Show } from 'solid-js';
import { useApp } from '../state/app.ts';

/** A question that stops the way until it is answered; Esc is the answer that changes nothing. */
export function Ask() {
  const app = useApp();
  let dialog: HTMLDialogElement | undefined;
  createEffect(() => {
    if (app.question() !== null) dialog?.showModal();
  });
  const answer = (yes: boolean) => {
    dialog?.close();
    app.question()?.answer(yes);
  };
  return (
    <dialog
      ref={dialog}
      aria-labelledby="ask"
      onCancel={(event) => {
        event.preventDefault();
        answer(false);
      }}
    >
      <Show when={app.question()}>
        {(question) => (
          <>
            <p id="ask">{question().text}</p>
            <p class="bar-of gap">
              <button type="button" class="pri" onClick={() => answer(false)}>
                {question().no}
              </button>
              <button type="button" onClick={() => answer(true)}>
                {question().yes}
              </button>
            </p>
          </>
        )}
      </Show>
    </dialog>
  );
}
