import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { asSheetCounts, fixed, offRatioText } from '../../../../core/src/index.ts';
import { offRatio } from '../../../../core/src/mixRatio.ts';
import { insideWord } from '../../../../core/src/optionWords.ts';
import { exactText, ONE, ratioOf } from '../../../../core/src/ratio.ts';
import { teethText } from '../../../../core/src/teethWords.ts';
import { useApp } from '../../state/app.ts';
import type { SentNear } from '../../state/messages.ts';
import type { Near } from '../../state/tried.ts';

/** The nearest ratios that can be built, each with the first option that makes it. */
export function NearRatios(props: { readonly near: Near; readonly behind: boolean }) {
  const app = useApp();
  const plan = () => props.near.plan;
  const limited = () => plan().mix.limits !== null;
  const pumps = () => plan().choice.anyPump;
  const pumpNames = ({ first }: SentNear) =>
    (['A', 'B'] as const).map((side) => plan().sides[side].pumps.find(({ id }) => id === first.pumps[side])?.name ?? '').join(', ');
  return (
    // It scrolls, so the keyboard must reach it.
    <section class="near" tabindex="0" aria-label={en`Nearest ratios`}>
      <table aria-busy={props.behind}>
        <caption>
          {en`Nearest to ${props.near.text}`}
          <Show when={limited()}>
            <small>{en`limits about this ratio`}</small>
          </Show>
          <Show when={props.behind}>
            <small>{en`searching`}</small>
          </Show>
        </caption>
        <thead>
          <tr>
            <th scope="col" class="num">
              A : B
            </th>
            <th scope="col" class="num">{en`B per 100 A`}</th>
            <th scope="col">{en`Off-ratio`}</th>
            <th scope="col" class="num">{en`Parts`}</th>
            <th scope="col">{en`First option`}</th>
            <Show when={pumps()}>
              <th scope="col">{en`Pumps`}</th>
            </Show>
          </tr>
        </thead>
        <tbody>
          <For each={props.near.rows} fallback={<Nothing columns={pumps() ? 6 : 5} />}>
            {(row) => {
              const made = ratioOf(...row.bPerA);
              return (
                <tr data-near={exactText(ONE.div(made))}>
                  <td class="num">{fixed(ONE.div(made), 4, app.say())}</td>
                  <td class="num">{fixed(asSheetCounts(plan(), made), 3, app.say())}</td>
                  <td class="nw">
                    {offRatioText(offRatio(made, props.near.wanted), app.say(), 3)}
                    <Show when={insideWord(row.inside)}>
                      {(word) => <small class={row.inside === true ? 'good' : 'bad'}> {word()}</small>}
                    </Show>
                  </td>
                  <td class="num">{row.partsChanged}</td>
                  <td class="nw">{teethText(row.first.teeth)}</td>
                  <Show when={pumps()}>
                    <td>{pumpNames(row)}</td>
                  </Show>
                </tr>
              );
            }}
          </For>
        </tbody>
      </table>
    </section>
  );
}

function Nothing(props: { readonly columns: number }) {
  return (
    <tr>
      <td colspan={props.columns}>{en`Nothing can be built near it.`}</td>
    </tr>
  );
}
