import { type JSX, onMount } from 'solid-js';
import { render } from 'solid-js/web';
import type { Difference } from '../../../core/src/file/differences.ts';
import '../style/dialogs.css';

/**
 * Shows a question whose parts come in a file of their own, and waits for the answer; Esc is the one that changes nothing.
 * The heading of the body has the id `asked`.
 */
export function askIn<T>(onEsc: T, body: (answer: (choice: T) => void) => JSX.Element): Promise<T> {
  const place = document.body.appendChild(document.createElement('div'));
  return new Promise((resolve) => {
    let dialog: HTMLDialogElement | undefined;
    const answer = (choice: T) => {
      dialog?.close();
      dispose();
      place.remove();
      resolve(choice);
    };
    const dispose = render(() => {
      onMount(() => dialog?.showModal());
      return (
        <dialog
          ref={dialog}
          class="wide"
          aria-labelledby="asked"
          onCancel={(event) => {
            event.preventDefault();
            answer(onEsc);
          }}
        >
          {body(answer)}
        </dialog>
      );
    }, place);
  });
}

/** The differences of one row of the file, under its name. */
export interface RowOf {
  readonly row: string;
  readonly changes: readonly Difference[];
}

/** Differences row by row, in the order in which the rows come. */
export function byRow(changes: readonly Difference[]): readonly RowOf[] {
  const rows = new Map<string, Difference[]>();
  for (const change of changes) rows.set(change.row, [...(rows.get(change.row) ?? []), change]);
  return [...rows].map(([row, found]) => ({ row, changes: found }));
}
