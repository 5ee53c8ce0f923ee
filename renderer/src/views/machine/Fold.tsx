import type { JSX } from 'solid-js';
import { en } from '../../../../core/src/en.ts';

/** A group of fields that shows one line of what is given until it is opened. */
export function Fold(props: { readonly title: string; readonly summary: string; readonly group: string; readonly children: JSX.Element }) {
  return (
    <details class="fold" data-group={props.group}>
      <summary data-unread={en`An entry in here cannot be read.`}>
        <span class="title">{props.title}:</span> <span class="faint">{props.summary}</span>
      </summary>
      <div class="fields">{props.children}</div>
    </details>
  );
}
