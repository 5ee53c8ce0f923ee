import { createMemo, For, Show } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { fixed } from '../../../core/src/format.ts';
import { limitReadings } from '../../../core/src/help/limitReadings.ts';
import { DEFINITION_WORDS } from '../../../core/src/mixRatio.ts';
import { useApp } from '../state/app.ts';

/** What the limits in sight would allow by each reading: why their definition is asked for, in this material's own figures. */
export function LimitReadings(props: { readonly box: HTMLElement }) {
  const app = useApp();
  // They are in the file only once they are defined; until then they stand in their boxes.
  const typed = (end: string) =>
    props.box.closest('fieldset')?.querySelector<HTMLInputElement>(`[data-place$=".limits.${end}"]`)?.value ?? '';
  const readings = createMemo(() => {
    const { parts, perHundredA } = app.shop.file?.materials[app.material()]?.ratio ?? {};
    return limitReadings(parts ?? `100:${perHundredA ?? ''}`, typed('low'), typed('high'));
  });
  return (
    <Show when={readings().length > 1}>
      <table class="block">
        <caption>{en`${typed('low')} to ${typed('high')}, by each reading`}</caption>
        <thead>
          <tr>
            <th scope="col">{en`If they are`}</th>
            <th scope="col" class="num">{en`B per 100 A`}</th>
          </tr>
        </thead>
        <tbody>
          <For each={readings()}>
            {({ definition, leastB, mostB }) => (
              <tr>
                <td>{DEFINITION_WORDS[definition]}</td>
                <td class="num nw">{en`${fixed(leastB, 2, app.say())} to ${fixed(mostB, 2, app.say())}`}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </Show>
  );
}
