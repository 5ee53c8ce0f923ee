import { For, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { lengthUnit } from '../../../../core/src/format.ts';
import type { Stage } from '../../../../core/src/index.ts';
import { useApp } from '../../state/app.ts';
import type { Columns } from './columns.ts';

const SIDES: Readonly<Record<Stage['turns'], string>> = { A: 'A', B: 'B', both: en`A and B`, neither: en`no pump` };

export function TableHead(props: { readonly columns: Columns }) {
  const app = useApp();
  return (
    <thead>
      <tr>
        <th scope="col">
          <span class="heard">{en`Rank`}</span>
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
          {props.columns.limits ? en`Off-ratio against the limits` : en`Off-ratio`}
        </th>
        <th scope="col" class="num">{en`Parts`}</th>
        <th scope="col" class="num">{en`Min`}</th>
        <Show when={props.columns.buying}>
          <th scope="col" class="num">{en`Buy`}</th>
        </Show>
        <Show when={props.columns.pumps}>
          <th scope="col">{en`Pumps`}</th>
        </Show>
        <Show when={props.columns.geometry}>
          <th scope="col" class="num">{en`Pitches`}</th>
          <th scope="col" class="num nw centrecell">
            {en`Centre, ${lengthUnit(app.say())}`}
          </th>
        </Show>
        <th scope="col">{en`Findings`}</th>
      </tr>
    </thead>
  );
}
