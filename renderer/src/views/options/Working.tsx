import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { Worked } from '../../../../core/src/working.ts';
import { type PutText, workingText } from '../../../../core/src/workingText.ts';
import { useApp } from '../../state/app.ts';
import { Opening } from './Opening.tsx';

/** How a figure came about: formula, the same with the numbers put in, each number with its unit, the result, the source. */
export function Working(props: { readonly worked: Worked }) {
  const app = useApp();
  const text = () => workingText(props.worked, app.say());
  return (
    <div class="working">
      <p class="formula">{text().formula}</p>
      <ul>
        <For each={text().put}>{(put) => <Put put={put} />}</For>
      </ul>
      <p class="formula">{text().numbers}</p>
      <p>
        {props.worked.what}: <b>{text().result}</b>
      </p>
      <p class="faint">{en`Source: ${text().source}`}</p>
    </div>
  );
}

/** A number that was worked out in its turn opens further. */
function Put(props: { readonly put: PutText }) {
  return (
    <li>
      <Show when={props.put.working} fallback={<PutLine put={props.put} />}>
        {(worked) => (
          <Opening line={<PutLine put={props.put} />}>
            <Working worked={worked()} />
          </Opening>
        )}
      </Show>
    </li>
  );
}

function PutLine(props: { readonly put: PutText }) {
  return (
    <>
      <i>{props.put.letter}</i> = {props.put.figure}
      <Show when={props.put.si}>{(si) => <span class="faint"> ({si()})</span>}</Show>, {props.put.what}
    </>
  );
}
