import { For } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import type { Command } from '../state/commands.ts';
import { RecentFiles } from './beside.ts';

const WAYS = [
  [
    'start.demo',
    'One invented shop: two benches with their drives, a rack of 30 sprockets, three materials. Change whatever you like; it is a copy, and “invented example” stays on every print.',
  ],
  [
    'start.empty',
    'Pick one of five layouts, type the teeth that are on the machine, then the rack in one line, such as 40: 12-25, 28, 30x2, 36. Options appear as soon as a material is in.',
  ],
  ['file.open', 'A file kept by you or a colleague. Damaged or newer files are named as such and never written over.'],
] as const;

const AT_HAND = [
  ['Teeth of every sprocket in the train', 'stamped on the hub, or counted'],
  ['Displacement of both pumps, cc/rev', 'pump plate or its data sheet'],
  ['Centre distances, and how far they move', 'measured on the machine'],
  ['Chain number and count of pitches', 'stamped on a side plate, or counted'],
  ['What hangs on the rack', 'a walk, or a CSV file'],
  ['Mix ratio, by weight or by volume, and limits', 'data sheet of the material'],
  ['Density of both parts, and at what °C', 'data sheet, or weigh 100 ml'],
] as const;

/** What a newcomer sees: three ways to begin, and what to have at hand. */
export function StartPage(props: { readonly commands: readonly Command[] }) {
  return (
    <main id="main" class="two">
      <section aria-label="Start">
        <h1 class="t">Nothing is open. Three ways to begin:</h1>
        <div class="ways">
          <For each={WAYS}>
            {([id, what], index) => {
              const command = () => props.commands.find((one) => one.id === id);
              return (
                <div>
                  <button type="button" classList={{ pri: index() === 0 }} onClick={() => void command()?.run()}>
                    {command()?.title} <kbd>{command()?.key}</kbd>
                  </button>
                  <p>{what}</p>
                </div>
              );
            }}
          </For>
          <Dynamic component={RecentFiles.get()} />
        </div>
      </section>
      <section class="side" aria-label="Before you start">
        <h2>Have these at hand to start empty</h2>
        <table>
          <thead>
            <tr>
              <th scope="col">Figure</th>
              <th scope="col">Where it is found</th>
            </tr>
          </thead>
          <tbody>
            <For each={AT_HAND}>
              {([figure, place]) => (
                <tr>
                  <td>{figure}</td>
                  <td>{place}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
        <p class="faint gap">
          What you do not know may stay empty. A check that lacks its input notes that it was not made; it neither blocks nor passes.
        </p>
        <p class="faint gap">
          Nothing leaves this computer; there is no network in the program. Work is kept in one file that you save where you like.
        </p>
      </section>
    </main>
  );
}
