import { createSignal } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { MachineRow } from '../../../../core/src/file/machine.ts';
import { machineTrouble, wantedTrouble } from '../../../../core/src/file/machineTrouble.ts';
import { wantedSummary } from '../../../../core/src/machineSummary.ts';
import { readShotEntry, shotText } from '../../../../core/src/twoFigures.ts';
import { AmountField, QuantityField } from '../../fields/index.tsx';
import { SelectField } from '../../fields/SelectField.tsx';
import { useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';
import { Fold } from './Fold.tsx';
import type { MachineForm } from './machineForm.ts';
import { ReadField } from './ReadField.tsx';

type BatchOf = NonNullable<MachineRow['batch']>['of'];

const BATCHES: readonly (readonly [BatchOf, string])[] = [
  ['mix', en`the mix`],
  ['A', en`component A`],
  ['B', en`component B`],
];

/** What the machine is to deliver: a flow, or a shot in place of it, and the batch to be made. */
export function WantedFields(props: { readonly form: MachineForm }) {
  const app = useApp();
  const form = () => props.form;
  const row = () => form().row();
  return (
    <Fold title={en`Wanted`} summary={wantedSummary(row())} group="wanted">
      <div class="g2">
        <QuantityField
          label={en`Flow of A and B together, ${form().units().flow}`}
          place={form().place('wantedFlow')}
          dimension="flow"
          unit={form().units().flow}
          value={row().wantedFlow}
          check={(wantedFlow) => wantedTrouble(row(), 'wantedFlow') ?? machineTrouble({ machine: { wantedFlow } })}
          set={(flow) => form().edit(['wantedFlow'], (machine) => put(machine, 'wantedFlow', flow))}
        />
        <ReadField
          label={en`or a shot: so much in so long`}
          hint={en`as 400 g in 6 s`}
          place={form().place('wantedShot')}
          value={row().wantedShot}
          read={(text) => readShotEntry(text, app.say())}
          write={shotText}
          check={(wantedShot) => wantedTrouble(row(), 'wantedShot') ?? machineTrouble({ machine: { wantedShot } })}
          set={(shot) => form().edit(['wantedShot'], (machine) => put(machine, 'wantedShot', shot))}
        />
        <Batch form={form()} />
      </div>
    </Fold>
  );
}

function Batch(props: { readonly form: MachineForm }) {
  const batch = () => props.form.row().batch;
  // What a batch is of is kept while its amount is typed anew.
  const [chosen, choose] = createSignal<BatchOf>('mix');
  const of = () => batch()?.of ?? chosen();
  return (
    <>
      <AmountField
        label={en`Batch to be made`}
        hint={en`a mass or a volume, as 60 kg or 40 L`}
        place={props.form.place('batch', 'amount')}
        value={batch()?.amount}
        check={(amount) => machineTrouble({ machine: { batch: { of: of(), amount } } })}
        set={(amount) => {
          choose(of());
          props.form.edit(['batch', 'amount'], (machine) => put(machine, 'batch', amount && { of: of(), amount }));
        }}
      />
      <SelectField
        label={en`Batch of`}
        place={props.form.place('batch', 'of')}
        value={of()}
        options={BATCHES}
        pick={(value) => {
          const picked = BATCHES.find(([id]) => id === value)?.[0];
          if (picked === undefined) return;
          choose(picked);
          props.form.edit(['batch', 'of'], ({ batch }) => {
            if (batch !== undefined) batch.of = picked;
          });
        }}
      />
    </>
  );
}
