import { For } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { machineTrouble } from '../../../../core/src/file/machineTrouble.ts';
import { tankSummary } from '../../../../core/src/machineSummary.ts';
import { SIDES, type SideName } from '../../../../core/src/plan.ts';
import { QuantityField } from '../../fields/index.tsx';
import { put } from '../../state/put.ts';
import { Fold } from './Fold.tsx';
import type { MachineForm } from './machineForm.ts';

const MARKS = [
  ['fill', en`Fill of tank`],
  ['lowMark', en`Low mark of tank`],
] as const;

/** What the tanks hold, where they count as low, and what the mixer holds. */
export function TankFields(props: { readonly form: MachineForm }) {
  const form = () => props.form;
  const row = () => form().row();
  return (
    <Fold title={en`Tanks and mixer`} summary={tankSummary(row())} group="tanks">
      <div class="g2">
        <For each={MARKS}>
          {([mark, words]) => <For each={SIDES}>{(side) => <Mark form={form()} side={side} mark={mark} words={words} />}</For>}
        </For>
        <QuantityField
          label={en`Mixer volume, ${form().units().mixer}`}
          place={form().place('mixerVolume')}
          dimension="volume"
          unit={form().units().mixer}
          value={row().mixerVolume}
          check={(mixerVolume) => machineTrouble({ machine: { mixerVolume } })}
          set={(volume) => form().edit(['mixerVolume'], (machine) => put(machine, 'mixerVolume', volume))}
        />
      </div>
    </Fold>
  );
}

function Mark(props: { readonly form: MachineForm; readonly side: SideName; readonly mark: 'fill' | 'lowMark'; readonly words: string }) {
  return (
    <QuantityField
      label={`${props.words} ${props.side}, ${props.form.units().tank}`}
      place={props.form.place(props.side, 'tank', props.mark)}
      dimension="volume"
      unit={props.form.units().tank}
      value={props.form.row()[props.side].tank?.[props.mark]}
      check={(volume) => machineTrouble({ side: { tank: { [props.mark]: volume } } })}
      set={(volume) =>
        props.form.edit([props.side, 'tank', props.mark], (machine) => {
          const tank = { ...machine[props.side].tank };
          put(tank, props.mark, volume);
          put(machine[props.side], 'tank', Object.keys(tank).length === 0 ? undefined : tank);
        })
      }
    />
  );
}
