import { For } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { machineTrouble } from '../../../../core/src/file/machineTrouble.ts';
import { STARTING_MINUTES } from '../../../../core/src/file/startingMinutes.ts';
import { workSummary } from '../../../../core/src/machineSummary.ts';
import { CountField, QuantityField } from '../../fields/index.tsx';
import { put } from '../../state/put.ts';
import { Fold } from './Fold.tsx';
import type { MachineForm } from './machineForm.ts';

const KINDS = [
  ['sprocket', en`Sprocket`],
  ['chainLength', en`Chain length`],
  ['centre', en`Centre setting`],
  ['pump', en`Pump`],
] as const;
const MOST_TURNS = 100_000;

/** How long each kind of work takes, and how far the motor turns for one catch. */
export function WorkFields(props: { readonly form: MachineForm }) {
  const form = () => props.form;
  const row = () => form().row();
  return (
    <Fold title={en`Work`} summary={workSummary(row())} group="work">
      <div class="g5">
        <For each={KINDS}>
          {([kind, words]) => (
            <QuantityField
              label={en`${words}, min`}
              placeholder={String(STARTING_MINUTES[kind])}
              place={form().place('minutes', kind)}
              dimension="time"
              unit="min"
              value={row().minutes?.[kind]}
              check={(time) => machineTrouble({ machine: { minutes: { [kind]: time } } })}
              set={(time) =>
                form().edit(['minutes', kind], (machine) => {
                  const minutes = { ...machine.minutes };
                  put(minutes, kind, time);
                  put(machine, 'minutes', Object.keys(minutes).length === 0 ? undefined : minutes);
                })
              }
            />
          )}
        </For>
        <CountField
          label={en`Turns a catch`}
          place={form().place('catchTurns')}
          placeholder="20"
          value={row().catchTurns}
          least={1}
          most={MOST_TURNS}
          set={(turns) => form().edit(['catchTurns'], (machine) => put(machine, 'catchTurns', turns))}
        />
      </div>
    </Fold>
  );
}
