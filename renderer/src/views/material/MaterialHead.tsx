import { For } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { freshId } from '../../../../core/src/file/freshId.ts';
import { visible } from '../../../../core/src/visible.ts';
import { TextField } from '../../fields/index.tsx';
import { placeKey, useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import { editPart, type MaterialForm } from './materialForm.ts';
import { LIST_PLACE } from './PasteList.tsx';

/** Which material of the file is looked at, its name, and what its two components are called. */
export function MaterialHead(props: { readonly form: MaterialForm; readonly list: () => void }) {
  const form = () => props.form;
  const partName = (side: 'A' | 'B') => (
    <TextField
      label={en`Name of ${side}`}
      place={form().place(side, 'name')}
      value={form().row()[side].name}
      set={(name) => editPart(form(), side, ['name'], (part) => put(part, 'name', name))}
    />
  );
  return (
    <>
      <MaterialPick form={form()} list={props.list} />
      <div class="g3">
        <TextField
          label={en`Name of the material`}
          place={form().place('name')}
          value={form().row().name}
          set={(name) =>
            form().edit(['name'], (row) => {
              row.name = name ?? '';
            })
          }
        />
        {partName('A')}
        {partName('B')}
      </div>
    </>
  );
}

function MaterialPick(props: { readonly form: MaterialForm; readonly list: () => void }) {
  const app = useApp();
  const remove = () => {
    const { id } = props.form.row();
    app.shop.pause();
    app.shop.edit(`materials.remove.${id}`, (file) => {
      file.materials = file.materials.filter((row) => row.id !== id);
    });
    app.shop.pause();
  };
  return (
    <div class="bar-of pickline">
      <label>
        <span class="heard">{en`Material`}</span>
        <select name="pick.material" onChange={(event) => app.pickMaterial(event.currentTarget.selectedIndex)}>
          <For each={app.shop.file?.materials}>
            {(row, index) => (
              <option selected={index() === app.material()}>{row.name === '' ? en`unnamed (${row.id})` : visible(row.name)}</option>
            )}
          </For>
        </select>
      </label>
      <AddMaterial />
      <ListButton list={props.list} />
      <button type="button" onClick={remove}>{en`Remove this material`}</button>
    </div>
  );
}

export function AddMaterial() {
  const app = useApp();
  const add = () => {
    const rows = app.shop.file?.materials ?? [];
    const index = rows.length;
    const id = freshId(rows, 'material');
    app.shop.pause();
    app.shop.edit('materials.add', (file) => {
      file.materials.push({ id, name: en`Material ${id.replace('material-', '')}`, A: {}, B: {} });
    });
    app.shop.pause();
    app.goTo(['materials', index, 'name']);
    // The made-up name is to be typed over.
    requestAnimationFrame(() => document.activeElement instanceof HTMLInputElement && document.activeElement.select());
  };
  return <button type="button" data-place={placeKey(['materials'])} onClick={add}>{en`Add a material`}</button>;
}

export function ListButton(props: { readonly list: () => void }) {
  return <button type="button" data-place={LIST_PLACE} onClick={() => props.list()}>{en`Paste a list of materials`}</button>;
}
