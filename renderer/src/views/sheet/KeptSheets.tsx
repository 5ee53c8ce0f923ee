import { createSignal, For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { teethText } from '../../../../core/src/teethWords.ts';
import { visible } from '../../../../core/src/visible.ts';
import { useApp } from '../../state/app.ts';

/** Sheets as they were printed, newest first; what is kept never changes with the machine. */
export function KeptSheets() {
  const app = useApp();
  const [open, setOpen] = createSignal<string | null>(null);
  const kept = () => [...(app.shop.file?.changeSheets ?? [])].reverse();
  const nameOf = (rows: readonly { id: string; name: string }[] | undefined, id: string) =>
    visible(rows?.find((row) => row.id === id)?.name ?? id);
  return (
    <Show when={kept().length > 0}>
      <section class="kept" aria-label={en`Kept sheets`}>
        <h2>{en`Kept sheets`}</h2>
        <div class="scrollx">
          <table>
            <thead>
              <tr>
                <th scope="col">{en`Number`}</th>
                <th scope="col">{en`Printed`}</th>
                <th scope="col">{en`Machine`}</th>
                <th scope="col">{en`Material`}</th>
                <th scope="col">{en`Teeth`}</th>
                <th scope="col">{en`Fitted`}</th>
                <th scope="col">
                  <span class="heard">{en`What to do`}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              <For each={kept()}>
                {(one) => (
                  <>
                    <tr>
                      <td>{visible(one.number)}</td>
                      <td>{one.date}</td>
                      <td>{nameOf(app.shop.file?.machines, one.machine)}</td>
                      <td>{nameOf(app.shop.file?.materials, one.material)}</td>
                      <td>{teethText(one.mounted.teeth)}</td>
                      <td>{one.fittedOn ?? '–'}</td>
                      <td>
                        <button
                          type="button"
                          class="plain"
                          aria-expanded={open() === one.id}
                          onClick={() => setOpen(open() === one.id ? null : one.id)}
                        >
                          {open() === one.id ? en`Hide sheet ${visible(one.number)}` : en`Read sheet ${visible(one.number)}`}
                        </button>
                      </td>
                    </tr>
                    <Show when={open() === one.id}>
                      <tr>
                        <td colspan="7">
                          <pre>{one.lines.map(visible).join('\n')}</pre>
                        </td>
                      </tr>
                    </Show>
                  </>
                )}
              </For>
            </tbody>
          </table>
        </div>
      </section>
    </Show>
  );
}
