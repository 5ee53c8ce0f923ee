import { Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { freshId } from '../../../../core/src/file/freshId.ts';
import { SelectField } from '../../fields/SelectField.tsx';
import { placeKey, useApp } from '../../state/app.ts';
import type { MachineForm } from './machineForm.ts';
import { RackContent } from './RackContent.tsx';

/** The sprockets in stock: said in one line, as a table, or in a file for spreadsheets. */
export function Rack(props: { readonly form: MachineForm }) {
  const app = useApp();
  const racks = () => app.shop.file?.racks ?? [];
  const index = () => {
    const named = props.form.row().rack;
    // Where none is named, the only one there is is meant.
    return named === undefined ? (racks().length === 1 ? 0 : -1) : racks().findIndex(({ id }) => id === named);
  };
  const add = () => {
    const id = freshId(racks(), 'rack');
    app.shop.pause();
    app.shop.edit('racks.add', (file) => {
      file.racks.push({ id, name: en`Rack`, pieces: [] });
      const machine = file.machines[app.machine()];
      if (machine !== undefined) machine.rack = id;
    });
    app.shop.pause();
  };
  return (
    <div class="block rack">
      <div class="head">
        <h2>{en`Rack`}</h2>
        <Show when={racks().length > 1}>
          <SelectField
            bare
            label={en`Rack of this machine`}
            place={props.form.place('rack')}
            value={racks()[index()]?.id}
            options={racks().map(({ id, name }) => [id, name] as const)}
            pick={(id) =>
              props.form.edit(['rack'], (row) => {
                row.rack = id;
              })
            }
          />
        </Show>
      </div>
      <Show
        when={racks()[index()]?.id}
        keyed
        fallback={<button type="button" data-place={placeKey(props.form.place('rack'))} onClick={add}>{en`Add a rack`}</button>}
      >
        {(id) => <RackContent id={id} lengthUnit={props.form.units().length} />}
      </Show>
    </div>
  );
}
