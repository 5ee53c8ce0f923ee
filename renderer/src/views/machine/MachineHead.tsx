import { For } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { freshId } from '../../../../core/src/file/freshId.ts';
import { machineTrouble } from '../../../../core/src/file/machineTrouble.ts';
import { type RangeEntry, rangeText, readWindowEntry } from '../../../../core/src/range.ts';
import { visible } from '../../../../core/src/visible.ts';
import { QuantityField, TextField } from '../../fields/index.tsx';
import { placeKey, useApp } from '../../state/app.ts';
import { layoutOf } from '../../state/layouts.ts';
import { put } from '../../state/put.ts';
import type { MachineForm } from './machineForm.ts';
import { ReadField } from './ReadField.tsx';

const USABLE: RangeEntry = { dimension: 'share', unit: '%', example: '20 to 100' };

/** Which machine of the file is looked at, its name and its motor. */
export function MachineHead(props: { readonly form: MachineForm }) {
  const app = useApp();
  const form = () => props.form;
  const motor = () => form().row().motor;
  return (
    <>
      <h1 class="heard">{en`Machine`}</h1>
      <MachinePick form={form()} />
      <div class="headfields">
        <TextField
          label={en`Name of the machine`}
          place={form().place('name')}
          value={form().row().name}
          set={(name) =>
            form().edit(['name'], (row) => {
              row.name = name ?? '';
            })
          }
        />
        <QuantityField
          label={en`Motor speed, rpm`}
          hint={en`at 100 %`}
          place={form().place('motor', 'speed')}
          dimension="speed"
          unit="rpm"
          value={motor().speed}
          check={(speed) => machineTrouble({ motor: { speed } })}
          set={(speed) => form().edit(['motor', 'speed'], (row) => put(row.motor, 'speed', speed))}
        />
        <ReadField
          label={en`Usable range, %`}
          place={form().place('motor', 'usable')}
          value={motor().usable}
          read={(text) => readWindowEntry(USABLE, text, app.say())}
          write={(usable) => rangeText('share', usable, USABLE.unit)}
          check={(usable) => machineTrouble({ motor: { usable } })}
          set={(usable) => form().edit(['motor', 'usable'], (row) => put(row.motor, 'usable', usable))}
        />
        <QuantityField
          label={en`Dial step, %`}
          place={form().place('motor', 'dialStep')}
          dimension="share"
          unit="%"
          value={motor().dialStep}
          check={(dialStep) => machineTrouble({ motor: { dialStep } })}
          set={(step) => form().edit(['motor', 'dialStep'], (row) => put(row.motor, 'dialStep', step))}
        />
        <QuantityField
          label={en`Rated torque, ${form().units().torque}`}
          hint={en`at its output shaft`}
          place={form().place('motor', 'ratedTorque')}
          dimension="torque"
          unit={form().units().torque}
          value={motor().ratedTorque}
          check={(ratedTorque) => machineTrouble({ motor: { ratedTorque } })}
          set={(torque) => form().edit(['motor', 'ratedTorque'], (row) => put(row.motor, 'ratedTorque', torque))}
        />
      </div>
    </>
  );
}

function MachinePick(props: { readonly form: MachineForm }) {
  const app = useApp();
  const remove = () => {
    const { id } = props.form.row();
    app.shop.pause();
    app.shop.edit(`machines.remove.${id}`, (file) => {
      file.machines = file.machines.filter((row) => row.id !== id);
    });
    app.shop.pause();
  };
  return (
    <div class="bar-of pickline">
      <label>
        <span class="heard">{en`Machine`}</span>
        <select name="pick.machine" onChange={(event) => app.pickMachine(event.currentTarget.selectedIndex)}>
          <For each={app.shop.file?.machines}>
            {(row, index) => (
              <option selected={index() === app.machine()}>{row.name === '' ? en`unnamed (${row.id})` : visible(row.name)}</option>
            )}
          </For>
        </select>
      </label>
      <AddMachine />
      <button type="button" onClick={remove}>{en`Remove this machine`}</button>
    </div>
  );
}

/** A new machine begins with the simplest layout and the rack of the present one. */
export function AddMachine() {
  const app = useApp();
  const add = () => {
    const rows = app.shop.file?.machines ?? [];
    const id = freshId(rows, 'machine');
    const rack = rows[app.machine()]?.rack;
    app.shop.pause();
    app.shop.edit('machines.add', (file) => {
      const { shafts, stages, A, B } = layoutOf('a-direct', []);
      file.machines.push({
        id,
        name: en`Machine ${id.replace('machine-', '')}`,
        ...(rack === undefined ? {} : { rack }),
        motor: {},
        shafts,
        stages,
        A: { shaft: A, fitted: 'pump-1', pumps: [{ id: 'pump-1' }] },
        B: { shaft: B, fitted: 'pump-1', pumps: [{ id: 'pump-1' }] },
      });
    });
    app.shop.pause();
    app.goTo(['machines', (app.shop.file?.machines.length ?? 1) - 1, 'name']);
  };
  return <button type="button" data-place={placeKey(['machines'])} onClick={add}>{en`Add a machine`}</button>;
}
