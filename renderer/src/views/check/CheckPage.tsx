import { createSignal, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { useApp } from '../../state/app.ts';
import type { Kept } from '../../state/keptChecks.ts';
import { createRatioCheck, type RatioCheckState } from '../../state/ratioCheck.ts';
import '../../style/check.css';
import { Causes } from './Causes.tsx';
import { Delivery } from './Delivery.tsx';
import { KeptChecks } from './KeptChecks.tsx';
import { OpenedCheck } from './OpenedCheck.tsx';
import { RecordView } from './RecordView.tsx';
import { Trends } from './Trends.tsx';
import { Verdict } from './Verdict.tsx';
import { WrittenCheck } from './WrittenCheck.tsx';

/** Weighing what each side delivers, unmixed: the verdict as it is typed, what may stand behind it, and how it went before. */
export function CheckPage() {
  const state = createRatioCheck(useApp());
  const [onPaper, putOnPaper] = createSignal(false);
  const paper = (): Kept | null => (onPaper() ? state.opened() : null);
  return (
    <Show when={paper()} fallback={<Desk state={state} print={() => putOnPaper(true)} />}>
      {(opened) => <RecordView state={state} opened={opened()} back={() => putOnPaper(false)} />}
    </Show>
  );
}

function Desk(props: { readonly state: RatioCheckState; readonly print: () => void }) {
  return (
    <main id="main" class="two check">
      <section aria-label={en`The check`}>
        <h1 class="heard">{en`Ratio check`}</h1>
        <Show when={props.state.machine()} fallback={<p>{en`There is no machine in this file yet: the Machine page takes one.`}</p>}>
          <Show when={props.state.opened()} fallback={<WrittenCheck state={props.state} />}>
            {(opened) => <OpenedCheck state={props.state} opened={opened()} print={props.print} />}
          </Show>
        </Show>
      </section>
      <section class="side" aria-label={en`What it tells`}>
        <Verdict shown={props.state.shown()} waiting={props.state.opened() === null ? (props.state.written()?.waiting ?? []) : []} />
        <Causes state={props.state} />
        <Delivery state={props.state} />
        <KeptChecks state={props.state} />
        <Trends state={props.state} />
      </section>
    </main>
  );
}
