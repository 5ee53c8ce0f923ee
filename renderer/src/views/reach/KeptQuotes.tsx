import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { QuoteRecord } from '../../../../core/src/file/quoteRecord.ts';
import { keptWindowText } from '../../../../core/src/quote/kept.ts';
import { visible } from '../../../../core/src/visible.ts';
import { useApp } from '../../state/app.ts';

/** Quote pages as they were kept, newest first; each can be shown and printed again. */
export function KeptQuotes(props: {
  readonly kept: readonly QuoteRecord[];
  readonly shown: QuoteRecord | null;
  readonly show: (quote: QuoteRecord) => void;
}) {
  const app = useApp();
  return (
    <Show when={props.kept.length > 0}>
      <section class="kept" aria-label={en`Kept quote pages`}>
        <h2>{en`Kept quote pages`}</h2>
        <div class="scrollx">
          <table>
            <thead>
              <tr>
                <th scope="col">{en`Number`}</th>
                <th scope="col">{en`Kept on`}</th>
                <th scope="col">{en`Machine`}</th>
                <th scope="col">{en`For`}</th>
                <th scope="col">{en`Window`}</th>
                <th scope="col">{en`Valid until`}</th>
                <th scope="col">
                  <span class="heard">{en`Show again`}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              <For each={props.kept}>
                {(one) => (
                  <tr data-quote={one.number}>
                    <td>{visible(one.number)}</td>
                    <td class="nw">{one.date}</td>
                    <td>{visible(one.page.machine)}</td>
                    <td>{visible(one.customer ?? '–')}</td>
                    <td class="nw">{keptWindowText(one, app.say())}</td>
                    <td class="nw">{one.validUntil ?? en`changes`}</td>
                    <td>
                      <button type="button" class="plain" disabled={props.shown?.id === one.id} onClick={() => props.show(one)}>
                        {props.shown?.id === one.id ? en`Shown above` : en`Show quote page ${visible(one.number)}`}
                      </button>
                    </td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
      </section>
    </Show>
  );
}
