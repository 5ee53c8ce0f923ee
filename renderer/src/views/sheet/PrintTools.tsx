import type { JSX } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { sentenceOf, useApp } from '../../state/app.ts';
import { PaperChoice } from './PaperChoice.tsx';

/** What every printed page has above it: printer, PDF and paper; what belongs to one page alone comes behind. */
export function PrintTools(props: {
  /** On the button that prints. */
  readonly words: string;
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
        {props.words}
      </button>
      <button type="button" disabled={props.disabled} onClick={() => guarded(props.pdf)}>{en`Save as PDF`}</button>
      <PaperChoice />
      {props.children}
    </div>
  );
}
