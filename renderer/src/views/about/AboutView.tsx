import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import '../../style/about.css';
import { useApp } from '../../state/app.ts';
import type { Licences } from './licences.ts';

/** A name is the same in every language. */
const PROGRAM = 'Ratiowright';
const OWN_LICENCE = `${PROGRAM} · MIT`;

/** What the program is, its own licence, and those of all it is made of. */
export function AboutView(props: { readonly licences: Licences; readonly onClose: () => void }) {
  const app = useApp();
  let dialog: HTMLDialogElement | undefined;
  return (
    <dialog ref={dialog} class="about" aria-labelledby="about" onClose={() => props.onClose()}>
      <h1 class="t" id="about">
        {`${PROGRAM} ${props.licences.version}`}
      </h1>
      <p>{en`Plans, fits and proves ratio changes on two-component gear-metering machines. Nothing leaves this computer; there is no network in the program.`}</p>
      <details>
        <summary>{OWN_LICENCE}</summary>
        <pre>{props.licences.text}</pre>
      </details>
      <h2>{en`Parts by others`}</h2>
      <For each={props.licences.packages}>
        {(one) => (
          <details>
            <summary>
              {one.name} {one.version} · {one.licence}
            </summary>
            <pre>{one.text}</pre>
          </details>
        )}
      </For>
      <Show when={app.host.kind === 'desktop'}>
        <p class="gap">
          {en`The window is Electron ${props.licences.electron} · MIT, with Chromium and Node.js. Their licences lie beside the program, in LICENSE.electron.txt and LICENSES.chromium.html.`}
        </p>
      </Show>
      <p class="gap">
        <button type="button" class="pri" onClick={() => dialog?.close()}>{en`Close`}</button>
      </p>
    </dialog>
  );
}
