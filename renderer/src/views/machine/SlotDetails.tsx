import { Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { MachineRow, SlotRow } from '../../../../core/src/file/machine.ts';
import { machineTrouble } from '../../../../core/src/file/machineTrouble.ts';
import { type CountRange, countRangeText, readCountRange } from '../../../../core/src/range.ts';
import { visible } from '../../../../core/src/visible.ts';
import { CheckField } from '../../fields/CheckField.tsx';
import { QuantityField, TextField } from '../../fields/index.tsx';
import { put } from '../../state/put.ts';
import type { MachineForm, SlotAt } from './machineForm.ts';
import { ReadField } from './ReadField.tsx';

type LengthKey = 'guard' | 'bore' | 'keyway';

interface SlotProps {
  readonly form: MachineForm;
  readonly slot: SlotAt;
  readonly shaft: MachineRow['shafts'][number] | undefined;
}

/** What is known of the ringed slot beyond its teeth. */
export function SlotDetails(props: SlotProps) {
  const form = () => props.form;
  const row = (): SlotRow | undefined => form().row().stages[props.slot.stage]?.[props.slot.end];
  const place = (key: string) => form().place('stages', props.slot.stage, props.slot.end, key);
  const set = <Key extends keyof SlotRow>(key: Key, value: SlotRow[Key] | undefined) =>
    form().editSlot(props.slot, [key], (slot) => put(slot, key, value));
  const slotText = () => {
    const shaft = visible(props.shaft?.name ?? props.shaft?.id ?? '');
    return props.slot.end === 'driver' ? en`Slot: driver on ${shaft}` : en`Slot: driven on ${shaft}`;
  };
  const length = (key: LengthKey, label: string) => (
    <QuantityField
      label={`${label}, ${form().units().length}`}
      place={place(key)}
      dimension="length"
      unit={form().units().length}
      value={row()?.[key]}
      check={(value) => machineTrouble({ slot: { [key]: value } })}
      set={(value) => set(key, value)}
    />
  );
  return (
    <Show when={row()}>
      {(slot) => (
        <fieldset class="gap">
          <legend>
            {slotText()},{' '}
            <span class="faint">
              {slot().teeth === undefined ? en`teeth not given, ringed above` : en`${slot().teeth} teeth fitted, ringed above`}
            </span>
          </legend>
          <div class="g4">
            <ReadField
              label={en`Teeth from – to`}
              place={place('teethFrom')}
              also={[place('teethTo')]}
              value={teethOf(slot())}
              read={(text) => readCountRange(text, 5, 400)}
              write={countRangeText}
              set={(teeth) =>
                form().editSlot(props.slot, ['teethFrom'], (changed) => {
                  put(changed, 'teethFrom', teeth?.from);
                  put(changed, 'teethTo', teeth?.to);
                })
              }
            />
            {length('guard', en`Guard clears`)}
            {length('bore', en`Shaft bore`)}
            {length('keyway', en`Keyway`)}
            <Show when={props.shaft}>
              {(shaft) => (
                <TextField
                  label={en`Shaft is called`}
                  place={form().place('shafts', form().row().shafts.indexOf(shaft()), 'name')}
                  value={shaft().name}
                  set={(name) =>
                    form().edit(['shafts', shaft().id, 'name'], (machine) => {
                      const changed = machine.shafts.find(({ id }) => id === shaft().id);
                      if (changed !== undefined) put(changed, 'name', name);
                    })
                  }
                />
              )}
            </Show>
            <CheckField
              label={en`May be changed`}
              place={place('mayChange')}
              value={slot().mayChange !== false}
              set={(yes) => set('mayChange', yes ? undefined : false)}
            />
          </div>
        </fieldset>
      )}
    </Show>
  );
}

function teethOf({ teethFrom, teethTo }: SlotRow): CountRange | undefined {
  if (teethFrom === undefined && teethTo === undefined) return undefined;
  return { ...(teethFrom === undefined ? {} : { from: teethFrom }), ...(teethTo === undefined ? {} : { to: teethTo }) };
}
