import { For } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { type Command, shownKey } from '../state/commands.ts';
import { AtHand } from './AtHand.tsx';
import { RecentFiles } from './RecentFiles.tsx';

const WAYS = [
  [
    'start.demo',
    en`One invented shop: two benches with their drives, a rack of 30 sprockets, three materials. Change whatever you like; it is a copy, and “invented example” stays on every print.`,
  ],
  [
    'start.empty',
    en`Pick one of five layouts, type the teeth that are on the machine, then the rack in one line, such as 40: 12-25, 28, 30x2, 36. Options appear as soon as a material is in.`,
  ],
  ['file.open', en`A file kept by you or a colleague. Damaged or newer files are named as such and never written over.`],
] as const;

/** What a newcomer sees: three ways to begin, beside what to have at hand. */
export function StartPage(props: { readonly commands: readonly Command[] }) {
  const ways = () => WAYS.flatMap(([id, what]) => props.commands.filter((one) => one.id === id).map((command) => ({ command, what })));
  return (
    <main id="main" class="two">
      <section aria-label={en`Start`}>
        <h1 class="t">{en`Nothing is open. Three ways to begin:`}</h1>
        <div class="ways">
          <For each={ways()}>
            {({ command, what }, index) => (
              <div>
                <button type="button" classList={{ pri: index() === 0 }} onClick={() => void command.run()}>
                  {command.title} <kbd>{shownKey(command)}</kbd>
                </button>
                <p>{what}</p>
              </div>
            )}
          </For>
          <RecentFiles />
        </div>
      </section>
      <AtHand />
    </main>
  );
}
