import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { offRatioText } from '../../../../core/src/index.ts';
import { verdictHead } from '../../../../core/src/ratioCheckWords.ts';
import { visible } from '../../../../core/src/visible.ts';
import { download } from '../../host/download.ts';
import { useApp } from '../../state/app.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';

/** The kept checks of the machine, newest first, each as its own terms judge it. */
export function KeptChecks(props: { readonly state: RatioCheckState }) {
  const app = useApp();
  const materialOf = (id: string) => visible(app.shop.file?.materials.find((one) => one.id === id)?.name ?? id);
  const isOpen = (id: string) => props.state.opened()?.row.id === id;
  const write = async () => {
    const file = app.shop.snapshot();
    const { checksCsv } = await import('../../../../core/src/ratioCheck/checksCsv.ts');
    if (file !== null) download('ratio-checks.csv', checksCsv(file, app.say().decimal), 'text/csv');
  };
  return (
    <section class="block kept" aria-labelledby="keptchecks">
      <h2 id="keptchecks">{en`Kept ratio checks`}</h2>
      <Show when={props.state.kept().length > 0} fallback={<p class="faint">{en`None of this machine yet.`}</p>}>
        <div class="scrollx">
          <table>
            <thead>
              <tr>
                <th scope="col">{en`Day`}</th>
                <th scope="col">{en`Material`}</th>
                <th scope="col" class="num">{en`Off-ratio`}</th>
                <th scope="col">{en`Verdict`}</th>
                <th scope="col">
                  <span class="heard">{en`What to do`}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              <For each={props.state.kept()}>
                {({ row, evaluation }) => (
                  <tr data-check={row.id} aria-selected={isOpen(row.id)}>
                    <td class="nw">{row.date}</td>
                    <td>{materialOf(row.material)}</td>
                    <td class="num nw">{evaluation === null ? '–' : offRatioText(evaluation.offRatio.value, app.say())}</td>
                    <td class="nw">{evaluation === null ? en`cannot be judged` : verdictHead(evaluation.verdict)}</td>
                    <td>
                      <button
                        type="button"
                        class="plain"
                        aria-label={isOpen(row.id) ? en`Close the ratio check of ${row.date}` : en`Read the ratio check of ${row.date}`}
                        aria-expanded={isOpen(row.id)}
                        onClick={() => props.state.open(isOpen(row.id) ? null : row.id)}
                      >
                        {isOpen(row.id) ? en`Close` : en`Read`}
                      </button>
                    </td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
        <p class="gap">
          <button type="button" onClick={() => void write()}>{en`Write all kept checks as a CSV file`}</button>
        </p>
      </Show>
    </section>
  );
}
