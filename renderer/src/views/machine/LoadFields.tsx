import { For } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { machineTrouble } from '../../../../core/src/file/machineTrouble.ts';
import { loadSummary, usualServiceFactors } from '../../../../core/src/machineSummary.ts';
import { SIDES } from '../../../../core/src/plan.ts';
import { QuantityField } from '../../fields/index.tsx';
import { useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import { Fold } from './Fold.tsx';
import type { MachineForm } from './machineForm.ts';

/** What loads the drive: the pressure across each pump, what the pump loses, and how rough the work is. */
export function LoadFields(props: { readonly form: MachineForm }) {
  const app = useApp();
  const form = () => props.form;
  const row = () => form().row();
  return (
    <Fold title={en`Load`} summary={loadSummary(row())} group="load">
      <div class="g2">
        <For each={SIDES}>
          {(side) => (
            <QuantityField
              label={en`Pressure across pump ${side}, ${form().units().pressure}`}
              place={form().place(side, 'pressure')}
              dimension="pressure"
              unit={form().units().pressure}
              value={row()[side].pressure}
              check={(pressure) => machineTrouble({ side: { pressure } })}
              set={(pressure) => form().edit([side, 'pressure'], (machine) => put(machine[side], 'pressure', pressure))}
            />
          )}
        </For>
        <For each={SIDES}>
          {(side) => (
            <QuantityField
              label={en`Mechanical efficiency of pump ${side}`}
              hint={en`as 0.88 or 88 %`}
              place={form().place(side, 'mechanicalEfficiency')}
              dimension="share"
              unit=""
              value={row()[side].mechanicalEfficiency}
              check={(mechanicalEfficiency) => machineTrouble({ side: { mechanicalEfficiency } })}
              set={(efficiency) =>
                form().edit([side, 'mechanicalEfficiency'], (machine) => put(machine[side], 'mechanicalEfficiency', efficiency))
              }
            />
          )}
        </For>
        <QuantityField
          label={en`Service factor`}
          hint={usualServiceFactors(app.say())}
          place={form().place('serviceFactor')}
          dimension="share"
          unit=""
          value={row().serviceFactor}
          check={(serviceFactor) => machineTrouble({ machine: { serviceFactor } })}
          set={(factor) => form().edit(['serviceFactor'], (machine) => put(machine, 'serviceFactor', factor))}
        />
      </div>
    </Fold>
  );
}
