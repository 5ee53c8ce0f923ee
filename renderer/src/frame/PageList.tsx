import { For, Show } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { visible } from '../../../core/src/visible.ts';
import { PAGES, useApp } from '../state/app.ts';
import { type Command, shownKey } from '../state/commands.ts';

/** A name is the same in every language. */
const PROGRAM = 'Ratiowright';

/** Short ones that stand two in a line. */
const PAIRED: ReadonlySet<string> = new Set(['file.save', 'file.saveAs', 'edit.undo', 'edit.redo']);

/** The pages, what is open, and how numbers are read. */
export function PageList(props: { readonly commands: readonly Command[] }) {
  const app = useApp();
  const command = (id: string) => props.commands.find((one) => one.id === id);
  const number = (id: string) => command(id)?.key?.split('+').at(-1);
  return (
    <nav aria-label={en`Pages`}>
      <b>{PROGRAM}</b>
      <Show when={app.shop.file !== null}>
        <small>
          {visible(app.shop.name)} <span class="nw">· {app.shop.unsaved ? en`not saved` : en`saved`}</span>
        </small>
        <ul>
          <For each={PAGES}>
            {(page) => (
              <li>
                <button type="button" class="page" aria-current={app.page() === page ? 'page' : undefined} onClick={() => app.show(page)}>
                  {command(`page.${page}`)?.title} <kbd>{number(`page.${page}`)}</kbd>
                </button>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <div class="work">
        <For each={props.commands.filter(({ id, key }) => /^(file|edit|help)/.test(id) && (key !== null || id === 'help.about'))}>
          {(one) => (
            <button
              type="button"
              class="page"
              classList={{ pair: PAIRED.has(one.id) }}
              disabled={!one.when()}
              onClick={() => void one.run()}
              title={shownKey(one) ?? undefined}
            >
              {one.title}
            </button>
          )}
        </For>
      </div>
      <footer>
        <Show when={app.shop.file?.shop.invented}>
          <small class="new">{en`Invented example`}</small>
        </Show>
        <label class="setting">
          <span class="k">{en`Lengths`}</span>
          <select
            name="lengths"
            value={app.say().system}
            onChange={(event) => app.setSay({ ...app.say(), system: event.currentTarget.value === 'inch' ? 'inch' : 'metric' })}
          >
            <option value="metric">{en`metric`}</option>
            <option value="inch">{en`inch`}</option>
          </select>
        </label>
        <label class="setting">
          <span class="k">{en`Decimals`}</span>
          <select
            name="decimals"
            value={app.say().decimal}
            onChange={(event) => app.setSay({ ...app.say(), decimal: event.currentTarget.value === ',' ? ',' : '.' })}
          >
            <option value=".">{en`point`}</option>
            <option value=",">{en`comma`}</option>
          </select>
        </label>
      </footer>
    </nav>
  );
}
