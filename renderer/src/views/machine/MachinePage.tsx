import { Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { useApp } from '../../state/app.ts';
import '../../style/machine.css';
import { Drive } from './Drive.tsx';
import { Duty } from './Duty.tsx';
import { Layouts } from './Layouts.tsx';
import { MachineFindings } from './MachineFindings.tsx';
import { AddMachine, MachineHead } from './MachineHead.tsx';
import { createMachineForm, type MachineForm } from './machineForm.ts';
import { Pumps } from './Pumps.tsx';
import { Rack } from './Rack.tsx';

/** The machine: its drive edited where it is drawn, its duty, its pumps, and the rack it draws on. */
export function MachinePage() {
  const app = useApp();
  const machine = () => app.shop.file?.machines[app.machine()];
  return (
    <main id="main" class="two machine">
      <Show
        when={machine()?.id}
        keyed
        fallback={
          <section aria-label={en`Machine`}>
            <h1 class="t">{en`There is no machine in this file`}</h1>
            <p class="gap">
              <AddMachine />
            </p>
          </section>
        }
      >
        {(_id) => {
          const first = machine();
          if (first === undefined) return null;
          const form = createMachineForm(first);
          return <Sections form={form} />;
        }}
      </Show>
    </main>
  );
}

function Sections(props: { readonly form: MachineForm }) {
  return (
    <>
      <section aria-label={en`Motor, drive and duty`}>
        <MachineHead form={props.form} />
        <Drive form={props.form} />
        <Layouts form={props.form} />
        <Duty form={props.form} />
      </section>
      <section class="side docked" aria-label={en`Pumps, rack and findings`}>
        <div class="scroll">
          <Pumps form={props.form} />
          <Rack form={props.form} />
        </div>
        <MachineFindings />
      </section>
    </>
  );
}
