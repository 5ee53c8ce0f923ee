import { For, type JSX } from 'solid-js';
import { sentenceOf, useApp } from '../../state/app.ts';

const PAPERS = ['A4', 'Letter'] as const;

/** What every printed page has above it: printer, PDF and paper; what belongs to one page alone comes behind. */
export function PrintTools(props: {
  readonly what: string;
  readonly disabled?: boolean;
  readonly print: () => Promise<unknown>;
  readonly pdf: () => Promise<unknown>;
  readonly children: JSX.Element;
}) {
  const app = useApp();
  const guarded = (work: () => Promise<unknown>) => {
    work().catch((error: unknown) => app.tell(sentenceOf(error)));
  };
  return (
    <div class="tools screen">
      <button type="button" class="pri" disabled={props.disabled} onClick={() => guarded(props.print)}>
        Print {props.what}
      </button>
      <button type="button" disabled={props.disabled} onClick={() => guarded(props.pdf)}>
        Save as PDF
      </button>
      <fieldset class="papers">
        <legend class="heard">Paper</legend>
        <For each={PAPERS}>
          {(paper) => (
            <label class="choice">
              <input type="radio" name="paper" checked={app.paper() === paper} onChange={() => app.setPaper(paper)} />
              {paper}
            </label>
          )}
        </For>
      </fieldset>
      {props.children}
    </div>
  );
}
