import { For } from 'solid-js';

const AT_HAND = [
  ['Teeth of every sprocket in the train', 'stamped on the hub, or counted'],
  ['Displacement of both pumps, cc/rev', 'pump plate or its data sheet'],
  ['Centre distances, and how far they move', 'measured on the machine'],
  ['Chain number and count of pitches', 'stamped on a side plate, or counted'],
  ['What hangs on the rack', 'a walk, or a CSV file'],
  ['Mix ratio, by weight or by volume, and limits', 'data sheet of the material'],
  ['Density of both parts, and at what °C', 'data sheet, or weigh 100 ml'],
] as const;

/** What to know before a machine is typed in. */
export function AtHand() {
  return (
    <section class="side" tabindex="0" aria-label="Before you start">
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
  );
}
