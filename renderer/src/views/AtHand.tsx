import { For } from 'solid-js';
import { en } from '../../../core/src/en.ts';

const AT_HAND = [
  [en`Teeth of every sprocket in the train`, en`stamped on the hub, or counted`],
  [en`Displacement of both pumps, cc/rev`, en`pump plate or its data sheet`],
  [en`Centre distances, and how far they move`, en`measured on the machine`],
  [en`Chain number and count of pitches`, en`stamped on a side plate, or counted`],
  [en`What hangs on the rack`, en`a walk, or a CSV file`],
  [en`Mix ratio, by weight or by volume, and limits`, en`data sheet of the material`],
  [en`Density of both parts, and at what °C`, en`data sheet, or weigh 100 ml`],
] as const;

/** What to know before a machine is typed in. */
export function AtHand() {
  return (
    <section class="side" tabindex="0" aria-label={en`Before you start`}>
      <h2>{en`Have these at hand to start empty`}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{en`Figure`}</th>
            <th scope="col">{en`Where it is found`}</th>
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
      <p class="faint gap">{en`What you do not know may stay empty. A check that lacks its input notes that it was not made; it neither blocks nor passes.`}</p>
      <p class="faint gap">{en`Nothing leaves this computer; there is no network in the program. Work is kept in one file that you save where you like.`}</p>
    </section>
  );
}
