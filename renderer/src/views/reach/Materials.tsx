import { For, Show } from 'solid-js';
import { VERDICT_WORDS } from '../../../../core/src/budget.ts';
import { en } from '../../../../core/src/en.ts';
import type { MaterialReach } from '../../../../core/src/materialReach.ts';
import { insideWord } from '../../../../core/src/optionWords.ts';
import type { ReachState } from '../../state/reach.ts';
import { VERDICT_COLOURS } from '../options/VerdictWord.tsx';
import { BestFiles } from './BestFiles.tsx';

/** What the flags of the rule say, as a table: every material of the shop file with the best option this machine has for it. */
export function Materials(props: { readonly reach: ReachState; readonly rows: readonly MaterialReach[] }) {
  const untold = () => props.reach.materials().filter(({ plan }) => plan === null);
  return (
    // It scrolls, so the keyboard must reach it.
    <section class="scrollx" tabindex="0" aria-label={en`Materials`}>
      <table class="materials">
        <caption>{en`Materials of the shop file, each with its best option`}</caption>
        <thead>
          <tr>
            <th scope="col">{en`Material`}</th>
            <th scope="col" class="num">{en`Wanted, by volume`}</th>
            <th scope="col">{en`Limits`}</th>
            <th scope="col">{en`Best option`}</th>
            <th scope="col">{en`Off-ratio`}</th>
            <th scope="col">{en`In the worst case`}</th>
            <th scope="col">{en`Teeth`}</th>
            <th scope="col">{en`Flow of A and B`}</th>
          </tr>
        </thead>
        <tbody>
          <For each={props.rows}>
            {(row) => (
              <tr data-material={row.id}>
                <th scope="row">{row.name}</th>
                <td class="num nw">{row.wanted}</td>
                <td class="nw">{row.limits}</td>
                <Show
                  when={row.best}
                  fallback={<td colspan="5">{props.reach.best(row.id) === undefined ? en`not known yet` : en`nothing can be built`}</td>}
                >
                  {(best) => (
                    <>
                      <td class="nw">{best().ratio}</td>
                      <td class="nw">
                        {best().offRatio}
                        <Show when={insideWord(best().inside)}>
                          {(word) => <small class={best().inside === true ? 'good' : 'bad'}> {word()}</small>}
                        </Show>
                      </td>
                      <td class="nw">
                        {best().worstCase ?? en`not known`}
                        <Show when={best().verdict}>
                          {(verdict) => <small class={VERDICT_COLOURS[verdict()]}> {VERDICT_WORDS[verdict()]}</small>}
                        </Show>
                      </td>
                      <td class="nw">{best().teeth}</td>
                      <td class="nw">{best().flow}</td>
                    </>
                  )}
                </Show>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <Show when={untold().length > 0}>
        <p class="faint">
          {en`Not complete yet: ${untold()
            .map(({ name }) => name)
            .join(', ')}. The Material page says what is missing.`}
        </p>
      </Show>
      <BestFiles reach={props.reach} />
    </section>
  );
}
