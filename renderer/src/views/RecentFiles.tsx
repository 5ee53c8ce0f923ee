import { createSignal, For, onMount, Show } from 'solid-js';
import type { RecentFile } from '../host/host.ts';
import { sentenceOf, useApp } from '../state/app.ts';

/** Files that were open before, where the host keeps such a list. */
export function RecentFiles() {
  const app = useApp();
  const [recent, setRecent] = createSignal<readonly RecentFile[]>([]);
  onMount(async () => setRecent(await app.host.recent()));
  const open = async (token: string) => {
    try {
      const file = await app.host.openRecent(token);
      app.take(file.text, file.name, file.token);
    } catch (error) {
      app.tell(sentenceOf(error));
    }
  };
  return (
    <Show when={recent().length > 0}>
      <div>
        <h2>Open again</h2>
        <ul class="recent">
          <For each={recent()}>
            {({ name, token }) => (
              <li>
                <button type="button" class="plain" onClick={() => void open(token)}>
                  {name}
                </button>
              </li>
            )}
          </For>
        </ul>
      </div>
    </Show>
  );
}
