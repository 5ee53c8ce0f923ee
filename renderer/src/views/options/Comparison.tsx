import { For } from 'solid-js';
import { comparison } from '../../../../core/src/comparison.ts';
import { en } from '../../../../core/src/en.ts';
import type { Plan, PlannedOption } from '../../../../core/src/index.ts';
import { useApp } from '../../state/app.ts';

/** Fitted and chosen side by side; what differs is bold. */
export function Comparison(props: { readonly plan: Plan; readonly option: PlannedOption; readonly fitted: PlannedOption }) {
  const app = useApp();
  return (
    <section class="block scrollx" tabindex="0" aria-label={en`Fitted and chosen`}>
      <table class="compared">
        <caption>{en`Fitted and chosen`}</caption>
        <thead>
          <tr>
            <th scope="col">{en`Figure`}</th>
            <th scope="col" class="num">{en`Fitted`}</th>
            <th scope="col" class="num">{en`Chosen`}</th>
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
