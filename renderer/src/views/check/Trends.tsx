import { createMemo, For, Show } from 'solid-js';
import { checkCharts } from '../../../../core/src/checkCharts.ts';
import { en } from '../../../../core/src/en.ts';
import { meetingTexts, trendTable } from '../../../../core/src/trendTable.ts';
import { useApp } from '../../state/app.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';

/** On the page a millimetre of the drawing is stretched to the width there is. */
const SIZE = { width_mm: 84, height_mm: 42 };

/** Deliveries and off-ratio from check to check: drawn, with the same figures in a table. */
export function Trends(props: { readonly state: RatioCheckState }) {
  const app = useApp();
  const charts = createMemo(() => {
    const [file, judged] = [app.shop.file, props.state.judged()];
    return file === null || judged === null ? [] : checkCharts(file, judged, app.say(), SIZE);
  });
  const meetings = () => {
    const judged = props.state.judged();
    return judged === null ? [] : meetingTexts(judged, app.say());
  };
  return (
    <Show when={charts().length > 0}>
      <section class="block trends" aria-labelledby="trends">
        <h2 id="trends">{en`From check to check`}</h2>
        <For each={meetings()}>{(text) => <p>{text}</p>}</For>
        {/* Made by core: every word of the user is escaped there. */}
        <For each={charts()}>{({ svg }) => <figure innerHTML={svg} />}</For>
        <Figures state={props.state} />
      </section>
    </Show>
  );
}

function Figures(props: { readonly state: RatioCheckState }) {
  const app = useApp();
  const rows = () => {
    const judged = props.state.judged();
    return judged === null ? [] : trendTable(judged, app.say());
  };
  return (
    <details>
      <summary>{en`The same as a table`}</summary>
      <section class="scrollx" tabindex="0" aria-label={en`The same as a table`}>
        <table>
          <thead>
            <tr>
              <th scope="col">{en`Day`}</th>
              <th scope="col" class="num ca">{en`Pump A`}</th>
              <th scope="col" class="num cb">{en`Pump B`}</th>
              <th scope="col" class="num">{en`Off-ratio, + is B-rich`}</th>
            </tr>
          </thead>
          <tbody>
            <For each={rows()}>
              {(row) => (
                <tr>
                  <td class="nw">{row.date}</td>
                  <For each={[row.A, row.B, row.offRatio]}>{(figure) => <td class="num nw">{figure ?? '–'}</td>}</For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </section>
    </details>
  );
}
