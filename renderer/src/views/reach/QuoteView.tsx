import { createEffect, createMemo, createSignal, onCleanup, onMount, Show } from 'solid-js';
import type { MaterialReach } from '../../../../core/src/materialReach.ts';
import { type QuotedMaterial, quoteOf } from '../../../../core/src/quote.ts';
import { quotePageBody } from '../../../../core/src/sheet/quotePage.ts';
import { useApp } from '../../state/app.ts';
import { today } from '../../state/keepSheet.ts';
import type { ReachState } from '../../state/reach.ts';
import { Paper } from '../sheet/Paper.tsx';
import { PaperChoice } from '../sheet/PaperChoice.tsx';
import '../../style/sheet.css';

/** The quote page of the window that is shown, as it prints. */
export function QuoteView(props: { readonly reach: ReachState; readonly rows: readonly MaterialReach[]; readonly back: () => void }) {
  const app = useApp();
  const [number, setNumber] = createSignal('');
  const materials = (): readonly QuotedMaterial[] =>
    props.reach.materials().flatMap(({ id, plan }) => {
      const row = props.rows.find((one) => one.id === id);
      return plan === null || row === undefined ? [] : [{ plan, row }];
    });
  /** No page is made of figures that another window or another plan stands behind. */
  const body = createMemo(() => {
    const found = props.reach.found();
    const known = props.reach.materials().every(({ id, plan }) => plan === null || props.reach.best(id) !== undefined);
    if (found === null || !props.reach.current() || !known) return null;
    const about = {
      number: number().trim() || 'unnumbered',
      date: today(),
      file: app.shop.name,
      say: app.say(),
      add: props.reach.add() ?? [],
    };
    const { page, rule } = quoteOf(found.plan, found.reach, materials(), about);
    return quotePageBody(page, rule.svg, rule.height_mm);
  });
  const print = async () => {
    if (body() !== null) await app.host.print();
  };
  const guarded = (work: () => Promise<unknown>) => () => {
    work().catch((error: unknown) => app.tell(error instanceof Error ? error.message : String(error)));
  };
  const pdf = guarded(() => app.host.savePdf(`quote-page-${number().replace(/[^\w-]+/g, '-') || today()}.pdf`, app.paper()));
  onMount(() => app.printInstead(print));
  createEffect(() => {
    if (body() !== null) props.reach.findAdd();
  });
  onCleanup(() => app.printInstead(null));
  return (
    <main id="main" class="desk">
      <div class="tools screen">
        <button type="button" class="pri" disabled={body() === null} onClick={guarded(print)}>
          Print quote page
        </button>
        <button type="button" disabled={body() === null} onClick={pdf}>
          Save as PDF
        </button>
        <PaperChoice />
        <label class="choice">
          Number
          <input type="text" size="10" maxlength="24" value={number()} onInput={(event) => setNumber(event.currentTarget.value)} />
        </label>
        <button type="button" onClick={() => props.back()}>
          Back to reach
        </button>
        <span class="faint">
          One page, black and white.{props.reach.add() === null ? ' What might be added to the rack is being worked out.' : ''}
        </span>
      </div>
      <Show when={body()} fallback={<p class="screen">Working out the reach; the page follows.</p>}>
        {(made) => <Paper body={made()} size={app.paper()} />}
      </Show>
    </main>
  );
}
