import { For, Match, onCleanup, onMount, Switch } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { type HelpPart, useApp } from '../state/app.ts';
import type { Command } from '../state/commands.ts';
import { BoxHelp } from './BoxHelp.tsx';
import { CheckList } from './CheckList.tsx';
import type { Walk } from './createWalk.ts';
import { followFocus } from './followFocus.ts';
import { KeyList } from './KeyList.tsx';
import { WordSearch } from './WordSearch.tsx';

const PARTS: readonly (readonly [HelpPart, string])[] = [
  ['box', en`This box`],
  ['words', en`Words`],
  ['checks', en`Checks`],
  ['keys', en`Keys`],
];

interface PanelProps {
  readonly commands: readonly Command[];
  readonly walk: Walk;
  readonly print: (way: () => Promise<unknown>) => void;
}

/** Beside the page, never over it; the cursor stays where it is. */
export function HelpPanel(props: PanelProps) {
  const app = useApp();
  const focus = followFocus(app);
  let panel: HTMLElement | undefined;
  onMount(() => onCleanup(() => panel?.contains(document.activeElement) === true && focus.back()));
  return (
    <aside ref={panel} class="help" aria-label={en`Help`}>
      <div class="bar-of parts">
        <For each={PARTS}>
          {([part, words]) => (
            <button type="button" aria-pressed={app.help() === part} onClick={() => app.showHelp(part)}>
              {words}
            </button>
          )}
        </For>
        <button type="button" class="plain right" onClick={() => app.showHelp(null)}>
          {en`Close`} <kbd>{en`Esc`}</kbd>
        </button>
      </div>
      <Switch>
        <Match when={app.help() === 'box'}>
          <BoxHelp box={focus.element()} />
        </Match>
        <Match when={app.help() === 'words'}>
          <WordSearch />
        </Match>
        <Match when={app.help() === 'checks'}>
          <CheckList />
        </Match>
        <Match when={app.help() === 'keys'}>
          <KeyList commands={props.commands} />
        </Match>
      </Switch>
      <div class="bar-of block">
        <button type="button" onClick={() => void props.walk.begin()}>{en`First change, step by step`}</button>
        <button type="button" onClick={() => props.print(() => app.host.print())}>{en`Print all of help`}</button>
        <button type="button" onClick={() => props.print(() => app.host.savePdf('help.pdf', app.paper()))}>{en`Save help as PDF`}</button>
      </div>
    </aside>
  );
}
