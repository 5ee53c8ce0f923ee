import { For } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { gearTeethTrouble, machineTrouble } from '../../../../core/src/file/machineTrouble.ts';
import { CountField, QuantityField } from '../../fields/index.tsx';
import { put } from '../../state/put.ts';
import type { PumpEntry, PumpRow } from './pumpEntry.ts';

type GearRow = NonNullable<PumpRow['gear']>;

const LENGTHS: readonly (readonly [key: Exclude<keyof GearRow, 'teeth'>, words: string, hint: string])[] = [
  ['module', en`Module`, ''],
  ['faceWidth', en`Face width`, ''],
  ['outsideDiameter', en`Outside diameter`, ''],
  ['insideDiameter', en`Inside diameter`, ''],
  ['centreDistance', en`Centre distance`, ''],
  ['gapWidth', en`Gap width`, en`across the leak`],
  ['gapLength', en`Gap length`, en`along the leak`],
];

/** The teeth come first: nothing else of a gear says anything without them. */
export function GearTeeth(props: { readonly entry: PumpEntry }) {
  return (
    <CountField
      label={en`Teeth of one gear`}
      place={props.entry.place('gear', 'teeth')}
      value={props.entry.row().gear?.teeth}
      hint={props.entry.row().gear === undefined ? en`its other figures follow` : undefined}
      least={4}
      most={200}
      whyNotEmpty={() => gearTeethTrouble(props.entry.row().gear)}
      set={(teeth) =>
        props.entry.edit(['gear', 'teeth'], (pump) => put(pump, 'gear', teeth === undefined ? undefined : { ...pump.gear, teeth }))
      }
    />
  );
}

/** The gear's lengths: for its displacement, and with the gap for its slip. */
export function GearFigures(props: { readonly entry: PumpEntry; readonly gear: GearRow }) {
  return (
    <For each={LENGTHS}>
      {([key, words, hint]) => (
        <QuantityField
          label={`${words}, ${props.entry.units().length}`}
          hint={hint}
          place={props.entry.place('gear', key)}
          dimension="length"
          unit={props.entry.units().length}
          value={props.gear[key]}
          check={(length) => machineTrouble({ pump: { gear: { teeth: props.gear.teeth, [key]: length } } })}
          set={(length) =>
            props.entry.edit(['gear', key], ({ gear }) => {
              if (gear !== undefined) put(gear, key, length);
            })
          }
        />
      )}
    </For>
  );
}
