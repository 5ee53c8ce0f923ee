import { Show } from 'solid-js';
import { useApp } from '../../state/app.ts';
import { createRatioCheck } from '../../state/ratioCheck.ts';
import '../../style/check.css';
import { Causes } from './Causes.tsx';
import { Delivery } from './Delivery.tsx';
import { KeptChecks } from './KeptChecks.tsx';
import { OpenedCheck } from './OpenedCheck.tsx';
import { Trends } from './Trends.tsx';
import { Verdict } from './Verdict.tsx';
import { WrittenCheck } from './WrittenCheck.tsx';

/** Weighing what each side delivers, unmixed: the verdict as it is typed, what may stand behind it, and how it went before. */
export function CheckPage() {
  const app = useApp();
  const state = createRatioCheck(app);
  return (
    <main id="main" class="two check">
      <section aria-label="Catches">
        <h1 class="heard">Ratio check</h1>
        <Show when={state.machine()} fallback={<p>There is no machine in this file yet: the Machine page takes one.</p>}>
          <Show when={state.opened()} fallback={<WrittenCheck state={state} />}>
            {(opened) => <OpenedCheck state={state} opened={opened()} />}
          </Show>
        </Show>
      </section>
      <section class="side" aria-label="What it tells">
        <Verdict shown={state.shown()} waiting={state.opened() === null ? (state.written()?.waiting ?? []) : []} />
        <Causes state={state} />
        <Delivery state={state} />
        <KeptChecks state={state} />
        <Trends state={state} />
      </section>
    </main>
  );
}
