import { createSignal, onCleanup, onMount, Show } from 'solid-js';
import '../style/help.css';
import { useApp } from '../state/app.ts';
import type { Command } from '../state/commands.ts';
import { createWalk } from './createWalk.ts';
import { HelpPanel } from './HelpPanel.tsx';
import { HelpPaper } from './HelpPaper.tsx';
import { WalkLine } from './WalkLine.tsx';

/** Help beside the page, and the first change at the foot of the window. */
export function Help(props: { readonly commands: readonly Command[] }) {
  const app = useApp();
  const walk = createWalk(app, () => props.commands);
  const [onPaper, putOnPaper] = createSignal(false);
  const print = (way: () => Promise<unknown>) => {
    putOnPaper(true);
    // What is printed must stand in the page first.
    requestAnimationFrame(() => {
      way()
        .catch((error: unknown) => app.tell(error instanceof Error ? error.message : String(error)))
        .finally(() => putOnPaper(false));
    });
  };
  onMount(() => {
    const close = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || event.defaultPrevented || app.help() === null || document.querySelector('dialog[open]') !== null)
        return;
      event.preventDefault();
      app.showHelp(null);
    };
    window.addEventListener('keydown', close);
    onCleanup(() => window.removeEventListener('keydown', close));
  });
  return (
    <>
      <div class="beside">
        <Show when={app.help() !== null}>
          <HelpPanel commands={props.commands} walk={walk} print={print} />
        </Show>
        <Show when={walk.at() !== null}>
          <WalkLine walk={walk} />
        </Show>
      </div>
      <Show when={onPaper()}>
        <HelpPaper commands={props.commands} />
      </Show>
    </>
  );
}
