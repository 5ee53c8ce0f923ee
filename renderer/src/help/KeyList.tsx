import { For } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import type { Command } from '../state/commands.ts';
import { KEY_PLACES, keyName, PAGE_KEYS } from './pageKeys.ts';

/** Keys of the commands everywhere, then those of the pages. */
export function keyGroups(
  commands: readonly Command[],
): readonly (readonly [title: string, keys: readonly (readonly [key: string, what: string])[]])[] {
  const everywhere = commands.flatMap(({ key, title }) => (key === null ? [] : [[key, title] as const]));
  const pages = Object.entries(PAGE_KEYS).map(([at, keys]) => [at, Object.entries<string>(keys)] as const);
  return [
    [en`everywhere; single letters outside boxes only`, everywhere],
    ...pages.map(([at, keys]) => [KEY_PLACES[at] ?? at, keys] as const),
  ];
}

export function KeyList(props: { readonly commands: readonly Command[] }) {
  return (
    <>
      <h2>{en`Keys`}</h2>
      <For each={keyGroups(props.commands)}>
        {([title, keys]) => (
          <div class="block">
            <h3>{title}</h3>
            <dl class="keys">
              <For each={keys}>
                {([key, what]) => (
                  <>
                    <dt>
                      <kbd>{keyName(key)}</kbd>
                    </dt>
                    <dd>{what}</dd>
                  </>
                )}
              </For>
            </dl>
          </div>
        )}
      </For>
    </>
  );
}
