import { For } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { freshId } from '../../../../core/src/file/freshId.ts';
import type { SideName } from '../../../../core/src/index.ts';
import { SelectField } from '../../fields/SelectField.tsx';
import { useApp } from '../../state/app.ts';
import type { MachineForm } from './machineForm.ts';
import { PumpLine } from './PumpLine.tsx';

/** The pumps each side may carry, which of them is fitted, and on which shaft it sits. */
export function Pumps(props: { readonly form: MachineForm }) {
  return <For each={['A', 'B'] as const}>{(side) => <SidePumps form={props.form} side={side} />}</For>;
}

function SidePumps(props: { readonly form: MachineForm; readonly side: SideName }) {
  const app = useApp();
  const form = () => props.form;
  const side = () => form().row()[props.side];
  const add = () => {
    form().act(`${props.side}.pumps.add`, (row) => {
      row[props.side].pumps.push({ id: freshId(row[props.side].pumps, 'pump') });
    });
    app.goTo(form().place(props.side, 'pumps', side().pumps.length - 1, 'displacement'));
  };
  return (
    <div class="pumps">
      <div class="scrollx">
        <table>
          <caption>
            <span class={props.side === 'A' ? 'ca' : 'cb'}>{en`Pump ${props.side}`}</span>
          </caption>
          <thead>
            <tr>
              <th scope="col">{form().units().displacement}</th>
              <th scope="col">{en`Name`}</th>
              <th scope="col">± %</th>
              <th scope="col">{en`rpm from – to`}</th>
              <th scope="col">{en`Fitted`}</th>
              <th scope="col">
                <span class="heard">{en`Remove`}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            <For each={side().pumps}>
              {(pump, index) => <PumpLine form={form()} side={props.side} pump={pump} index={index()} only={side().pumps.length === 1} />}
            </For>
          </tbody>
        </table>
      </div>
      <div class="bar-of">
        <SelectField
          label={en`Pump ${props.side} sits on`}
          place={form().place(props.side, 'shaft')}
          value={side().shaft}
          options={form()
            .row()
            .shafts.map(({ id, name }) => [id, name ?? id] as const)}
          pick={(shaft) =>
            form().edit([props.side, 'shaft'], (row) => {
              row[props.side].shaft = shaft;
            })
          }
        />
        <button type="button" onClick={add}>
          {en`Add a pump ${props.side}`}
        </button>
      </div>
    </div>
  );
}
