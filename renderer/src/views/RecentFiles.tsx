import { createSignal, For, onMount, Show } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { visible } from '../../../core/src/visible.ts';
import type { RecentFile } from '../host/host.ts';
import { sentenceOf, useApp } from '../state/app.ts';

/** Files that were open before, where the host keeps such a list. */
export function RecentFiles() {
  const app = useApp();
  const [recent, setRecent] = createSignal<readonly RecentFile[]>([]);
  const tell = (error: unknown) => app.tell(sentenceOf(error));
  onMount(() => app.host.recent().then(setRecent, tell));
  const open = async (token: string) => {
    try {
      app.take(await app.host.openRecent(token));
    } catch (error) {
      tell(error);
    }
  };
  return (
    <Show when={recent().length > 0}>
      <div>
        <h2>{en`Open again`}</h2>
        <ul class="recent">
          <For each={recent()}>
            {({ name, token }) => (
              <li>
                <button type="button" class="plain" onClick={() => void open(token)}>
                  {visible(name)}
                </button>
              </li>
            )}
          </For>
        </ul>
      </div>
    </Show>
  );
}
