import { For } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { useApp } from '../../state/app.ts';

const PAPERS = [
  ['A4', en`A4`],
  ['Letter', en`Letter`],
] as const;

/** The paper of all that is printed; a setting of the person. */
export function PaperChoice() {
  const app = useApp();
  return (
    <fieldset class="papers">
      <legend class="heard">{en`Paper`}</legend>
      <For each={PAPERS}>
        {([paper, words]) => (
          <label class="choice">
            <input type="radio" name="paper" checked={app.paper() === paper} onChange={() => app.setPaper(paper)} />
            {words}
          </label>
        )}
      </For>
    </fieldset>
  );
}
