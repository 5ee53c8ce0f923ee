import { For } from 'solid-js';
import { comparison } from '../../../../core/src/comparison.ts';
import type { Plan, PlannedOption } from '../../../../core/src/index.ts';
import { useApp } from '../../state/app.ts';

/** Fitted and chosen side by side; what differs is bold. */
export function Comparison(props: { readonly plan: Plan; readonly option: PlannedOption; readonly fitted: PlannedOption }) {
  const app = useApp();
  return (
    <section class="block scrollx" tabindex="0" aria-label="Fitted and chosen">
      <table class="compared">
        <caption>Fitted and chosen</caption>
        <thead>
          <tr>
            <th scope="col">Figure</th>
            <th scope="col" class="num">
              Fitted
            </th>
            <th scope="col" class="num">
              Chosen
            </th>
          </tr>
        </thead>
        <tbody>
          <For each={comparison(props.plan, props.fitted, props.option, app.say())}>
            {(row) => (
              <tr>
                <td>{row.what}</td>
                <td class="num nw">{row.fitted}</td>
                <td class="num nw" classList={{ new: row.differs }}>
                  {row.chosen}
                </td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </section>
  );
}
