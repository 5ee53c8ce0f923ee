import { For, Show } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import type { Difference } from '../../../core/src/file/differences.ts';
import { visible } from '../../../core/src/visible.ts';
import { byRow } from './dialog.tsx';

/** More than anybody compares line by line. */
const MOST = 200;

/** Differences row by row; what both sides changed is marked by a word. */
export function ChangeList(props: { readonly changes: readonly Difference[]; readonly both?: ReadonlySet<string> }) {
  return (
    <>
      <For each={byRow(props.changes.slice(0, MOST))}>
        {({ row, changes }) => (
          <>
            <h3>
              <bdi>{visible(row)}</bdi>
            </h3>
            <ul>
              <For each={changes}>
                {({ key, what }) => (
                  <li>
                    <bdi>{visible(what)}</bdi>
                    <Show when={props.both?.has(key)}>
                      {' '}
                      <b class="warn">{en`changed by both`}</b>
                    </Show>
                  </li>
                )}
              </For>
            </ul>
          </>
        )}
      </For>
      <Show when={props.changes.length > MOST}>
        <p class="faint">{en`and ${props.changes.length - MOST} more`}</p>
      </Show>
    </>
  );
}
