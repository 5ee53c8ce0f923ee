import { For } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { Plan, PlannedOption } from '../../../../core/src/index.ts';
import { stageFacts } from '../../../../core/src/stageFacts.ts';
import { useApp } from '../../state/app.ts';

/** Stage by stage: what is there, what will be, and where it comes from. */
export function Stages(props: { readonly plan: Plan; readonly option: PlannedOption; readonly fitted: PlannedOption }) {
  const app = useApp();
  const facts = () =>
    props.option.stages.flatMap((stage, index) => {
      const now = props.fitted.stages[index];
      return now === undefined ? [] : [stageFacts(props.plan, stage, now, app.say())];
    });
  return (
    <For each={facts()}>
      {(stage) => (
        <section class="block scrollx" tabindex="0" aria-label={stage.title}>
          <table class="facts-of">
            <caption>{stage.title}</caption>
            <thead>
              <tr>
                <th scope="col">{en`Of the stage`}</th>
                <th scope="col" class="num">{en`Now`}</th>
                <th scope="col" class="num">{en`After`}</th>
                <th scope="col">
                  <span class="heard">{en`What to do`}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              <For each={stage.rows}>
                {(row) => (
                  <tr>
                    <td>{row.what}</td>
                    <td class="num nw faint">{row.now}</td>
                    <td class="num nw" classList={{ new: row.isNew }}>
                      {row.after}
                    </td>
                    <td class="faint">{row.note}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </section>
      )}
    </For>
  );
}
