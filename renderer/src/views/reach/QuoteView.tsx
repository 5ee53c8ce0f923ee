import { createEffect, createMemo, createSignal, onCleanup, onMount, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { QuoteRecord } from '../../../../core/src/file/quoteRecord.ts';
import type { MaterialReach } from '../../../../core/src/materialReach.ts';
import { quoteBody } from '../../../../core/src/quote/quote.ts';
import { useApp } from '../../state/app.ts';
import { createQuote } from '../../state/quote.ts';
import type { ReachState } from '../../state/reach.ts';
import { Paper } from '../sheet/Paper.tsx';
import { PrintTools } from '../sheet/PrintTools.tsx';
import { KeptQuotes } from './KeptQuotes.tsx';
import { QuoteFields } from './QuoteFields.tsx';
import '../../style/sheet.css';

/** The quote page of the window that is shown, as it prints, or one that was kept; printing keeps it in the shop file. */
export function QuoteView(props: { readonly reach: ReachState; readonly rows: readonly MaterialReach[]; readonly back: () => void }) {
  const app = useApp();
  const quote = createQuote(app, props.reach, () => props.rows);
  const [picked, pick] = createSignal<string | null>(null);
  // What undo took away is no longer shown.
  const again = createMemo((): QuoteRecord | null => quote.kept().find(({ id }) => id === picked()) ?? null);
  const shown = () => again() ?? quote.ready()?.record ?? null;
  const body = createMemo(() => {
    const record = shown();
    return record === null ? null : quoteBody(record);
  });
  const kept = () => {
    if (again() === null) quote.keep();
    return shown();
  };
  const print = async () => {
    if (kept() !== null) await app.host.print();
  };
  const pdf = async () => {
    const record = kept();
    if (record !== null) await app.host.savePdf(`quote-page-${record.number}.pdf`, app.paper());
  };
  onMount(() => app.printInstead(print));
  createEffect(() => {
    if (quote.ready() !== null) props.reach.findAdd();
  });
  onCleanup(() => app.printInstead(null));
  return (
    <main id="main" class="desk">
      <PrintTools words={printText()} disabled={body() === null} print={print} pdf={pdf}>
        <Show when={again() === null} fallback={<button type="button" onClick={() => pick(null)}>{en`Back to the new quote`}</button>}>
          <button type="button" disabled={quote.ready()?.isKept !== false} onClick={quote.keep}>{en`Keep this quote`}</button>
        </Show>
        <button type="button" onClick={() => props.back()}>{en`Back to reach`}</button>
        <span class="faint" role="status">
          {said()}
        </span>
      </PrintTools>
      <Show when={again() === null}>
        <QuoteFields />
      </Show>
      <Show when={body()} fallback={<p class="screen">{waiting()}</p>}>
        {(made) => <Paper body={made()} size={app.paper()} />}
      </Show>
      <KeptQuotes kept={quote.kept()} shown={again()} show={({ id }) => pick(id)} />
    </main>
  );
  function printText(): string {
    const number = shown()?.number;
    return number === undefined ? en`Print quote page` : en`Print quote page ${number}`;
  }
  function said(): string {
    if (again() !== null) return en`A kept quote page, as it was.`;
    if (quote.ready()?.isKept === true) return en`Kept as quote page ${shown()?.number}.`;
    const rest =
      props.reach.add() === null ? en` What might be added is being worked out; a page kept now says that it is not there yet.` : '';
    return en`One page, black and white. Printing keeps a copy of it in the shop file.${rest}`;
  }
  function waiting(): string {
    if (app.solution.plan()?.ok === true) return en`Working out the reach; the page follows.`;
    return en`The plan is not complete yet: the Options page says what is missing.`;
  }
}
