import { For, Show } from 'solid-js';
import { lengthUnit } from '../../../../core/src/format.ts';
import type { Stage } from '../../../../core/src/index.ts';
import { useApp } from '../../state/app.ts';
import type { Columns } from './columns.ts';

const SIDES: Readonly<Record<Stage['turns'], string>> = { A: 'A', B: 'B', both: 'A and B', neither: 'no pump' };

export function TableHead(props: { readonly columns: Columns }) {
  const app = useApp();
  return (
    <thead>
      <tr>
        <th scope="col">
          <span class="heard">Rank</span>
        </th>
        <For each={props.columns.stages}>
          {(stage) => (
            <th scope="col" classList={{ ca: stage.turns === 'A', cb: stage.turns === 'B' }}>
              {SIDES[stage.turns]}: {stage.name}
            </th>
          )}
        </For>
        <th scope="col" class="num">
          A : B
        </th>
        <th scope="col" colspan="2">
          {props.columns.limits ? 'Off-ratio against the limits' : 'Off-ratio'}
        </th>
        <th scope="col" class="num">
          Parts
        </th>
        <th scope="col" class="num">
          Min
        </th>
        <Show when={props.columns.buying}>
          <th scope="col" class="num">
            Buy
          </th>
        </Show>
        <Show when={props.columns.pumps}>
          <th scope="col">Pumps</th>
        </Show>
        <Show when={props.columns.geometry}>
          <th scope="col" class="num">
            Pitches
          </th>
          <th scope="col" class="num nw centrecell">
            Centre, {lengthUnit(app.say())}
          </th>
        </Show>
        <th scope="col">Findings</th>
      </tr>
    </thead>
  );
}
