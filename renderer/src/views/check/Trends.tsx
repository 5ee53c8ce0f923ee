import { createMemo, For, Show } from 'solid-js';
import { type CheckTrend, checkTrends } from '../../../../core/src/checkTrends.ts';
import { useApp } from '../../state/app.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';

/** Deliveries and off-ratio from check to check: drawn, with the same figures in a table. */
export function Trends(props: { readonly state: RatioCheckState }) {
  const app = useApp();
  const trends = createMemo((): readonly CheckTrend[] => {
    const [slow, row] = [props.state.slow(), props.state.asked()];
    const machine = props.state.machine();
    return slow === null || row === null || machine === undefined ? [] : checkTrends(slow, row, machine, app.say());
  });
  return (
    <Show when={trends().length > 0}>
      <section class="block trends" aria-labelledby="trends">
        <h2 id="trends">From check to check</h2>
        <For each={trends()}>
          {(trend) => (
            <figure>
              {/* Made by core: every word of the user is escaped there. */}
              <div innerHTML={trend.svg} />
              <Show when={trend.meeting}>{(text) => <figcaption>{text()}</figcaption>}</Show>
            </figure>
          )}
        </For>
        <Figures trends={trends()} />
      </section>
    </Show>
  );
}

function Figures(props: { readonly trends: readonly CheckTrend[] }) {
  const days = () => props.trends[0]?.figures ?? [];
  return (
    <details>
      <summary>The same as a table</summary>
      <div class="scrollx">
        <table>
          <thead>
            <tr>
              <th scope="col">Day</th>
              <For each={props.trends}>
                {(trend) => (
                  <th scope="col" class="num">
                    {trend.title}
                  </th>
                )}
              </For>
            </tr>
          </thead>
          <tbody>
            <For each={days()}>
              {(day) => (
                <tr>
                  <td class="nw">{day.date}</td>
                  <For each={props.trends}>
                    {(trend) => <td class="num nw">{trend.figures.find(({ check }) => check === day.check)?.figure ?? '–'}</td>}
                  </For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
    </details>
  );
}
