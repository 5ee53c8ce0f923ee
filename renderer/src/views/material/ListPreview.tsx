import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { listedWords, type MaterialList } from '../../../../core/src/file/materialCsv/index.ts';
import type { Say } from '../../../../core/src/index.ts';
import { visible } from '../../../../core/src/visible.ts';

/** What was understood of the list, and every fault of it. */
export function ListPreview(props: { readonly list: MaterialList; readonly say: Say }) {
  return (
    <>
      <Show when={props.list.faults.length > 0}>
        <section class="scrollx" tabindex="0" aria-label={en`Faults`}>
          <table class="faults">
            <caption>{en`To be mended in the list above`}</caption>
            <thead>
              <tr>
                <th scope="col" class="num">{en`Line`}</th>
                <th scope="col">{en`Column`}</th>
                <th scope="col">{en`What was expected`}</th>
              </tr>
            </thead>
            <tbody>
              <For each={props.list.faults}>
                {({ line, column, what }) => (
                  <tr>
                    <td class="num">{line}</td>
                    <td class="nw">{column ?? '–'}</td>
                    <td>{what}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </section>
      </Show>
      <For each={props.list.notes}>{(note) => <p class="gap">{note}</p>}</For>
      <Show when={props.list.materials.length > 0}>
        <section class="scrollx" tabindex="0" aria-label={en`Materials of the list`}>
          <table class="listed">
            <caption>{en`As it was understood`}</caption>
            <thead>
              <tr>
                <th scope="col" class="num">{en`Line`}</th>
                <th scope="col">{en`Material`}</th>
                <th scope="col">{en`Ratio, A : B`}</th>
                <th scope="col" class="num">{en`By volume as run`}</th>
                <th scope="col">{en`Limits`}</th>
                <th scope="col">{en`To know`}</th>
              </tr>
            </thead>
            <tbody>
              <For each={props.list.materials}>
                {(one) => {
                  const words = () => listedWords(one, props.say);
                  return (
                    <tr>
                      <td class="num">{one.line}</td>
                      <th scope="row">{visible(one.material.name)}</th>
                      <td class="nw">{words().ratio}</td>
                      <td class="num nw">{words().byVolume}</td>
                      <td class="nw">{words().limits}</td>
                      <td>{one.notes.join(' ') || '–'}</td>
                    </tr>
                  );
                }}
              </For>
            </tbody>
          </table>
        </section>
      </Show>
    </>
  );
}
